package dev.ledgerwing.core.balance.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.balance.Axis;
import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.LoadCase.ExtraItem;
import dev.ledgerwing.core.build.Moments;
import dev.ledgerwing.core.quantity.Mass;
import java.util.Objects;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Published weighings, typed in pounds and inches as they are printed; answers to the last printed digit. */
class PublishedWeighingsTest {

    private static final double LB = 453.59237;
    private static final double IN = 25.4;
    private static final Offset<Double> TENTH = within(0.05);
    private static final Offset<Double> HUNDREDTH = within(0.005);
    /** Arms are kept to the micrometre, masses to the milligram. */
    private static final Offset<Double> EXACT = within(0.01);

    /** SFTE Reference Handbook, 2013, chapter 7, "Example cg calculations": two datums and the lateral CG. */
    @ParameterizedTest
    @CsvSource({"0 in, -75 in, -24000, -12.33", "115 in, 40 in, 199790, 102.67"})
    void agreesWithTheTricycleOfTheFlightTestHandbook(String mains, String nose, double momentLbIn, double cgIn) {
        WeighInDraft draft = Weighings.level(
                Weighings.support("Right main", mains, "70 in", "816 lb"),
                Weighings.support("Left main", mains, "-70 in", "810 lb"),
                Weighings.support("Nose", nose, "0 in", "320 lb"));
        ScalesAnswer answer = Weighings.answer(draft);
        assertThat(answer.mass().grams() / LB).isCloseTo(1946, within(1e-5));
        assertThat(momentLbIn(answer.joint(), Axis.X)).isCloseTo(momentLbIn, EXACT);
        assertThat(momentLbIn(answer.joint(), Axis.Y)).isCloseTo(420, EXACT);
        assertThat(inches(draft, Axis.X)).isCloseTo(cgIn, HUNDREDTH);
        assertThat(inches(draft, Axis.Y)).isCloseTo(0.216, within(0.0005));
    }

    /** FAA-H-8083-1B, chapter 10, figures 10-1 and 10-2: 340 lb 78 in ahead of the mains, 2006 lb in all. */
    @Test
    void agreesWithTheNoseWheelAeroplaneOfTheHandbook() {
        WeighInDraft draft = Weighings.level(
                Weighings.support("Mains", "0 in", "0 in", "1666 lb"),
                Weighings.support("Nose", "-78 in", "0 in", "340 lb"));
        assertThat(inches(draft, Axis.X)).isCloseTo(-13.2, TENTH);
    }

    /** FAA-H-8083-1A and -1B, chapter 3, the same aeroplane with tare, from the firewall and from two other datums (chart from memory). */
    @ParameterizedTest
    @CsvSource({"46 in, -32 in, 32.8", "128 in, 50 in, 114.8", "-75 in, -153 in, -88.2"})
    void agreesWithTheChartForEveryDatum(String mains, String nose, double cgIn) {
        WeighInDraft draft = Weighings.level(
                Weighings.support("Right main", mains, "50 in", "846 lb", "16 lb"),
                Weighings.support("Left main", mains, "-50 in", "852 lb", "16 lb"),
                Weighings.support("Nose", nose, "0", "348 lb", "8 lb"));
        assertThat(Weighings.answer(draft).mass().grams() / LB).isCloseTo(2006, within(1e-5));
        assertThat(inches(draft, Axis.X)).isCloseTo(cgIn, TENTH);
    }

    /** FAA-H-8083-1A and -1B, chapter 3, tail-wheel aeroplane (from memory): 67 lb on the tail, 222 in behind the mains, 1218 lb. */
    @ParameterizedTest
    @CsvSource({"7.5 in, 229.5 in, 19.7", "-80 in, 142 in, -67.8"})
    void agreesWithTheTailWheelAeroplane(String mains, String tail, double cgIn) {
        WeighInDraft draft = Weighings.level(
                Weighings.support("Mains", mains, "0", "1151 lb"), Weighings.support("Tail", tail, "0", "67 lb"));
        assertThat(inches(draft, Axis.X)).isCloseTo(cgIn, TENTH);
    }

    /**
     * FAA-H-8083-30, figure 4-20 (answer from memory): tare, 177 lb of fuel at 95 in taken out, 6 lb of it at 98 in that no pump
     * reaches put back by the ledger.
     */
    @Test
    void takesFullTanksOutAndLeavesTheUnusableFuelIn() {
        WeighInDraft draft = Weighings.carrying(
                Weighings.level(
                        Weighings.support("Left main", "70 in", "-60 in", "650 lb", "5 lb"),
                        Weighings.support("Right main", "70 in", "60 in", "640 lb", "5 lb"),
                        Weighings.support("Nose", "-30 in", "0", "225 lb", "2.5 lb")),
                new ExtraItem("Fuel", Weighings.mass("177 lb"), Basis.WEIGHED, Weighings.at("95 in", "0", "0")));
        ScalesAnswer answer = Weighings.answer(draft);
        Mass unusable = Weighings.mass("6 lb");
        double momentLbIn = momentLbIn(answer.joint(), Axis.X)
                + Axis.X
                                .of(Moments.of(unusable, Weighings.at("98 in", "0", "0")))
                                .gMm()
                        / LB
                        / IN;
        double massLb = answer.mass().plus(unusable).grams() / LB;
        assertThat(massLb).isCloseTo(1331.5, within(1e-5));
        assertThat(momentLbIn).isCloseTo(66_698, EXACT);
        assertThat(momentLbIn / massLb).isCloseTo(50.1, TENTH);
    }

    private static double inches(WeighInDraft draft, Axis axis) {
        return Weighings.centre(draft, axis).mm() / IN;
    }

    private static double momentLbIn(JointMass joint, Axis axis) {
        return Objects.requireNonNull(joint.momentsGMm().get(axis)) / LB / IN;
    }
}
