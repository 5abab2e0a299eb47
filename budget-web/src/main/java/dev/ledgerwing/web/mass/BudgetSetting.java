package dev.ledgerwing.web.mass;

import dev.ledgerwing.core.build.Airframe;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.MassBudget;
import dev.ledgerwing.core.build.Stage;

/** What a member sets on the mass page: the stage, and the target, ceiling and reserve that go with it. */
record BudgetSetting(Stage stage, MassBudget budget) {

    static BudgetSetting of(Build build) {
        return new BudgetSetting(build.airframe().stage(), build.budget());
    }

    Build on(Build build) {
        Airframe old = build.airframe();
        return build.withAirframe(new Airframe(old.code(), old.name(), old.purpose(), stage, old.datum()))
                .withBudget(budget);
    }
}
