package dev.ledgerwing.core.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.Mass;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class BuildTest {

    @Test
    void refusesEveryBrokenReferenceAtOnce() {
        Build build = Builds.small();
        PartLine stray = Builds.line("L004", "tail", "Fin", Category.STRUCTURE, 1, LineMass.notKnown());
        PartLine twice = Builds.line("L001", "wing", "Spar again", Category.STRUCTURE, 1, LineMass.notKnown());

        assertThatThrownBy(() -> build.withLines(List.of(build.lines().get(0), stray, twice)))
                .isInstanceOfSatisfying(
                        InvalidBuild.class,
                        refused -> assertThat(refused.problems())
                                .extracting(Problem::toString)
                                .containsExactlyInAnyOrder(
                                        "lines[2]: “L001” is used twice among the parts",
                                        "lines[1].assembly: there is no assembly “tail”"));
    }

    @Test
    void wantsExactlyOneDesignCase() {
        Build build = Builds.small();

        assertThatThrownBy(() -> build.withLoadCases(List.of()))
                .isInstanceOf(InvalidBuild.class)
                .hasMessageContaining("exactly one load case must be the design case, there are 0");
    }

    @Test
    void saysWhichValueIsOutOfItsRange() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LineMass.of(Mass.ofGrams(-3), Basis.GUESSED))
                .withMessage("unitMassG must be from 0 to 1000000 g, was -3 g");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Station.atX(Length.ofMm(100_001)))
                .withMessage("xMm must be from -100000 to 100000 mm, was 100001 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new LineMass(Mass.ZERO, Basis.GUESSED, WeighedAs.EACH, null, null))
                .withMessageContaining("weighedAs goes with basis WEIGHED");
    }

    @Test
    void refusesHalfACharacterWhichNoFileCouldGiveBack() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Builds.airframe("Skiff \uD800"))
                .withMessageContaining("halves of characters");
        assertThat(Builds.airframe("Skiff \uD83D\uDEE9").name()).endsWith("\uD83D\uDEE9");
    }

    @Test
    void aMirroredPartNeedsAnEvenQuantity() {
        PartLine servo = Builds.small().lines().get(1);
        LinePlace mirrored = new LinePlace(null, null, null, null, null, Length.ofMm(400));

        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PartLine(
                        servo.id(),
                        servo.assembly(),
                        servo.name(),
                        servo.category(),
                        3,
                        servo.mass(),
                        mirrored,
                        servo.state(),
                        servo.supply(),
                        null,
                        List.of(),
                        List.of(),
                        PortNeeds.NONE))
                .withMessageContaining("must be even");
    }

    @Test
    void keepsACopyOfWhatItIsGiven() {
        Map<String, Station> moved = new java.util.HashMap<>();
        LoadCase ferry =
                new LoadCase("ferry", "Ferry", LoadCase.Purpose.FLIGHT, false, List.of(), moved, List.of(), List.of());
        moved.put("L001", Station.atX(Length.ZERO));

        assertThat(ferry.moved()).isEmpty();
    }

    @Test
    void theGrowthTableKnowsEveryCategoryAndAWeighedMassDoesNotGrow() {
        for (Category category : Category.values()) {
            assertThat(GrowthTable.OWN_CHOICE.percent(category, Basis.WEIGHED)).isZero();
            // ordering as published for growth schedules (S-120 style tables): never more for a better basis
            assertThat(GrowthTable.OWN_CHOICE.percent(category, Basis.GUESSED))
                    .isGreaterThanOrEqualTo(GrowthTable.OWN_CHOICE.percent(category, Basis.CALCULATED));
            assertThat(GrowthTable.OWN_CHOICE.percent(category, Basis.CALCULATED))
                    .isGreaterThanOrEqualTo(GrowthTable.OWN_CHOICE.percent(category, Basis.CATALOGUE));
        }
    }
}
