package dev.ledgerwing.core.mass;

import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.Stage;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Remedy;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
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

    private static final Pattern GLUE_OR_COVERING =
            Pattern.compile("glue|adhesive|epoxy|resin|cement|filler|tape|covering|film"
                    + "|tissue|fabric|laminat|paint|lacquer|varnish|primer|decal|\\bca\\b");
    private static final Pattern FASTENERS =
            Pattern.compile("screw|bolt|washer|rivet|fasten|fixing|hardware|dowel|magnet"
                    + "|hook[- ]and[- ]loop|\\b(nut|pin|clip|strap|tie|insert)s?\\b");

    List<Finding> findings() {
        if (!statement.build().airframe().stage().isAtLeast(Stage.BUILD)
                || statement.rows().isEmpty()) {
            return List.of();
        }
        String among = "No line of the category “" + Category.FASTENING.title() + "” names ";
        return Stream.of(
                        missing("glue-or-covering", "glue or covering", among, named(GLUE_OR_COVERING)),
                        missing(
                                "wiring",
                                "wiring",
                                "No line has the category of ",
                                row -> row.category() == Category.WIRING),
                        missing("fasteners", "screws or other fasteners", among, named(FASTENERS)))
                .flatMap(Optional::stream)
                .toList();
    }

    private static Predicate<MassRow> named(Pattern words) {
        return row -> row.category() == Category.FASTENING
                && words.matcher(row.name().toLowerCase(Locale.ROOT)).find();
    }

    private Optional<Finding> missing(String code, String what, String none, Predicate<MassRow> isOne) {
        if (statement.rows().stream().anyMatch(isOne)) {
            return Optional.empty();
        }
        Remedy remedy = new Remedy("Add a line for " + what + ", guessed if need be.", null, null);
        return Optional.of(MassAgainst.nothing("mass.no-" + code, what)
                .finding(Verdict.UNKNOWN, none + what + ": what it weighs is in no sum yet.", List.of(remedy)));
    }
}
