package dev.ledgerwing.core.balance.correction;

import dev.ledgerwing.core.balance.BalanceBand;
import dev.ledgerwing.core.balance.BalanceShape;
import dev.ledgerwing.core.balance.MassState;
import dev.ledgerwing.core.balance.NeutralPoint;
import dev.ledgerwing.core.balance.StabiliserLift;
import dev.ledgerwing.core.balance.correction.LinearWay.Effect;
import dev.ledgerwing.core.build.Assembly.MovesWith;
import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.Mass;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The ways of putting a record right that have an amount to be found. */
record Ways(Build build, Effects effects) {

    /** More than a fifth off one part, or onto it, is another part; as in the remedies of the mass budget. */
    private static final double MOST_OTHER_PERCENT = 20;

    /** More ballast than this share of the heaviest case is another design; Ledgerwing's own choice, from no publication. */
    private static final double MOST_BALLAST_PERCENT = 20;

    private static final long MG_PER_G = 1000;
    private static final long UM_PER_MM = 1000;
    /** Farther than a wing is ever shifted, and still a station that a record can hold. */
    private static final double FARTHEST_MM = 10_000;

    /** Moving each part that has a travel, in whole millimetres. */
    List<LinearWay> moves() {
        Room room = new Room(build);
        return build.lines().stream()
                .filter(line -> line.place().travel() != null)
                .map(line ->
                        new LinearWay(effects.ofMoving(line), 0, room.moves(line), by -> new MovePart(line, mm(by))))
                .filter(Ways::doesSomething)
                .toList();
    }

    /** Ballast at each place worth trying, in whole grams. */
    List<LinearWay> ballast() {
        double heaviest = effects.aims().stream()
                .mapToDouble(aim -> aim.point().massG())
                .max()
                .orElse(0);
        Ranges allowed = Ranges.between(1, heaviest * MOST_BALLAST_PERCENT / 100);
        return BallastPlace.in(build).stream()
                .map(place -> new LinearWay(
                        effects.ofBallast(place.station()), 0, allowed, grams -> new AddBallast(place, grams(grams))))
                .toList();
    }

    /** Each part heavier or lighter by up to a fifth, in whole grams a piece. */
    Stream<LinearWay> otherMasses() {
        return build.lines().stream()
                .filter(PartLine::isMassKnown)
                .map(this::otherMass)
                .filter(Ways::doesSomething);
    }

    private LinearWay otherMass(PartLine line) {
        Mass each = line.totalMass().percent(MOST_OTHER_PERCENT / line.quantity());
        double most = each.grams();
        return new LinearWay(
                effects.ofMass(line), 0, Ranges.between(-most, most), grams -> new OtherMass(line, grams(grams)));
    }

    /** What is done on the drawing. */
    List<Way> drawing() {
        return Stream.<Way>concat(wing().stream(), nose().stream()).toList();
    }

    /** The wing with all that moves with it, in whole millimetres; empty where nothing does. */
    Optional<LinearWay> wing() {
        BalanceShape shape = effects.statement().shape();
        BalanceBand band = shape.band();
        List<Effect> moved = group(MovesWith.WING).stream()
                .map(grams -> new Effect(grams, 0))
                .toList();
        boolean drawn = build.geometry().wing() != null;
        if (band == null || (!drawn && moved.stream().allMatch(Effect.NONE::equals))) {
            return Optional.empty();
        }
        boolean declared = band.source() == BalanceBand.Source.DECLARED;
        double follows = declared ? 1 : 1 - leverage(shape.neutralPoint());
        return Optional.of(new LinearWay(
                moved, follows, Ranges.between(-FARTHEST_MM, FARTHEST_MM), by -> new ShiftWing(mm(by), declared)));
    }

    /** K / (1 + K): what the neutral point stays behind by, as the tail stays where it is. */
    private static double leverage(@Nullable NeutralPoint neutralPoint) {
        StabiliserLift lift = neutralPoint == null ? null : neutralPoint.stabiliser();
        return lift == null ? 0 : lift.leverage();
    }

    /** A longer nose, in whole millimetres; empty while the record does not say where it is cut and what a millimetre weighs. */
    Optional<NoseWay> nose() {
        Double perMm = build.geometry().noseStructureGPerMm();
        Length joint = build.geometry().noseJointX();
        if (perMm == null || joint == null || group(MovesWith.NOSE).stream().noneMatch(grams -> grams > 0)) {
            return Optional.empty();
        }
        double grown = 1 + build.judgedBy().growth().percent(Category.STRUCTURE, Basis.CALCULATED) / 100;
        List<Double> structure = effects.aims().stream()
                .map(aim -> aim.point().state() == MassState.BASIC ? perMm : perMm * grown)
                .toList();
        return Optional.of(new NoseWay(
                group(MovesWith.NOSE),
                structure,
                joint.mm(),
                by -> new LengthenNose(mm(by), joint, Mass.ofGrams(perMm * by))));
    }

    private List<Double> group(MovesWith group) {
        Set<String> assemblies = new GroupShift(group, Length.ZERO).assemblies(build);
        return effects.massOf(assemblies);
    }

    private static Length mm(int whole) {
        return new Length(whole * UM_PER_MM);
    }

    private static Mass grams(int whole) {
        return new Mass(whole * MG_PER_G);
    }

    private static boolean doesSomething(LinearWay way) {
        return !way.allowed().isEmpty() && !way.effects().stream().allMatch(Effect.NONE::equals);
    }
}
