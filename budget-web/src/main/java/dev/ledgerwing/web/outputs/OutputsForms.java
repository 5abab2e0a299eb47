package dev.ledgerwing.web.outputs;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Element;
import dev.ledgerwing.web.desk.Deed;
import dev.ledgerwing.web.forms.Elements;
import dev.ledgerwing.web.support.Refusal;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** The forms of the outputs by their addresses, and taking out what they put in. */
final class OutputsForms {

    private static final Pattern CODE = Pattern.compile("[a-z0-9][a-z0-9-]{0,39}");

    private OutputsForms() {}

    /** The form at an address below the page. */
    static OutputsForm named(String name) {
        return switch (name) {
            case "fitted" -> new FittedForm();
            case "needs" -> new NeedsForm(null);
            default -> throw nothing();
        };
    }

    /** The form for a new output, for a part or for none yet. */
    static OutputsForm newOutput(@Nullable String part) {
        return new OutputForm(null, part);
    }

    /** The form of an element of this record, or of a new one. */
    static OutputsForm of(String kind, String id, Build build) {
        return switch (kind) {
            case "boards" ->
                new BoardForm(
                        id.equals(Elements.NEW)
                                ? null
                                : there(build.outputs().boards(), id).code());
            case "assignments" ->
                new OutputForm(there(build.outputs().assignments(), id).code(), null);
            case "needs" -> new NeedsForm(there(build.lines(), id).id());
            default -> throw nothing();
        };
    }

    /** The form that was sent: of something that others may have removed since, and that is then added as it was typed. */
    static OutputsForm sent(String kind, String id, Build build) {
        boolean wasThere = CODE.matcher(id).matches() && !id.equals(Elements.NEW);
        return switch (kind) {
            case "boards" -> wasThere ? new BoardForm(id) : of(kind, id, build);
            case "assignments" -> wasThere ? new OutputForm(id, null) : of(kind, id, build);
            default -> of(kind, id, build);
        };
    }

    /** Takes something out of the record that it was made from. */
    static Deed removal(Build seen, String kind, String id) {
        return switch (kind) {
            case "boards" -> BoardForm.removal(there(seen.outputs().boards(), id));
            case "assignments" -> OutputForm.removal(there(seen.outputs().assignments(), id));
            default -> throw nothing();
        };
    }

    static <E extends Element> E there(List<E> elements, String id) {
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
