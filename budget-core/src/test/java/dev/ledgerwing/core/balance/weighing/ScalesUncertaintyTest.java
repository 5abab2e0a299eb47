package dev.ledgerwing.core.balance.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.balance.Axis;
import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.LoadCase.ExtraItem;
import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** By derivation from JCGM 100:2008, eq. 10, since no publication gives a worked example. */
class ScalesUncertaintyTest {

    private static final double LB = 453.59237;
    private static final double IN = 25.4;

    @Test
    void takesTheStepOfEachScaleInPounds() {
        WeighInDraft draft = Weighings.with(Weighings.scale("1 lb", "0 g"), "0", nosewheel());
        assertThat(Weighings.answer(draft).joint().massUncertaintyG() / LB).isCloseTo(0.500, within(0.0005));
        assertThat(Weighings.centre(draft, Axis.X).uncertaintyMm() / IN).isCloseTo(0.00970, within(0.000005));
    }

    /** Read to a 16th of an inch: u = 1/16/sqrt(12) in. */
    @Test
    void takesTheArmsOfTheSupports() {
        WeighInDraft draft = Weighings.with(Weighings.scale("0.001 g", "0 g"), "0.018042 in", nosewheel());
        assertThat(Weighings.centre(draft, Axis.X).uncertaintyMm() / IN).isCloseTo(0.0110, within(0.00005));
    }

    /** The aeroplane of FAA-H-8083-1A and -1B, chapter 3, net. */
    private static WeighInDraft nosewheel() {
        return Weighings.level(
                Weighings.support("Right main", "46 in", "50 in", "830 lb"),
                Weighings.support("Left main", "46 in", "-50 in", "836 lb"),
                Weighings.support("Nose", "-32 in", "0", "340 lb"));
    }

    @ParameterizedTest
    @CsvSource({"1 g, 0, 0.0183", "5 g, 0, 0.0916", "0.001 g, 0.5 mm, 0.312"})
    void isMostlyAMatterOfTheArmsOnASmallAirframe(String step, String arm, double expectedMm) {
        WeighInDraft draft = Weighings.with(Weighings.scale(step, "0 g"), arm, small("0"));
        assertThat(Weighings.answer(draft).mass()).isEqualTo(Weighings.mass("5 kg"));
        assertThat(Weighings.centre(draft, Axis.X).mm()).isCloseTo(360.88, within(0.005));
        assertThat(Weighings.centre(draft, Axis.X).uncertaintyMm())
                .isCloseTo(expectedMm, within(expectedMm < 0.1 ? 0.00005 : 0.0005));
    }

    @Test
    void errsBySquareRootOfTwoMoreWhereATareWasTaken() {
        Coordinate bare = Weighings.centre(small("0"), Axis.X);
        WeighInDraft tared = Weighings.level(
                Weighings.support("Left", "412", "-150", "2250", "100"),
                Weighings.support("Right", "412", "150", "2240", "100"),
                Weighings.support("Nose", "52", "0", "810", "100"));
        assertThat(Weighings.centre(tared, Axis.X).uncertaintyMm())
                .isCloseTo(Math.sqrt(2) * bare.uncertaintyMm(), within(1e-9));
        assertThat(Weighings.answer(tared).joint().massUncertaintyG()).isCloseTo(Math.sqrt(0.5), within(1e-9));
    }

    private static WeighInDraft small(String tare) {
        return Weighings.level(
                Weighings.support("Left", "412", "-150", "2150", tare),
                Weighings.support("Right", "412", "150", "2140", tare),
                Weighings.support("Nose", "52", "0", "710", tare));
    }

