package dev.ledgerwing.core.radio.explain;

import dev.ledgerwing.core.build.Demand;
import dev.ledgerwing.core.build.RadioFunction;
import java.util.List;

/** What a phase asks of a function, as a clause. */
final class PhaseClause {

    private PhaseClause() {}

    static String of(RadioFunction function, Demand demand) {
        List<String> may = function.states().stream().filter(demand::allows).toList();
        boolean limited = may.size() < function.states().size();
        if (limited && may.size() == 1) {
            return function.name() + " must stay " + may.get(0);
        }
        List<String> must =
                function.states().stream().filter(demand.mustSelect()::contains).toList();
        String limit = "may only be " + Names.either(may);
        if (must.isEmpty()) {
            return function.name() + " " + limit;
        }
        return function.name() + " must be selectable " + Names.joined(must) + (limited ? " and " + limit : "");
    }
}
