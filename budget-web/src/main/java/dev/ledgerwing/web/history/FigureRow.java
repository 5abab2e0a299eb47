package dev.ledgerwing.web.history;

import dev.ledgerwing.core.mass.MassMargin;
import dev.ledgerwing.core.mass.MassStatement;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.review.BuildReview;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * One figure of the budgets before and after.
 *
 * @param change empty where it is the same
 */
record FigureRow(String label, String before, String after, String change) {

    /** The figures of the mass budget; what neither of the two has is left out. */
    static List<FigureRow> between(BuildReview before, BuildReview after) {
        Rows rows = new Rows(before, after);
        rows.mass("Basic mass", true, MassStatement::basic);
        rows.mass("Growth allowance", false, MassStatement::growth);
        if (before.mass().booking().mg() != 0 || after.mass().booking().mg() != 0) {
            rows.mass("Booking", false, MassStatement::booking);
        }
        rows.mass("Predicted mass", true, MassStatement::predicted);
        rows.mass("Target", false, mass -> mass.build().budget().targetMass());
        rows.mass("Margin", false, mass -> mass.margin().map(MassMargin::mass).orElse(null));
        rows.mass("Ceiling", false, mass -> mass.build().budget().ceilingMass());
        rows.text("Lines", mass -> Integer.toString(mass.build().lines().size()));
        if (before.mass().unknownCount() + after.mass().unknownCount() > 0) {
            rows.text("Parts without a mass", mass -> Integer.toString(mass.unknownCount()));
        }
        rows.text("Weighed, of basic mass", FigureRow::weighed);
        return rows.made;
    }

    private static String weighed(MassStatement mass) {
        Double percent = mass.total().weighedPercent();
        return percent == null ? "nothing" : Figures.percent(percent);
    }

    private record Rows(BuildReview before, BuildReview after, List<FigureRow> made) {

        Rows(BuildReview before, BuildReview after) {
            this(before, after, new ArrayList<>());
        }

        /** @param lower whether a mass that is not known makes the figure a lower bound */
        void mass(String label, boolean lower, Function<MassStatement, @Nullable Mass> figure) {
            Mass was = figure.apply(before.mass());
            Mass is = figure.apply(after.mass());
            if (was != null || is != null) {
                made.add(new FigureRow(
                        label, written(was, lower, before), written(is, lower, after), difference(was, is)));
            }
        }

        private String written(@Nullable Mass mass, boolean lower, BuildReview review) {
            if (mass == null) {
                return "none";
            }
            String least = lower && !review.mass().total().isComplete() ? "at least " : "";
            return least + review.units().mass(mass);
        }

        private String difference(@Nullable Mass was, @Nullable Mass is) {
            return was == null || is == null || was.equals(is)
                    ? ""
                    : after.units().signedMass(is.minus(was));
        }

        void text(String label, Function<MassStatement, String> figure) {
            made.add(new FigureRow(label, figure.apply(before.mass()), figure.apply(after.mass()), ""));
        }
    }
}
