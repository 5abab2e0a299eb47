package dev.ledgerwing.core.balance.weighing;

import dev.ledgerwing.core.balance.Axis;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.LoadCase.ExtraItem;
import dev.ledgerwing.core.build.Problem;
import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.build.WeighIn;
import dev.ledgerwing.core.build.WeighIn.Support;
import dev.ledgerwing.core.mass.MassRow;
import dev.ledgerwing.core.mass.RowUncertainty;
import dev.ledgerwing.core.mass.ScaleError;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.Mass;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What is made of the readings of a weigh-in.
 *
 * @param answer empty when the readings were refused
 * @param refused readings that cannot be, each with its place in the weigh-in: {@code supports[1].station}
 */
public record ScalesReading(Optional<ScalesAnswer> answer, List<Problem> refused) {

    public ScalesReading {
        refused = List.copyOf(refused);
    }

    /** Of a weigh-in that was held against {@code ledger}; sentences in the units of {@code figures}. */
    public static ScalesReading of(WeighIn weighIn, LedgerSide ledger, Build build, Figures figures) {
        SupportPlan plan = plan(weighIn);
        List<Problem> refused = ReadingChecks.of(weighIn, plan, figures);
        return refused.isEmpty()
                ? new ScalesReading(Optional.of(new Reader(weighIn, plan, ledger, build).answer()), refused)
                : new ScalesReading(Optional.empty(), refused);
    }

    static SupportPlan plan(WeighIn weighIn) {
        return new SupportPlan(weighIn.supports().stream()
                .map(Support::station)
                .map(at -> new SupportPlan.Point(at.x().mm(), at.y().mm()))
                .toList());
    }

    /** Reads one weigh-in that is not refused. */
    private record Reader(WeighIn weighIn, SupportPlan plan, LedgerSide ledger, Build build) {

        ScalesAnswer answer() {
            Optional<Coordinate> ledgerZ = ledger.joint().centre(Axis.Z);
            Solution solution = solution(ledgerZ);
            List<Footing> footings = footings();
            Coordinate height = ledgerZ.orElse(new Coordinate(0, 0));
            JointMass joint = new ScalesSolver(footings, poses(), solution, plan.tellsY(), height).solve();
            return new ScalesAnswer(
                    ReadingChecks.total(weighIn),
                    joint,
                    notKnown(solution),
                    solution.xOfLedgerZ() != 0,
                    perDegree(footings, joint.centre(Axis.Z).or(() -> ledgerZ)));
        }

        private Solution solution(Optional<Coordinate> ledgerZ) {
            Pose first = Pose.noseUp(weighIn.noseUpDeg());
            Double tilted = weighIn.tiltedNoseUpDeg();
            if (!plan.tellsX()) {
                return Solution.NONE;
            }
            if (tilted != null) {
                return Solution.of(first, Pose.noseUp(tilted));
            }
            if (first.isLevel()) {
                return Solution.LEVEL;
            }
            return ledgerZ.isPresent() ? Solution.withHeightOf(first) : Solution.NONE;
        }

        private ScalesSolver.Poses poses() {
            Pose first = Pose.noseUp(weighIn.noseUpDeg());
            Double tilted = weighIn.tiltedNoseUpDeg();
            return new ScalesSolver.Poses(first, tilted == null ? first : Pose.noseUp(tilted));
        }

        private List<Footing> footings() {
            return Stream.concat(
                            weighIn.supports().stream().map(this::support),
                            weighIn.extra().stream().map(this::extra))
                    .toList();
        }

        private Footing support(Support support) {
            ScaleError scale =
                    new ScaleError(weighIn.scale().step(), weighIn.scale().maxError());
            Mass tilted = support.tiltedReading();
            Mass net = support.reading().minus(support.tare());
            return new Footing(
                    support.station(),
                    net.grams(),
                    (tilted == null ? net : tilted.minus(support.tare())).grams(),
                    scale.ofReadingG(),
                    support.tare().mg() > 0 ? scale.ofReadingG() : 0,
                    weighIn.armUncertainty().mm());
        }

        private Footing extra(ExtraItem item) {
            Mass mass = Optional.ofNullable(item.mass()).orElse(Mass.ZERO);
            double u = new RowUncertainty(build.judgedBy().massUncertainty())
                    .grams(MassRow.of(item, build.judgedBy().growth()));
            Station at = Optional.ofNullable(item.station()).orElse(Station.atX(Length.ZERO));
            return new Footing(
                    at,
                    -mass.grams(),
                    -mass.grams(),
                    0,
                    u,
                    build.geometry().stationUncertaintyInForce().mm());
        }

        private Map<Axis, String> notKnown(Solution solution) {
            Map<Axis, String> why = new EnumMap<>(Axis.class);
            if (!solution.hasX()) {
                why.put(
                        Axis.X,
                        plan.tellsX()
                                ? "The airframe did not stand level: fore and aft cannot be told from the height, and the ledger"
                                        + " does not know the height."
                                : supportsCannotTell("fore and aft"));
            }
            if (!plan.tellsY()) {
                why.put(Axis.Y, supportsCannotTell("left and right"));
            }
            if (!solution.hasZ()) {
                why.put(
                        Axis.Z,
                        plan.tellsX()
                                ? "The height takes a second weighing with the nose up."
                                : supportsCannotTell("the height"));
            }
            return why;
        }

        private String supportsCannotTell(String what) {
            return plan.points().size() == 1
                    ? "One support tells the mass alone."
                    : "The supports stand in one line: they do not tell " + what + ".";
        }

        private @Nullable Double perDegree(List<Footing> footings, Optional<Coordinate> height) {
            double supportMm = 0;
            double carriedG = 0;
            for (Footing each : footings) {
                supportMm += each.netG() * each.zMm();
                carriedG += each.netG();
            }
            double standsAt = supportMm / carriedG;
            return plan.tellsX()
                    ? height.map(z -> (z.mm() - standsAt) * Math.tan(Math.toRadians(1)))
                            .orElse(null)
                    : null;
        }
    }
}
