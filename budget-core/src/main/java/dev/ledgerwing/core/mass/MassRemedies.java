package dev.ledgerwing.core.mass;

import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.verdict.Remedy;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/** What a builder can do about too much mass, or about a mass too little known. */
record MassRemedies(List<MassRow> rows, List<WeighNext> weighNext, Figures figures) {

    private static final int OF_EACH_KIND = 3;
    /** More than a fifth off one part is another part. */
    private static final double MOST_LIGHTER_PERCENT = 20;

    private static final Set<Category> CAN_STAY_AT_HOME = EnumSet.of(Category.PAYLOAD, Category.BALLAST);

    /** What takes {@code excess} off, or works towards it: weighing what grows most, leaving things at home, lighter parts. */
    List<Remedy> toSave(Mass excess) {
        return Stream.of(weighAgainstGrowth(), leaveAtHome(excess), lighten(excess))
                .flatMap(Function.identity())
                .toList();
    }

    /** What narrows the forecast. */
    List<Remedy> toNarrow() {
        return weighNext.stream()
                .limit(OF_EACH_KIND)
                .map(next -> new Remedy(
                        weigh(next.row()) + ": the band shrinks from ±" + figures.roughMass(next.before()) + " to ±"
                                + figures.roughMass(next.after()) + ".",
                        null,
                        next.row().line()))
                .toList();
    }

    private Stream<Remedy> weighAgainstGrowth() {
        return known().filter(known ->
                        known.row().basis() != Basis.WEIGHED && known.growth().mg() > 0)
                .sorted(Known.by(Known::growth).reversed().thenComparing(Known.BY_NAME))
                .limit(OF_EACH_KIND)
                .map(known -> new Remedy(
                        weigh(known.row()) + ": its growth allowance of " + figures.mass(known.growth())
                                + " falls away if it weighs what the ledger says.",
                        Mass.ZERO.minus(known.growth()),
                        known.row().line()));
    }

    private Stream<Remedy> leaveAtHome(Mass excess) {
        return known().filter(known -> CAN_STAY_AT_HOME.contains(known.row().category())
                        && known.predicted().compareTo(excess) >= 0)
                .sorted(Known.by(Known::predicted).thenComparing(Known.BY_NAME))
                .limit(OF_EACH_KIND)
                .map(known -> new Remedy(
                        "Leave “" + known.row().name() + "” at home: saves " + figures.mass(known.predicted()) + ".",
                        Mass.ZERO.minus(known.predicted()),
                        known.row().line()));
    }

    private Stream<Remedy> lighten(Mass excess) {
        return known().filter(known -> 100.0 * excess.mg()
                        <= MOST_LIGHTER_PERCENT * known.basic().mg())
                .sorted(Known.by(Known::basic).reversed().thenComparing(Known.BY_NAME))
                .limit(OF_EACH_KIND)
                .map(known -> new Remedy(
                        "Make or find “" + known.row().name() + "” " + figures.mass(excess) + " lighter, "
                                + Figures.percent(
                                        100.0 * excess.mg() / known.basic().mg()) + " of its "
                                + figures.mass(known.basic()) + ".",
                        Mass.ZERO.minus(excess),
                        known.row().line()));
    }

    private static String weigh(MassRow row) {
        return "Weigh “" + row.name() + "” "
                + switch (row.basis()) {
                    case GUESSED -> "instead of guessing it";
                    case CALCULATED -> "instead of calculating it";
                    case CATALOGUE -> "instead of trusting the catalogue";
                    case WEIGHED -> "again";
                };
    }

    private Stream<Known> known() {
        return rows.stream().flatMap(Known::of);
    }

    /** A row aboard whose mass is known. */
    private record Known(MassRow row, Mass basic, Mass growth) {

        static final Comparator<Known> BY_NAME = Comparator.comparing(Known::row, MassRow.BY_NAME);

        static Stream<Known> of(MassRow row) {
            Mass basic = row.basic();
            Mass growth = row.growth();
            return basic == null || growth == null ? Stream.empty() : Stream.of(new Known(row, basic, growth));
        }

        static Comparator<Known> by(Function<Known, Mass> mass) {
            return Comparator.comparing(mass);
        }

        Mass predicted() {
            return basic.plus(growth);
        }
    }
}
