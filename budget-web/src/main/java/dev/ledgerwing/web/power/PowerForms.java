package dev.ledgerwing.web.power;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Element;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.web.desk.Deed;
import dev.ledgerwing.web.forms.Elements;
import dev.ledgerwing.web.support.Refusal;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import org.springframework.stereotype.Component;

/** The forms of the supply by their addresses, and taking out what they put in. */
@Component
class PowerForms {

    private final Clock clock;

    PowerForms(Clock clock) {
        this.clock = clock;
    }

    /** The form at an address below the page. */
    PowerForm named(String name) {
        return switch (name) {
            case "phases" -> new PhasesForm();
            case "rules" -> new RulesForm();
            case "day" -> new DayForm(LocalDate.ofInstant(clock.instant(), clock.getZone()));
            default -> throw nothing();
        };
    }

    /** The form for a new source of the kind that was chosen. */
    PowerForm newSource(String kind) {
        return new SourceForm(null, SourceForm.kind(kind).orElseThrow(PowerForms::nothing));
    }

    /** The form of an element of this record, or of a new one. */
    PowerForm of(String kind, String id, Build build) {
        return switch (kind) {
            case "sources" -> new SourceForm(id, source(build, id).kind());
            case "rails" ->
                new RailForm(
                        id.equals(Elements.NEW)
                                ? null
                                : there(build.power().rails(), id).code());
            case "feeds" ->
                new FeedForm(
                        id.equals(Elements.NEW)
                                ? null
                                : there(build.power().feeds(), id).code());
            case "loads" -> new LoadsForm(there(build.lines(), id).id());
            case "duty" -> new DutyForm(there(build.power().rails(), id).code());
            default -> throw nothing();
        };
    }

    /** Takes something out of the record that it was made from. */
    Deed removal(Build seen, String kind, String id) {
        return switch (kind) {
            case "sources" -> SourceForm.removal(seen, source(seen, id));
            case "rails" -> RailForm.removal(there(seen.power().rails(), id));
            case "feeds" -> FeedForm.removal(there(seen.power().feeds(), id));
            default -> throw nothing();
        };
    }

    private static PowerSource source(Build build, String id) {
        return there(build.power().sources(), id);
    }

    private static <E extends Element> E there(List<E> elements, String id) {
        E found = Elements.find(elements, id);
        if (found == null) {
            throw Refusal.notFound("There is nothing called “" + id + "” here. It may have been removed.");
        }
        return found;
    }

    private static Refusal nothing() {
        return Refusal.notFound("There is nothing at this address. The address may have a slip.");
    }
}
