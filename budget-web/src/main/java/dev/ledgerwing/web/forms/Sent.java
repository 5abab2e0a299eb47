package dev.ledgerwing.web.forms;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.UnitSystem;
import dev.ledgerwing.web.desk.Seen;
import dev.ledgerwing.web.support.Refusal;
import dev.ledgerwing.web.team.Member;
import org.springframework.http.HttpStatus;

/** A form as a member sent it for an airframe. */
public record Sent(String code, Typed typed, Member member) {

    static final String SEEN = "seen";
    static final String UNITS = "units";

    /** The revision the form was made from. */
    public Seen seen() {
        String number = typed.text(SEEN);
        if (!number.matches("\\d{1,9}")) {
            throw new Refusal(
                    HttpStatus.BAD_REQUEST, "The page was incomplete, so nothing was changed. Load it again.");
        }
        return new Seen(code, Integer.parseInt(number));
    }

    /** In the units the form was shown in, whatever the member has switched to since. */
    public Figures figures() {
        for (UnitSystem units : UnitSystem.values()) {
            if (units.name().equals(typed.text(UNITS))) {
                return new Figures(units);
            }
        }
        return member.figures();
    }

    Sent with(Typed changed) {
        return new Sent(code, changed, member);
    }
}
