package dev.ledgerwing.web.mass;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.MassBudget;
import dev.ledgerwing.core.build.MassBudget.CeilingIs;
import dev.ledgerwing.core.build.Stage;
import dev.ledgerwing.core.quantity.Mass;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class BudgetTitleTest {

    private static final BudgetSetting NOTHING =
            new BudgetSetting(Stage.CONCEPT, new MassBudget(null, null, null, null));

    private static BudgetSetting target(@Nullable Mass target) {
        return new BudgetSetting(Stage.CONCEPT, new MassBudget(target, null, null, null));
    }

    private static String title(BudgetSetting before, BudgetSetting after) {
        return BudgetTitle.of(before, after).replace('\u2009', ' ');
    }

    @Test
    void saysTheUnitOnceWhereBothHaveTheSame() {
        assertThat(title(target(Mass.ofGrams(6800)), target(Mass.ofGrams(7000))))
                .isEqualTo("Target 6800 → 7000 g");
        assertThat(title(target(Mass.ofGrams(9800)), target(Mass.ofGrams(12_000))))
                .isEqualTo("Target 9800 g → 12.000 kg");
    }

    @Test
    void tellsSettingFromChangingAndTakingAway() {
        assertThat(title(NOTHING, target(Mass.ofGrams(7000)))).isEqualTo("Target set to 7000 g");
        assertThat(title(target(Mass.ofGrams(7000)), NOTHING)).isEqualTo("Target 7000 g taken away");
    }

    @Test
    void namesEverythingThatWasSet() {
        BudgetSetting after = new BudgetSetting(
                Stage.DESIGN, new MassBudget(Mass.ofGrams(7000), Mass.ofGrams(25_000), CeilingIs.BELOW, 7.5));
        assertThat(title(NOTHING, after))
                .isEqualTo("Target set to 7000 g, ceiling set to below 25.000 kg, reserve by stage → 7.5 %,"
                        + " stage Concept → Design");
        BudgetSetting atMost = new BudgetSetting(
                Stage.DESIGN, new MassBudget(Mass.ofGrams(7000), Mass.ofGrams(25_000), CeilingIs.AT_MOST, 7.5));
        assertThat(title(after, atMost)).isEqualTo("Ceiling below 25.000 kg → at most 25.000 kg");
    }

    @Test
    void saysThatNothingIsDifferent() {
        assertThat(title(NOTHING, NOTHING)).isEqualTo("Mass budget as before");
    }
}
