package dev.ledgerwing.web.balance;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.web.desk.Deed;
import dev.ledgerwing.web.desk.ElementIds;
import dev.ledgerwing.web.forms.Elements;
import dev.ledgerwing.web.support.Refusal;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** The forms of the balance page by their addresses, and taking out what they put in. */
@Component
class BalanceForms {

    private final ElementIds ids;

    BalanceForms(ElementIds ids) {
        this.ids = ids;
    }

    /** The form at an address below the page. */
    BalanceForm named(String name) {
        return switch (name) {
            case "geometry" -> new GeometryForm();
            case "limits" -> new LimitsForm();
            case "new-case" -> new LoadCaseForm(null);
            case "new-bay" -> new BayForm(null);
            case "new-rule" -> new ApartForm(null, ids);
            default -> throw Refusal.notFound("There is nothing at this address. The address may have a slip.");
        };
    }

    /** The form of an element, which may have been removed since the page that leads here. */
    BalanceForm of(String kind, String id) {
        return switch (kind) {
            case "cases" -> new LoadCaseForm(id);
            case "bays" -> new BayForm(id);
            case "rules" -> new ApartForm(id, ids);
            default -> named("");
        };
    }

    /** Refuses an element that is not there. */
    void mustBeThere(Build build, String kind, String id) {
        boolean isThere = switch (kind) {
            case "cases" -> Elements.find(build.loadCases(), id) != null;
            case "bays" -> Elements.find(build.bays(), id) != null;
            default -> Elements.find(build.keepApart(), id) != null;
        };
        if (!isThere) {
            throw Refusal.notFound("There is nothing called “" + id + "” here. It may have been removed.");
        }
    }

    /** Takes something out of the record that it was made from. */
    Deed removal(Build seen, String kind, String id) {
        return switch (kind) {
            case "surfaces" -> GeometryForm.without(id.equals("wing"));
            case "cases" -> LoadCaseForm.removal(there(Elements.find(seen.loadCases(), id), id));
            case "bays" ->
                Deed.fitting(
                        "Bay " + there(Elements.find(seen.bays(), id), id).name() + " removed",
                        build -> build.withBays(Elements.without(build.bays(), id)));
            default ->
                Deed.fitting(
                        "Rule to keep "
                                + there(Elements.find(seen.keepApart(), id), id).name() + " removed",
                        build -> build.withKeepApart(Elements.without(build.keepApart(), id)));
        };
    }

    private static <E> E there(@Nullable E found, String id) {
        return Optional.ofNullable(found)
                .orElseThrow(() -> Refusal.notFound("There is nothing called “" + id + "” here any more."));
    }
}
