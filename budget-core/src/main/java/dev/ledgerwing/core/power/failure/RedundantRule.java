package dev.ledgerwing.core.power.failure;

import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.core.power.network.LoadState;
import dev.ledgerwing.core.power.network.PowerWords;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Redundant rails bear every single failure but a short of their own. Elements of one feed are one cause. */
record RedundantRule(FailureTable table) {

    Stream<Finding> findings() {
        return table.statement().network().rails().stream()
                .filter(Rail::redundant)
                .flatMap(this::of);
    }

    private Stream<Finding> of(Rail rail) {
        if (table.statement().network().isUnsolved(rail.code())) {
            return Stream.of(unknown(rail, "because it is fed round in a circle"));
        }
        Map<String, List<FailureRow>> causes = table.rows().stream()
                .filter(row -> row.redundant().contains(rail))
                .collect(Collectors.groupingBy(
                        row -> row.failure().kind() + row.failure().code(), LinkedHashMap::new, Collectors.toList()));
        return causes.isEmpty()
                ? Stream.of(notBroken(rail))
                : causes.values().stream().map(rows -> breaks(rail, rows));
    }

    /** What is dark already no failure can take: that says nothing of how it bears one. */
    private boolean isInOrder(Rail rail) {
        return table.statement().rail(rail.code()).stream().allMatch(state -> {
            Double lowestV = state.lowestV();
            return lowestV != null && lowestV > 0 && state.loads().stream().noneMatch(LoadState::isTooLow);
        });
    }

    private Finding notBroken(Rail rail) {
        if (!isInOrder(rail)) {
            return unknown(rail, "as long as it, or a load on it, lacks voltage with everything in order");
        }
        if (table.statement().isCutShort()) {
            return unknown(rail, "because there are more ways to feed the rails than were looked at");
        }
        List<String> notKnown = notKnown(rail);
        return notKnown.isEmpty() ? holds(rail) : unknown(rail, "for " + PowerWords.names(notKnown));
    }

    private Finding breaks(Rail rail, List<FailureRow> rows) {
        FailureRow first = rows.get(0);
        String sentence = cause(rows) + (first.failure().kind() == Failure.Kind.RAIL_SHORTED ? uncleared(first) : "")
                + ": " + PowerWords.quoted(rail.name()) + " must bear any single failure, but " + fate(rail, first)
                + ".";
        return FailureFindings.finding(Verdict.BREAKS, rail.name(), sentence);
    }

    private String cause(List<FailureRow> rows) {
        Failure first = rows.get(0).failure();
        if (rows.size() == 1) {
            return first.words();
        }
        String feed =
                table.statement().network().feed(first.code()).map(Feed::name).orElse(first.code());
        String names =
                PowerWords.names(rows.stream().map(row -> row.failure().name()).toList());
        return "Each of " + names + " in " + PowerWords.quoted(feed) + " that fails open";
    }

    private static String uncleared(FailureRow row) {
        return row.dragged().isEmpty()
                ? ""
                : " and no fuse keeps it from "
                        + PowerWords.names(row.dragged().stream()
                                .map(source -> source.name())
                                .toList());
    }

    private static String fate(Rail rail, FailureRow row) {
        RailChange change = row.rails().stream()
                .filter(each -> each.rail().equals(rail))
                .findFirst()
                .orElseThrow();
        String loads = PowerWords.names(row.loads().stream()
                .filter(dark -> rail.code().equals(dark.load().load().rail()))
                .map(dark -> dark.load().line().name())
                .toList());
        String goes = change.isDark()
                ? "goes dark"
                : "falls from " + PowerWords.volts(change.beforeV()) + " to " + PowerWords.volts(change.afterV());
        return goes + " (" + change.when() + ")" + (loads.isEmpty() ? "" : ", too little for " + loads);
    }

    private List<String> notKnown(Rail rail) {
        return table.rows().stream()
                .flatMap(row -> row.unjudged().stream())
                .filter(load -> rail.code().equals(load.load().rail()))
                .map(load -> load.line().name())
                .distinct()
                .toList();
    }

    private static Finding unknown(Rail rail, String why) {
        return FailureFindings.finding(
                Verdict.UNKNOWN,
                rail.name(),
                "Whether " + PowerWords.quoted(rail.name()) + " bears any single failure is not known " + why + ".");
    }

    private static Finding holds(Rail rail) {
        return FailureFindings.finding(
                Verdict.HOLDS,
                rail.name(),
                PowerWords.quoted(rail.name()) + " bears any single failure but a short of its own.");
    }
}
