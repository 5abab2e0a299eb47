package dev.ledgerwing.web.radio;

import dev.ledgerwing.core.build.Demand;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.web.forms.Entries;
import java.util.List;
import java.util.Set;

/** One cell of the grid as it was ticked, in the order of the states. */
record DemandCell(List<String> must, List<String> may) {

    static DemandCell typed(RadioFunction function, String phase, Entries entries) {
        String may = DemandsForm.may(function.code(), phase);
        DemandCell cell = new DemandCell(
                ticked(function, DemandsForm.must(function.code(), phase), entries), ticked(function, may, entries));
        for (String state : cell.must) {
            if (!cell.may.isEmpty() && !cell.may.contains(state)) {
                entries.trouble(
                        may, "“" + state + "” must be selectable, so it has to be among those that do no harm, too.");
            }
        }
        return cell;
    }

    private static List<String> ticked(RadioFunction function, String field, Entries entries) {
        List<String> ticked = entries.typed().all(field);
        ticked.stream()
                .filter(state -> !function.states().contains(state))
                .forEach(state -> entries.trouble(
                        field,
                        "There is no state “" + state + "”: “" + function.name() + "” has "
                                + String.join(", ", function.states()) + "."));
        return function.states().stream().filter(ticked::contains).toList();
    }

    /** Whether it says the same, in whatever order. */
    boolean says(Demand demand) {
        return Set.copyOf(must).equals(Set.copyOf(demand.mustSelect()))
                && Set.copyOf(may).equals(Set.copyOf(demand.mayHave()));
    }

    Demand demand() {
        return new Demand(must, may);
    }
}
