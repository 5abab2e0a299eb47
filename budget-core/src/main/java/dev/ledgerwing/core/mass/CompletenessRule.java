package dev.ledgerwing.core.mass;

import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.Stage;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Remedy;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Whether the lines that are forgotten most are there, from stage BUILD on: missing lines, not wrong ones, sink budgets. Wiring is
 * known by its category. Glue and covering, and screws and the like, share the category FASTENING and are told apart by words in
 * the line's name: Ledgerwing's own choice. A name with words of both counts as both; a name with words of neither counts
 * as neither, since nobody can tell which it stands for.
 */
record CompletenessRule(MassStatement statement) {

    private static final Pattern GLUE_OR_COVERING = Pattern.compile(
            "glue|adhesive|epoxy|resin|cement|filler|tape|cover|film|tissue|fabric|laminat|paint|lacquer|varnish|primer|decal|\\bca\\b");
    private static final Pattern FASTENERS =
            Pattern.compile("screw|bolt|washer|rivet|fasten|fixing|hardware|dowel|magnet"
                    + "|hook[- ]and[- ]loop|\\b(nut|pin|clip|strap|tie|insert)s?\\b");

    List<Finding> findings() {
        if (!statement.build().airframe().stage().isAtLeast(Stage.BUILD)
                || statement.rows().isEmpty()) {
            return List.of();
        }
        return Stream.of(
                        missing("mass.no-glue-or-covering", "glue or covering", named(GLUE_OR_COVERING)),
                        missing("mass.no-wiring", "wiring", row -> row.category() == Category.WIRING),
                        missing("mass.no-fasteners", "screws or other fasteners", named(FASTENERS)))
                .flatMap(List::stream)
                .toList();
    }

    private static Predicate<MassRow> named(Pattern words) {
        return row -> row.category() == Category.FASTENING
                && words.matcher(row.name().toLowerCase(Locale.ROOT)).find();
    }

    private List<Finding> missing(String code, String what, Predicate<MassRow> isOne) {
        if (statement.rows().stream().anyMatch(isOne)) {
            return List.of();
        }
        Remedy remedy = new Remedy("Add a line for " + what + ", guessed if need be.", null, null);
        return List.of(MassAgainst.nothing(code, what)
                .finding(
                        Verdict.UNKNOWN,
                        "No line names " + what + ": what it weighs is in no sum yet.",
                        List.of(remedy)));
    }
}
