package dev.ledgerwing.core.build;

import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.Mass;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class WeighInTest {

    private static WeighIn.Support support(double readingG, double tareG, @Nullable Mass tilted) {
        return new WeighIn.Support(
                "Nose wheel", Station.atX(Length.ofMm(52)), Mass.ofGrams(readingG), Mass.ofGrams(tareG), tilted);
    }

    @Test
    void aReadingBelowItsTareCannotBe() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> support(3, 4, null))
                .withMessage("the reading at “Nose wheel” is below its tare: 3.0 g with 4.0 g of tare");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> support(5, 4, Mass.ofGrams(3)))
                .withMessage("the tilted reading at “Nose wheel” is below its tare");
    }

    @Test
    void scalesHaveAStep() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new WeighIn.Scale(Mass.ZERO, Mass.ZERO))
                .withMessage("scales need a step or a greatest error above 0 g");
    }
}
