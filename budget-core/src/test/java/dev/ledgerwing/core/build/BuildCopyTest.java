package dev.ledgerwing.core.build;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.quantity.Mass;
import org.junit.jupiter.api.Test;

class BuildCopyTest {

    @Test
    void aSistersWeighingIsNoWeighingOfThePieceThatIsStillToBeMade() {
        Build pattern = Builds.seeded(12).withBooking(new Booking(Mass.ofGrams(9), "scales"));
        Airframe airframe = new Airframe("heron", "Heron", null, Stage.CONCEPT, "nose tip");

        Build copy = BuildCopy.of(pattern, airframe, Builds.target(3000));

        assertThat(copy.airframe()).isEqualTo(airframe);
        assertThat(copy.booking()).isNull();
        assertThat(copy.lines()).hasSameSizeAs(pattern.lines()).isNotEmpty().allSatisfy(line -> {
            assertThat(line.mass().basis()).isNotEqualTo(Basis.WEIGHED);
            assertThat(line.state()).isEqualTo(FitState.PLANNED);
            assertThat(line.supply().serials()).isEmpty();
        });
        assertThat(copy.lines())
                .extracting(PartLine::totalMass)
                .containsExactlyElementsOf(
                        pattern.lines().stream().map(PartLine::totalMass).toList());
    }
}
