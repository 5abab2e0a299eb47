package dev.ledgerwing.core.balance.correction;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;

/** Numbers that are allowed: closed ranges in rising order that do not overlap. Ends may be infinite. */
record Ranges(List<Range> all) {

    static final Ranges EVERYTHING = between(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    static final Ranges NOTHING = new Ranges(List.of());

    /** Takes up rounding where a whole number is the very end of a range. */
    private static final double ROUNDING = 1e-9;

    record Range(double from, double to) {}

    Ranges {
        all = List.copyOf(all);
    }

    static Ranges between(double from, double to) {
        return from <= to ? new Ranges(List.of(new Range(from, to))) : NOTHING;
    }

    boolean isEmpty() {
        return all.isEmpty();
    }

    boolean contains(double number) {
        return all.stream().anyMatch(range -> range.from - ROUNDING <= number && number <= range.to + ROUNDING);
    }

    /** The range that holds a number; nothing where none does. */
    Ranges around(double number) {
        return new Ranges(all.stream()
                .filter(range -> range.from - ROUNDING <= number && number <= range.to + ROUNDING)
                .limit(1)
                .toList());
    }

    /** What lies in both. */
    Ranges and(Ranges other) {
        List<Range> both = new ArrayList<>();
        for (Range one : all) {
            for (Range two : other.all) {
                double from = Math.max(one.from, two.from);
                double to = Math.min(one.to, two.to);
                if (from <= to) {
                    both.add(new Range(from, to));
                }
            }
        }
        return new Ranges(both);
    }

    /** Without what lies between the two; the ends themselves stay allowed. */
    Ranges without(double from, double to) {
        if (!(from < to)) {
            return this;
        }
        return new Ranges(all.stream()
                .flatMap(range -> range.to <= from || range.from >= to
                        ? Stream.of(range)
                        : Stream.concat(between(range.from, from).all.stream(), between(to, range.to).all.stream()))
                .toList());
    }

    Ranges shifted(double by) {
        return new Ranges(all.stream()
                .map(range -> new Range(range.from + by, range.to + by))
                .toList());
    }

    double least() {
        return all.get(0).from;
    }

    double greatest() {
        return all.get(all.size() - 1).to;
    }

    /** The whole number in them that is nearest to {@code wanted}, of two as near the smaller; empty where there is none. */
    OptionalInt wholeNearest(double wanted) {
        return all.stream()
                .filter(range -> firstWhole(range) <= lastWhole(range))
                .mapToDouble(range -> Math.min(Math.max(Math.rint(wanted), firstWhole(range)), lastWhole(range)))
                .mapToInt(whole -> (int) whole)
                .reduce((one, two) -> Math.abs(two - wanted) < Math.abs(one - wanted) ? two : one);
    }

    /** The least whole number in them; they have a least one. */
    OptionalInt firstWhole() {
        return wholeNearest(isEmpty() ? 0 : least());
    }

    /** The greatest whole number in them; they have a greatest one. */
    OptionalInt lastWhole() {
        return wholeNearest(isEmpty() ? 0 : greatest());
    }

    private static double firstWhole(Range range) {
        return Math.ceil(range.from - ROUNDING);
    }

    private static double lastWhole(Range range) {
        return Math.floor(range.to + ROUNDING);
    }
}