    /** By derivation: a guess of 100 g is off by 20 g with the rules as they come; the three readings add 0.5 g. */
    @Test
    void takesOverTheErrorOfWhatIsTakenOut() {
        WeighInDraft draft = Weighings.carrying(
                small("0"),
                new ExtraItem("Box", Weighings.mass("100 g"), Basis.GUESSED, Weighings.at("300", "0", "0")));
        assertThat(Weighings.answer(draft).mass()).isEqualTo(Weighings.mass("4900 g"));
        assertThat(Weighings.answer(draft).joint().massUncertaintyG()).isCloseTo(Math.hypot(20, 0.5), within(1e-9));
    }

    /**
     * The readings are made to err at random. With n repetitions the standard deviation of a covariance is sqrt((C_ii C_jj + C_ij^2)/n);
     * four of those, and a thousandth for what is not linear.
     */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3})
    void agreesWithErrorsMadeAtRandom(long seed) {
        Random random = new Random(seed);
        List<Footing> footings = List.of(
                footing(412, -150, -80, 2150, 2215),
                footing(412, 150, -82, 2140, 2204),
                footing(52, 10, -90, 710, 581),
                new Footing(Weighings.at("300", "20", "15"), -60, -60, 0, 3, 1));
        ScalesSolver.Poses poses = new ScalesSolver.Poses(Pose.noseUp(1.5), Pose.noseUp(11));
        JointMass expected = solved(footings, poses);
        int repetitions = 20_000;
        List<JointError> found = new ArrayList<>();
        for (int i = 0; i < repetitions; i++) {
            JointMass one =
                    solved(footings.stream().map(each -> erring(each, random)).toList(), poses);
            found.add(difference(one, expected));
        }
        for (ToDoubleFunction<JointError> one : PARTS) {
            for (ToDoubleFunction<JointError> other : PARTS) {
                double covariance = product(expected.errors(), one, other);
                double tolerance = 4
                        * Math.sqrt((product(expected.errors(), one, one) * product(expected.errors(), other, other)
                                        + covariance * covariance)
                                / repetitions);
                assertThat(product(found, one, other) / repetitions)
                        .isCloseTo(covariance, within(tolerance + 1e-3 * Math.abs(covariance)));
            }
        }
    }

    private static final List<ToDoubleFunction<JointError>> PARTS =
            List.of(JointError::massG, JointError::xGMm, JointError::yGMm, JointError::zGMm);

    private static double product(
            List<JointError> errors, ToDoubleFunction<JointError> one, ToDoubleFunction<JointError> other) {
        return errors.stream()
                .mapToDouble(each -> one.applyAsDouble(each) * other.applyAsDouble(each))
                .sum();
    }

    private static JointMass solved(List<Footing> footings, ScalesSolver.Poses poses) {
        Solution solution = Solution.of(poses.first(), poses.tilted());
        return new ScalesSolver(footings, poses, solution, true, new Coordinate(0, 0)).solve();
    }

    private static JointError difference(JointMass one, JointMass other) {
        JointMass off = one.minus(other);
        return new JointError(
                off.massG(),
                off.momentsGMm().getOrDefault(Axis.X, 0.0),
                off.momentsGMm().getOrDefault(Axis.Y, 0.0),
                off.momentsGMm().getOrDefault(Axis.Z, 0.0));
    }

    private static Footing footing(int xMm, int yMm, int zMm, double netG, double tiltedG) {
        return new Footing(Weighings.at("" + xMm, "" + yMm, "" + zMm), netG, tiltedG, 2, 1.5, 0.4);
    }

    private static Footing erring(Footing was, Random random) {
        double shared = was.sharedG() * random.nextGaussian();
        return new Footing(
                new Station(off(was.xMm(), was, random), off(was.yMm(), was, random), off(was.zMm(), was, random)),
                was.netG() + shared + was.readingG() * random.nextGaussian(),
                was.tiltedG() + shared + was.readingG() * random.nextGaussian(),
                was.readingG(),
                was.sharedG(),
                was.pointMm());
    }

    private static Length off(double mm, Footing was, Random random) {
        return Length.ofMm(mm + was.pointMm() * random.nextGaussian());
    }
}
