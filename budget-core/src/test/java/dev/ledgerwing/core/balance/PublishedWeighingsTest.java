package dev.ledgerwing.core.balance;

import static dev.ledgerwing.core.balance.Balances.certain;
import static dev.ledgerwing.core.balance.Balances.cg;
import static dev.ledgerwing.core.balance.Balances.cgInches;
import static dev.ledgerwing.core.balance.Balances.inches;
import static dev.ledgerwing.core.balance.Balances.length;
import static dev.ledgerwing.core.balance.Balances.mass;
import static dev.ledgerwing.core.balance.Balances.pounds;
import static dev.ledgerwing.core.balance.Balances.typed;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.Ledgers;
import dev.ledgerwing.core.build.Booking;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Moments;
import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.quantity.Mass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Published weighings, typed in pounds and inches. A milligram and a micrometre of rounding are far below the printed digits, so
 * results are held against the recomputed values to 0.001 inch; the printed ones round from them.
 */
class PublishedWeighingsTest {

    private static final double INCH = 0.001;

    /** SFTE Reference Handbook, 2013, chapter 7, "Example cg calculations": printed -12.33, 102.67 and 0.216 inches. */
    @Test
    void threeScalesGiveTheSamePointFromEitherDatum() {
        Build fromMains = Ledgers.with(
                typed("right", "816 lb", "0 in", "70 in"),
                typed("left", "810 lb", "0 in", "-70 in"),
                typed("nose", "320 lb", "-75 in"));
        Build fromSpinner = Ledgers.with(
                typed("right", "816 lb", "115 in", "70 in"),
                typed("left", "810 lb", "115 in", "-70 in"),
                typed("nose", "320 lb", "40 in"));
        assertThat(inches(cg(fromMains).xMm())).isCloseTo(-12.33299, within(INCH));
        assertThat(inches(cg(fromMains).yMm())).isCloseTo(0.21583, within(INCH));
        assertThat(inches(cg(fromSpinner).xMm())).isCloseTo(102.66701, within(INCH));
        assertThat(inches(cg(fromSpinner).xMm() - cg(fromMains).xMm())).isCloseTo(115, within(INCH));
        assertThat(pounds(BalanceStatement.of(fromMains).design().basic().mass()))
                .isCloseTo(1946, within(1e-4));
    }

    /** FAA-H-8083-1B, chapter 10, figures 10-1 and 10-2: D - F L / W with D = 0, printed -13.2 inches. */
    @Test
    void aNoseWheelAeroplaneFromItsMains() {
        assertThat(cgInches(typed("mains", "1666 lb", "0 in"), typed("nose", "340 lb", "-78 in")))
                .isCloseTo(-13.2203, within(INCH));
    }

    /** FAA-H-8083-1A/-1B, chapter 3: F, L and W read, the rest from memory; printed +32.8, 114.8 and -88.2 inches. */
    @ParameterizedTest
    @CsvSource({"46 in, -32 in, 32.7797", "128 in, 50 in, 114.7797", "-75 in, -153 in, -88.2203"})
    void theSameAeroplaneFromThreeDatums(String mains, String nose, double expected) {
        assertThat(cgInches(
                        typed("right", "830 lb", mains), typed("left", "836 lb", mains), typed("nose", "340 lb", nose)))
                .isCloseTo(expected, within(INCH));
    }

    /** FAA-H-8083-1A/-1B, chapter 3, from memory: R L / W behind the mains, printed +19.7 and -67.8 inches. */
    @ParameterizedTest
    @CsvSource({"7.5 in, 229.5 in, 19.7118", "-80 in, 142 in, -67.7882"})
    void aTailWheelAeroplaneFromTwoDatums(String mains, String tail, double expected) {
        assertThat(cgInches(typed("mains", "1151 lb", mains), typed("tail", "67 lb", tail)))
                .isCloseTo(expected, within(INCH));
    }

    /** FAA-H-8083-1B, figure 2-11: 72 and 50 inches read, the three weights from memory. */
    @ParameterizedTest
    @CsvSource({"80 in, 72", "25 in, 50"})
    void aLeverWithThreeWeights(String secondWeight, double expected) {
        assertThat(cgInches(
                        typed("a", "100 lb", "0 in"),
                        typed("b", "200 lb", secondWeight),
                        typed("c", "200 lb", "100 in")))
                .isCloseTo(expected, within(INCH));
    }

