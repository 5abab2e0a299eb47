package dev.ledgerwing.web.team;

import dev.ledgerwing.core.quantity.UnitSystem;
import java.net.URI;
import java.net.URISyntaxException;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Switches the signed-in member between grams and millimetres and ounces and inches. */
@Controller
class UnitsController {

    private final Members members;

    UnitsController(Members members) {
        this.members = members;
    }

    @PostMapping("/units")
    ResponseEntity<Void> choose(
            @RequestParam UnitSystem units, @RequestParam(defaultValue = "/") String back, Member member) {
        members.chooseUnits(member.id(), units);
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .location(ownPage(back))
                .build();
    }

    /** Only to a page of this server: the address came from a form and may have been tampered with. */
    private static URI ownPage(String back) {
        try {
            URI page = new URI(back);
            boolean own = page.getScheme() == null && page.getRawAuthority() == null && back.startsWith("/");
            return own && !back.startsWith("//") ? page : URI.create("/");
        } catch (URISyntaxException notAnAddress) {
            return URI.create("/");
        }
    }
}
