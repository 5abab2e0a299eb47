package dev.ledgerwing.web.mass;

import dev.ledgerwing.core.quantity.UnitSystem;
import dev.ledgerwing.web.airframe.ImpactStrip;
import dev.ledgerwing.web.airframe.Landings;
import dev.ledgerwing.web.desk.Deed;
import dev.ledgerwing.web.desk.Desk;
import dev.ledgerwing.web.desk.Outcome;
import dev.ledgerwing.web.desk.Readings;
import dev.ledgerwing.web.desk.Seen;
import dev.ledgerwing.web.desk.Signature;
import dev.ledgerwing.web.desk.Snapshot;
import dev.ledgerwing.web.team.Member;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.validation.BindingResult;

/** Brings what was typed for the mass budget to the desk. */
@Component
class BudgetChanges {

    private final Desk desk;
    private final Readings readings;
    private final Landings landings;

    BudgetChanges(Desk desk, Readings readings, Landings landings) {
        this.desk = desk;
        this.readings = readings;
        this.landings = landings;
    }

    /**
     * What came of it.
     *
     * @param strip what the change did; null when the form has to be shown again
     * @param stand the record to be shown now
     * @param form the form to be shown again: what was typed, made for {@code stand} where others changed something meanwhile
     * @param sentences why the desk did not take it
     */
    record Result(@Nullable ImpactStrip strip, Snapshot stand, BudgetForm form, List<String> sentences) {}

    Result set(String code, BudgetForm form, BindingResult problems, Member member) {
        Snapshot seen = seen(code, form, problems);
        UnitSystem units = form.unitSystem(member.units());
        Optional<BudgetSetting> wanted = new BudgetEntry(form, seen, units, problems).setting();
        if (wanted.isEmpty()) {
            return new Result(null, readings.head(code), form, List.of());
        }
        Seen number = new Seen(code, seen.revision().number());
        Outcome outcome = desk.change(number, deed(seen, wanted.get()), new Signature(member.name(), form.reason()));
        Snapshot head = outcome.head();
        return new Result(
                landings.strip(outcome, number, member.figures()).orElse(null),
                head,
                form.onto(seen, head, units),
                why(outcome));
    }

    /** Why the desk did not take it, and what to do. */
    private static List<String> why(Outcome outcome) {
        List<String> sentences = new ArrayList<>(Landings.sentences(outcome));
        if (outcome instanceof Outcome.Clash) {
            sentences.add("What you typed is still here: save it again to have it so, or cancel to leave it.");
        }
        return sentences;
    }

    private static Deed deed(Snapshot seen, BudgetSetting wanted) {
        return Deed.fitting(BudgetTitle.of(BudgetSetting.of(seen.build()), wanted), wanted::on);
    }

    private Snapshot seen(String code, BudgetForm form, BindingResult problems) {
        if (form.seenNumber().isEmpty()) {
            problems.reject("seen", "The page was incomplete. Please load it again.");
            return readings.head(code);
        }
        return readings.at(new Seen(code, form.seenNumber().getAsInt()));
    }
}