    /** AC 43.13-1B, figure 10-10: printed +11.2 inches. */
    @Test
    void adverseLoadingForward() {
        assertThat(cgInches(
                        typed("empty", "1169 lb", "10.6 in"),
                        typed("oil", "17 lb", "-49 in"),
                        typed("pilot", "170 lb", "16 in"),
                        typed("fuel", "83 lb", "22 in")))
                .isCloseTo(11.191, within(INCH));
    }

    /** AC 43.13-1B, figure 10-11: printed +21.3 inches, from memory. */
    @Test
    void adverseLoadingAft() {
        assertThat(cgInches(
                        typed("empty", "1169 lb", "10.6 in"),
                        typed("oil", "17 lb", "-49 in"),
                        typed("pilot", "170 lb", "16 in"),
                        typed("rear", "340 lb", "48 in"),
                        typed("fuel", "240 lb", "22 in"),
                        typed("baggage", "100 lb", "75.5 in")))
                .isCloseTo(21.330, within(INCH));
    }

    /** AC 43.13-1B, figure 10-13: misprinted as +18.6, its own masses and moments give +18.3 inches. */
    @Test
    void adverseLoadingAtFullMassWhereTheAnswerIsMisprinted() {
        assertThat(cgInches(
                        typed("empty", "1169 lb", "10.6 in"),
                        typed("oil", "17 lb", "-49 in"),
                        typed("pilot", "170 lb", "16 in"),
                        typed("front", "170 lb", "16 in"),
                        typed("rear", "340 lb", "48 in"),
                        typed("fuel", "234 lb", "22 in")))
                .isCloseTo(18.317, within(INCH));
    }

    /** AC 43.13-1B, figure 10-14: printed +18.7 inches; its total of 2036 lb is misprinted as 20366. */
    @Test
    void adverseLoadingWithOnePassengerBehind() {
        assertThat(cgInches(
                        typed("empty", "1169 lb", "10.6 in"),
                        typed("oil", "17 lb", "-49 in"),
                        typed("pilot", "170 lb", "16 in"),
                        typed("front", "170 lb", "16 in"),
                        typed("rear", "170 lb", "48 in"),
                        typed("fuel", "240 lb", "22 in"),
                        typed("baggage", "100 lb", "75.5 in")))
                .isCloseTo(18.658, within(INCH));
    }

    /** FAA-H-8083-25, chapter on weight and balance: 100 lb from station 30 to 150, printed CG 78.5. */
    @Test
    void aShiftedWeight() {
        BalanceSum before = sum("8000 lb", "77 in");
        BalanceSum after = before.minus(sum("100 lb", "30 in")).plus(sum("100 lb", "150 in"));
        assertThat(inches(after.cg().orElseThrow().xMm())).isCloseTo(78.5, within(INCH));
        assertThat(after.mass()).isEqualTo(before.mass());
    }

    /** FAA-H-8083-25, chapter on weight and balance, from memory: printed changes +1.4 and -1.2 inches. */
    @Test
    void anAddedAndARemovedWeight() {
        BalanceSum added = sum("6680 lb", "80 in").plus(sum("140 lb", "150 in"));
        BalanceSum removed = sum("6100 lb", "80 in").minus(sum("100 lb", "150 in"));
        assertThat(inches(added.cg().orElseThrow().xMm())).isCloseTo(81.4370, within(INCH));
        assertThat(inches(removed.cg().orElseThrow().xMm())).isCloseTo(78.8333, within(INCH));
    }

    /** FAA-H-8083-1B, chapter 7: weight and CG read, limits and station from memory; printed 7.7 lb, check 33.0004. */
    @ParameterizedTest
    @CsvSource({"7.7 lb, 33.0004", "7.6964 lb, 33.0000"})
    void permanentBallastBringsTheCgToTheLimit(String ballast, double expected) {
        assertThat(cgInches(typed("empty", "1876 lb", "32.2 in"), typed("ballast", ballast, "228 in")))
                .isCloseTo(expected, within(0.0001));
    }

