package dev.ledgerwing.core.balance.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.Ledgers;
import dev.ledgerwing.core.balance.Axis;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.WeighIn.Support;
import dev.ledgerwing.core.quantity.Mass;
import java.util.Map;
import org.junit.jupiter.api.Test;

class TiltedWeighingTest {

    /**
     * By derivation from the SFTE Reference Handbook, 2013, chapter 7, height of the CG by tilting: 5 kg, 40 mm above the supports, 600 mm
     * apart, 15 degrees take 0.0893 kg off the nose. Rounded to a tenth of a gram that is 0.02 mm of height.
     */
    @Test
    void tellsTheHeightFromASecondWeighing() {
        WeighInDraft draft = Weighings.draft(
                0,
                15.0,
                Weighings.tilted("Nose", "0", "0", "1250 g", "1160.7 g"),
                Weighings.tilted("Mains", "600", "0", "3750 g", "3839.3 g"));
        assertThat(Weighings.centre(draft, Axis.X).mm()).isCloseTo(450, within(1e-6));
        assertThat(Weighings.centre(draft, Axis.Z).mm()).isCloseTo(40, within(0.02));
    }

    /** SFTE Reference Handbook, 2013, chapter 7: V tan(theta), here 40 mm tan(1 degree). */
    @Test
    void saysWhatADegreeOffLevelWouldDo() {
        WeighInDraft draft = Weighings.draft(
                0,
                15.0,
                Weighings.tilted("Nose", "0", "0", "1250 g", "1160.684 g"),
                Weighings.tilted("Mains", "600", "0", "3750 g", "3839.316 g"));
        assertThat(Weighings.answer(draft).shiftPerDegreeMm()).isCloseTo(0.698, within(0.0005));
    }

    /** By derivation: x cos + z sin measured level, for a CG at 450 mm aft and 40 mm up, first 5 and then 15 degrees nose up. */
    @Test
    void solvesTwoWeighingsOffLevelTogether() {
        WeighInDraft draft = Weighings.draft(5, 15.0, mains(5, 15), nose(5, 15));
        assertThat(Weighings.centre(draft, Axis.X).mm()).isCloseTo(450, within(0.002));
        assertThat(Weighings.centre(draft, Axis.Z).mm()).isCloseTo(40, within(0.005));
    }

    @Test
    void takesTheHeightFromTheLedgerAfterOneWeighingOffLevel() {
        WeighInDraft draft = Weighings.draft(5, null, alone(mains(5, 5)), alone(nose(5, 5)));
        Build build = Ledgers.with(Weighings.certain("all", 5000, 430, 0, 40));
        ScalesAnswer answer = Weighings.report(build, draft).reading().answer().orElseThrow();
        assertThat(answer.heightFromLedger()).isTrue();
        assertThat(answer.joint().centre(Axis.X).orElseThrow().mm()).isCloseTo(450, within(0.002));
        assertThat(answer.joint().centre(Axis.Z)).isEmpty();
        // The ledger's height is 3 mm uncertain, and x by that times tan(5 degrees): the scales add 0.044 mm at the
        // most.
        assertThat(answer.joint().centre(Axis.X).orElseThrow().uncertaintyMm())
                .isCloseTo(3 * Math.tan(Math.toRadians(5)), within(0.044));
    }

    @Test
    void cannotTellForeAndAftFromHeightWithoutEither() {
        WeighInDraft draft = Weighings.draft(5, null, alone(mains(5, 5)), alone(nose(5, 5)));
        ScalesAnswer answer = Weighings.answer(draft);
        assertThat(answer.joint().momentsGMm()).isEmpty();
        assertThat(answer.notKnown().get(Axis.X)).contains("did not stand level", "does not know the height");
    }

    @Test
    void saysWhyAnAxisIsNotKnown() {
        assertThat(Weighings.answer(Weighings.level(Weighings.support("Pan", "0", "0", "500 g")))
                        .notKnown())
                .isEqualTo(Map.of(
                        Axis.X, "One support tells the mass alone.",
                        Axis.Y, "One support tells the mass alone.",
                        Axis.Z, "One support tells the mass alone."));
        assertThat(Weighings.answer(Weighings.level(
                                Weighings.support("Nose", "0", "0", "500 g"),
                                Weighings.support("Mains", "600", "0", "500 g")))
                        .notKnown())
                .isEqualTo(Map.of(
                        Axis.Y, "The supports stand in one line: they do not tell left and right.",
                        Axis.Z, "The height takes a second weighing with the nose up."));
    }

    private static Support mains(double firstDeg, double secondDeg) {
        return on("Mains", 600, firstDeg, secondDeg);
    }

    private static Support nose(double firstDeg, double secondDeg) {
        return on("Nose", 0, firstDeg, secondDeg);
    }

    private static Support on(String name, int xMm, double firstDeg, double secondDeg) {
        Mass first = carried(xMm, firstDeg);
        return new Support(name, Weighings.at("" + xMm, "0", "0"), first, Mass.ZERO, carried(xMm, secondDeg));
    }

    /** The lever rule with both supports at height 0. */
    private static Mass carried(int xMm, double deg) {
        double onMains = 5000 * (450 + 40 * Math.tan(Math.toRadians(deg))) / 600;
        return Mass.ofGrams(xMm == 0 ? 5000 - onMains : onMains);
    }

    private static Support alone(Support was) {
        return new Support(was.name(), was.station(), was.reading(), was.tare(), null);
    }
}
