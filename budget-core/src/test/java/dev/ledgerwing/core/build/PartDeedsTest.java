package dev.ledgerwing.core.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.ledgerwing.core.mass.MassStatement;
import dev.ledgerwing.core.quantity.Mass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PartDeedsTest {

    private final Build build = Builds.small();

    private PartLine weighed(String id, double grams) {
        return build.line(id).orElseThrow().withMass(LineMass.of(Mass.ofGrams(grams), Basis.WEIGHED));
    }

    @Test
    void addsAPartBehindTheLastOfItsAssembly() {
        PartLine rib = Builds.line("L009", "wing", "Rib", Category.STRUCTURE, 8, LineMass.notKnown());

        assertThat(PartDeeds.added(build, rib).lines())
                .extracting(PartLine::id)
                .containsExactly("L001", "L002", "L009", "L003");
    }

    @Test
    void correctingTheLedgerLeavesTheTotalAndFittingChangesIt() {
        Build booked = build.withBooking(new Booking(Mass.ofGrams(40), "hall scales"));
        Mass before = known(booked);

        Build corrected = PartDeeds.changed(booked, weighed("L001", 135), Nature.CORRECTED);
        Build fitted = PartDeeds.changed(booked, weighed("L001", 135), Nature.FITTED);

        assertThat(known(corrected)).isEqualTo(before);
        assertThat(corrected.booking()).isEqualTo(new Booking(Mass.ofGrams(25), "hall scales"));
        assertThat(known(fitted)).isEqualTo(before.plus(Mass.ofGrams(15)));
        assertThat(PartDeeds.changed(booked, weighed("L001", 160), Nature.CORRECTED)
                        .booking())
                .as("nothing is unexplained any more")
                .isNull();
    }

    /** Basic mass and booking: what the scales said. */
    private static Mass known(Build build) {
        MassStatement mass = MassStatement.of(build);
        return mass.basic().plus(mass.booking());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void removingAPartTakesItOutOfEveryLoadCase(long seed) {
        Build seeded = Builds.seeded(seed);
        for (PartLine line : seeded.lines()) {
            assertThat(PartDeeds.removed(seeded, line.id()).line(line.id())).isEmpty();
        }
    }

    @Test
    void keepsAnAssemblyThatStillHoldsParts() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PartDeeds.removedAssembly(build, "wing"))
                .withMessage("the assembly still holds 2 parts");
        Build emptied = PartDeeds.removed(build, "L003");
        assertThat(PartDeeds.removedAssembly(emptied, "nose").assemblies()).hasSize(1);
    }

    @Test
    void saysWhenThePartIsGone() {
        PartLine gone = weighed("L001", 1);

        assertThatIllegalArgumentException()
                .isThrownBy(() -> PartDeeds.changed(PartDeeds.removed(build, "L001"), gone, Nature.FITTED))
                .withMessage("“Spar” is no longer there");
    }
}
