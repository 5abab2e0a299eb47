package dev.ledgerwing.web.team;

import dev.ledgerwing.core.quantity.Figures;
import jakarta.servlet.http.HttpServletRequest;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ModelAttribute;

/** Gives every page the signed-in member, if any, and figures in that member's units. */
@ControllerAdvice
class MemberModel {

    private final CurrentMember current;

    MemberModel(CurrentMember current) {
        this.current = current;
    }

    @ModelAttribute("member")
    @Nullable
    Member member(HttpServletRequest request) {
        return current.of(request).orElse(null);
    }

    @ModelAttribute("figures")
    Figures figures(HttpServletRequest request) {
        return current.of(request).map(Member::figures).orElse(Figures.METRIC);
    }
}
