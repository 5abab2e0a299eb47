package dev.ledgerwing.core.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.ledgerwing.core.mass.MassStatement;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.Mass;
import java.util.List;
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

    @Test
    void correctingAStationLeavesTheMomentsThatWereWeighed() {
        Station at = Station.atX(Length.ofMm(500));
        PartLine placed = build.line("L001").orElseThrow().withPlace(LinePlace.at(at));
        Moments booked = Moments.of(Mass.ofGrams(40), Station.atX(Length.ofMm(300)));
        Build weighed = PartDeeds.changed(build, placed, Nature.FITTED)
                .withBooking(new Booking(Mass.ofGrams(40), "hall scales", booked));
        PartLine further = placed.withPlace(LinePlace.at(Station.atX(Length.ofMm(520))));

        Booking left = PartDeeds.changed(weighed, further, Nature.CORRECTED).booking();

        assertThat(left).isNotNull();
        assertThat(left.mass()).isEqualTo(Mass.ofGrams(40));
        assertThat(left.moments()).isNotNull();
        assertThat(left.moments().x().gMm())
                .as("40 g at 300 mm, less the 120 g spar 20 mm further aft")
                .isEqualTo(40 * 300 - 120 * 20);
    }

    @Test
    void aCorrectionIsTakenFromTheBookingOfItsAssemblyFirst() {
        Build booked = build.withBooking(new Booking(Mass.ofGrams(40), "hall scales"))
                .withAssemblyBookings(
                        List.of(new AssemblyBooking("wing", new Booking(Mass.ofGrams(9), "wing on the scales"))));

        Build corrected = PartDeeds.changed(booked, weighed("L001", 125), Nature.CORRECTED);

        assertThat(corrected.booking()).isEqualTo(booked.booking());
        assertThat(corrected.bookingOf("wing")).contains(new Booking(Mass.ofGrams(4), "wing on the scales"));
        assertThat(PartDeeds.changed(booked, weighed("L001", 129), Nature.CORRECTED)
                        .assemblyBookings())
                .as("nothing of the wing is unexplained any more")
                .isEmpty();
    }

    @Test
    void anotherPartFittedIsNoLongerTheOneThatWasWeighed() {
        Build weighed = build.withWeighIns(List.of(Builds.weighIn("W1", List.of("L001", "L002"))));

        assertThat(PartDeeds.changed(weighed, weighed("L001", 200), Nature.FITTED)
                        .weighIns()
                        .get(0)
                        .aboard())
                .containsExactly("L002");
        assertThat(PartDeeds.changed(weighed, weighed("L001", 200), Nature.CORRECTED)
                        .weighIns()
                        .get(0)
                        .aboard())
                .containsExactly("L001", "L002");
        assertThat(PartDeeds.removed(weighed, "L002").weighIns().get(0).aboard())
                .containsExactly("L001");
    }

    @Test
    void removingAPartTakesItOutOfBaysAndRules() {
        Build placed = build.withBays(List.of(Builds.bay(List.of("L001", "L002"))))
                .withKeepApart(List.of(new KeepApart("K1", "Glue off the servo", "L002", "L003", Length.ofMm(20))));

        Build removed = PartDeeds.removed(placed, "L002");

        assertThat(removed.bays().get(0).holds()).containsExactly("L001");
        assertThat(removed.keepApart()).isEmpty();
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
        Build booked = emptied.withAssemblyBookings(
                List.of(new AssemblyBooking("nose", new Booking(Mass.ofGrams(3), "nose on the scales"))));
        assertThat(PartDeeds.removedAssembly(booked, "nose").assemblies()).hasSize(1);
        assertThat(PartDeeds.removedAssembly(booked, "nose").assemblyBookings()).isEmpty();
    }

    @Test
    void saysWhenThePartIsGone() {
        PartLine gone = weighed("L001", 1);

        assertThatIllegalArgumentException()
                .isThrownBy(() -> PartDeeds.changed(PartDeeds.removed(build, "L001"), gone, Nature.FITTED))
                .withMessage("“Spar” is no longer there");
    }
}