    /**
     * SFTE Reference Handbook, 2013, chapter 7, equipment change: its last moment is misprinted as -294.0, 14 x -21.5 is -301.0, so the
     * CG is 25.372 and not 25.38 inches. What is taken out has a negative mass and here a negative arm: a positive moment.
     */
    @Test
    void anEquipmentChangeWithAMisprintedMoment() {
        Mass removed = new Mass(-mass("11 lb").mg());
        Moments moments = Moments.of(removed, Station.atX(length("-21.5 in")));
        Build build = Ledgers.with(
                        typed("empty", "1220 lb", "25 in"),
                        typed("radio", "15 lb", "65 in"),
                        typed("generator", "14 lb", "-21.5 in"))
                .withBooking(new Booking(removed, "old generator taken out", moments));
        BalanceSum predicted = BalanceStatement.of(build).design().predicted();
        assertThat(moments.x().mgUm().signum()).isPositive();
        assertThat(pounds(predicted.mass())).isCloseTo(1238, within(1e-4));
        assertThat(inches(predicted.cg().orElseThrow().xMm())).isCloseTo(25.372, within(INCH));
    }

    /** FAA-H-8083-30, figure 4-20: readings and tares read, the answer of +50.1 inches from memory. */
    @Test
    void aWeighingWithTaresAndFuelTakenOut() {
        BalanceSum weighed = sum("645 lb", "70 in").plus(sum("635 lb", "70 in")).plus(sum("222.5 lb", "-30 in"));
        BalanceSum empty = weighed.minus(sum("177 lb", "95 in")).plus(sum("6 lb", "98 in"));
        assertThat(pounds(empty.mass())).isCloseTo(1331.5, within(1e-4));
        assertThat(inches(empty.cg().orElseThrow().xMm())).isCloseTo(50.0924, within(INCH));
    }

    /** By derivation: ballast of 0.187931 kg at 60 mm, or an 0.8 kg pack 68.125 mm forward, take 5 kg from 360.9 to 350 mm. */
    @Test
    void temporaryBallastAndAMovedPackOnFiveKilograms() {
        assertThat(cg(Ledgers.with(certain("all", 5000, 360.9), certain("ballast", 187.931, 60)))
                        .xMm())
                .isCloseTo(350, within(0.0005));
        double restX = (5000 * 360.9 - 800 * 200) / 4200;
        assertThat(cg(Ledgers.with(certain("rest", 4200, restX), certain("pack", 800, 200 - 68.125)))
                        .xMm())
                .isCloseTo(350, within(0.0005));
    }

    /**
     * By derivation, and SFTE Reference Handbook, 2013, chapter 7: an airframe levelled wrongly by theta puts its CG V tan(theta) off,
     * here 40 mm tan(15 degrees) = 10.718 mm, which is 0.0893 kg on a nose scale 600 mm ahead.
     */
    @Test
    void theHeightOfTheCgIsWhatATiltShows() {
        Cg cg = cg(Ledgers.with(
                certain("low", 2500, Balances.at(300, 0, -10)), certain("high", 2500, Balances.at(300, 0, 90))));
        assertThat(cg.zMm()).isEqualTo(40);
        assertThat(5 * cg.zMm() * Math.tan(Math.toRadians(15)) / 600).isCloseTo(0.0893, within(0.0001));
    }

    /** FAA-H-8083-1A/-1B, chapter 3, and FAA-H-8083-30, chapter 4, from memory; the last row read. */
    @ParameterizedTest
    @CsvSource({"144, 62, 161, 27.419", "900, 180, 945, 25", "0, 100, 20, 20"})
    void aStationInPerCentOfTheMac(double leadingEdgeIn, double macIn, double cgIn, double expected) {
        double mm = 25.4;
        Planform wing = Planform.of(
                        Balances.mirroredWing(leadingEdgeIn * mm, Balances.panel(5000, macIn * mm, macIn * mm, 0, 0)))
                .orElseThrow();
        assertThat(wing.percentMac(cgIn * mm)).isCloseTo(expected, within(0.001));
        assertThat(inches(wing.xMm(wing.percentMac(cgIn * mm)))).isCloseTo(cgIn, within(1e-9));
    }

    /** FAA-H-8083-1A/-1B, chapter 3, from memory: back from the rounded 27.4 per cent, 160.99 inches. */
    @Test
    void aPerCentOfTheMacBackToAStation() {
        Planform wing = Planform.of(Balances.mirroredWing(144 * 25.4, Balances.panel(5000, 62 * 25.4, 62 * 25.4, 0, 0)))
                .orElseThrow();
        assertThat(inches(wing.xMm(27.4))).isCloseTo(160.99, within(0.005));
    }

    private static BalanceSum sum(String weight, String arm) {
        return new BalanceSum(mass(weight), Moments.of(mass(weight), Station.atX(length(arm))));
    }
}
