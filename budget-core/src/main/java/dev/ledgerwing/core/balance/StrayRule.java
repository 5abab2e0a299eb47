package dev.ledgerwing.core.balance;

import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Parts so far away that their station is likely in another unit. The airframe is the box that holds the middle four fifths of the
 * stations along each axis, and the wing and tail as drawn; a part that lies off it by more than its longest side, and by
 * more than three metres, is asked about. Ledgerwing's own rule; from no publication.
 */
record StrayRule(BalanceStatement statement, BalanceWords words) {

    private static final double LEAST_MM = 3000;
    private static final double OUTER_TENTH = 0.1;
    /** With fewer stations there is no box but the wing; without a wing either, the datum alone and this far from it. */
    private static final int FEWEST = 3;

    private static final double FARTHEST_ALONE_MM = 10_000;

    private record Range(double leastMm, double mostMm) {

        double length() {
            return mostMm - leastMm;
        }

        double off(double mm) {
            return Math.max(0, Math.max(leastMm - mm, mm - mostMm));
        }

        Range with(double mm) {
            return new Range(Math.min(leastMm, mm), Math.max(mostMm, mm));
        }
    }

    Stream<Finding> findings() {
        List<PlacedRow> placed = placed();
        Map<Axis, Range> box = new LinkedHashMap<>();
        for (Axis axis : Axis.values()) {
            box.put(axis, placed.size() < FEWEST ? fixed(axis) : middle(placed, axis));
        }
        surfaces(box);
        double farthest = farthestMm(placed, box);
        Map<String, PlacedRow> strays = new LinkedHashMap<>(); // a line that strays in two cases is asked about once
        placed.stream().filter(row -> off(row, box) > farthest).forEach(row -> strays.putIfAbsent(id(row), row));
        return strays.values().stream().map(row -> finding(row, off(row, box)));
    }

    /** What there is to go by with too few stations: the wing, else the datum. */
    private Range fixed(Axis axis) {
        Planform wing = statement.shape().wing();
        double at = wing == null ? 0 : axis.mm(new Cg(wing.macXMm(), wing.macYMm(), wing.macZMm()));
        return new Range(at, at);
    }

    private double farthestMm(List<PlacedRow> placed, Map<Axis, Range> box) {
        if (placed.size() < FEWEST && statement.shape().wing() == null) {
            return FARTHEST_ALONE_MM;
        }
        double longest = box.values().stream().mapToDouble(Range::length).max().orElse(0);
        return Math.max(LEAST_MM, longest);
    }

    private static String id(PlacedRow row) {
        return row.row().line() == null
                ? "extra " + row.row().name()
                : row.row().line();
    }

    /** Each place that a line or an extra item has in some case, once. */
    private List<PlacedRow> placed() {
        return statement.cases().stream()
                .flatMap(aboard -> aboard.rows().stream())
                .filter(row -> row.station() != null)
                .distinct()
                .toList();
    }

    private static Range middle(List<PlacedRow> placed, Axis axis) {
        double[] least =
                placed.stream().mapToDouble(row -> row.leastMm(axis)).sorted().toArray();
        double[] most =
                placed.stream().mapToDouble(row -> row.mostMm(axis)).sorted().toArray();
        int from = (int) Math.ceil(OUTER_TENTH * (least.length - 1));
        int to = (int) Math.floor((1 - OUTER_TENTH) * (most.length - 1));
        return new Range(least[Math.min(from, to)], most[Math.max(from, to)]);
    }

    private void surfaces(Map<Axis, Range> box) {
        Stream.of(statement.shape().wing(), statement.shape().tail()).forEach(surface -> {
            if (surface != null) {
                surface.outline().forEach(point -> {
                    box.computeIfPresent(Axis.X, (axis, range) -> range.with(point.xMm()));
                    box.computeIfPresent(
                            Axis.Y,
                            (axis, range) ->
                                    range.with(point.yMm()).with(surface.mirrored() ? -point.yMm() : point.yMm()));
                });
            }
        });
    }

    private static double off(PlacedRow row, Map<Axis, Range> box) {
        double farthest = 0;
        for (Map.Entry<Axis, Range> side : box.entrySet()) {
            farthest = Math.max(farthest, side.getValue().off(row.leastMm(side.getKey())));
            farthest = Math.max(farthest, side.getValue().off(row.mostMm(side.getKey())));
        }
        return farthest;
    }

    private Finding finding(PlacedRow row, double offMm) {
        String sentence = "“" + row.row().name() + "” sits " + words.length(offMm)
                + " away from the rest of the airframe. Is its station in another unit?";
        return BalanceAgainst.nothing("balance.far-away", row.row().name())
                .ofLine(row.row().line())
                .finding(Verdict.UNKNOWN, sentence);
    }
}
