package dev.ledgerwing.core.balance.correction;

import static dev.ledgerwing.core.balance.correction.Trims.between;
import static dev.ledgerwing.core.balance.correction.Trims.movable;
import static dev.ledgerwing.core.balance.correction.Trims.part;
import static dev.ledgerwing.core.balance.correction.Trims.sized;
import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.Ledgers;
import dev.ledgerwing.core.build.Bay;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.KeepApart;
import dev.ledgerwing.core.build.LoadCase;
import dev.ledgerwing.core.build.LoadCase.Purpose;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.quantity.Length;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Moves where travel, bays, rules to keep apart and load cases leave them. 69 mm forward would do, or as far as 128 mm. */
class PlacedCorrectionsTest {

    private static final PartLine PACK =
            sized(movable(part("pack", "fuselage", Category.BATTERY, 800, 300), 100, 400), 100, 60, 40);
    private static final PartLine MOTOR = part("motor", "nose", Category.PROPULSION, 200, 60);
    private static final PartLine REST = part("rest", "fuselage", Category.STRUCTURE, 4000, 388.125);
    private static final PartLine COMPASS = sized(part("compass", 0, 220), 20, 20, 20);

    private static Build build() {
        return between(338.4, 352, PACK, MOTOR, REST, COMPASS);
    }

    private static OptionalDouble moved(Build build) {
        return CorrectionFinder.of(build).offers().stream()
                .filter(offer -> offer.kind() == CorrectionKind.MOVE)
                .mapToDouble(offer -> offer.steps().get(0).movementMm())
                .findFirst();
    }

    private static Build inBay(double fromMm) {
        return build().withBays(List.of(
                new Bay("b", "Bay", Length.ofMm(fromMm), Length.ofMm(500), null, null, null, null, List.of("pack"))));
    }

    private static Build clearOf(double compassMm, double atLeastMm) {
        PartLine compass = sized(part("compass", 0, compassMm), 20, 20, 20);
        return build().withLines(List.of(PACK, MOTOR, REST, compass))
                .withKeepApart(List.of(new KeepApart("K1", "Compass", "compass", "pack", Length.ofMm(atLeastMm))));
    }

    @Test
    void withoutRulesItMovesAsLittleAsItCan() {
        assertThat(moved(build())).hasValue(69);
    }

    /** By derivation: the front face of a pack of 100 mm comes to 181 mm. */
    @Test
    void aBayEndsTheMove() {
        assertThat(moved(inBay(181))).hasValue(69);
        assertThat(moved(inBay(181.5))).isEmpty();
    }

    /** By derivation: a box of 20 mm at 250 mm and 10 mm to keep leave no station between 180 and 320 mm. */
    @Test
    void aPartToKeepClearOfIsJumpedOver() {
        assertThat(moved(clearOf(250, 10))).hasValue(120);
        assertThat(moved(clearOf(250, 20)))
                .as("beyond what the forward limit allows")
                .isEmpty();
    }

    @Test
    void aRuleHoldsInTheCaseWhereTheOtherPartSitsThere() {
        LoadCase ferry = new LoadCase(
                "ferry",
                "Ferry",
                Purpose.FLIGHT,
                false,
                List.of(),
                Map.of("compass", Trims.at(240)),
                List.of(),
                List.of());
        Build far = clearOf(900, 20);
        assertThat(moved(far)).hasValue(69);
        assertThat(moved(Ledgers.withCases(far, ferry)))
                .as("to 160 mm at least")
                .isEmpty();
    }

    @Test
    void aCaseThatPutsThePartElsewhereIsNotHelpedByMovingIt() {
        LoadCase ferry = new LoadCase(
                "ferry",
                "Ferry",
                Purpose.FLIGHT,
                false,
                List.of(),
                Map.of("pack", Trims.at(305)),
                List.of(),
                List.of());
        assertThat(moved(Ledgers.withCases(build(), ferry))).isEmpty();
        LoadCase right = new LoadCase(
                "right",
                "Right",
                Purpose.FLIGHT,
                false,
                List.of(),
                Map.of("pack", Trims.at(220)),
                List.of(),
                List.of());
        assertThat(moved(Ledgers.withCases(build(), right))).hasValue(69);
    }

    @Test
    void groundCasesHaveNoBand() {
        LoadCase bench = Ledgers.loadCase("bench", Purpose.GROUND, List.of("motor"));
        assertThat(moved(Ledgers.withCases(build(), bench))).hasValue(69);
    }

    /** A rule that is broken already keeps nothing else from being put right. */
    @Test
    void aRuleBrokenElsewhereDoesNotStandInTheWay() {
        Build build =
                build().withKeepApart(List.of(new KeepApart("K1", "Compass", "compass", "rest", Length.ofMm(900))));
        assertThat(moved(build)).hasValue(69);
    }
}
