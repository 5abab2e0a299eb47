package dev.ledgerwing.core.balance.correction;

import static dev.ledgerwing.core.Said.plain;
import static dev.ledgerwing.core.balance.correction.Trims.between;
import static dev.ledgerwing.core.balance.correction.Trims.movable;
import static dev.ledgerwing.core.balance.correction.Trims.part;
import static dev.ledgerwing.core.balance.correction.Trims.sized;
import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.Ledgers;
import dev.ledgerwing.core.balance.BalanceStatement;
import dev.ledgerwing.core.balance.correction.StrapCell.StrapRange;
import dev.ledgerwing.core.build.Bay;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.KeepApart;
import dev.ledgerwing.core.build.LinePlace;
import dev.ledgerwing.core.build.LoadCase;
import dev.ledgerwing.core.build.LoadCase.Purpose;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Length;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** 5 kg at 360.9 mm with a pack of 800 g at 300 mm; a band of 340 to 352 mm aims for 342 to 350 mm. */
class StrapTableTest {

    private static final PartLine PACK = part("pack", "fuselage", Category.BATTERY, 800, 300);
    private static final PartLine MOTOR = part("motor", "nose", Category.PROPULSION, 200, 60);
    private static final PartLine REST = part("rest", "fuselage", Category.STRUCTURE, 4000, 388.125);

    private static Build build(PartLine pack) {
        return between(340, 352, pack, MOTOR, REST);
    }

    private static Bay bay(double fromMm, double toMm) {
        return new Bay(
                "b", "Pack bay", Length.ofMm(fromMm), Length.ofMm(toMm), null, null, null, null, List.of("pack"));
    }

    private static StrapRow only(Build build) {
        List<StrapRow> rows = StrapTable.of(BalanceStatement.of(build)).rows();
        assertThat(rows).hasSize(1);
        return rows.get(0);
    }

    private static StrapRange range(Build build) {
        return Objects.requireNonNull(only(build).cells().get(0).range());
    }

    private static String reason(Build build) {
        return plain(only(build).cells().get(0).reason(Figures.METRIC));
    }

    /** By derivation: 300 + 5000 (350 - 360.9)/800 = 231.875; 300 + 5000 (342 - 360.9)/800 = 181.875. */
    @Test
    void theRangeBringsTheCaseBetweenItsLimits() {
        StrapRange range = range(build(movable(PACK, 100, 400)));
        assertThat(range.foremostXMm()).isEqualTo(182);
        assertThat(range.aftmostXMm()).isEqualTo(231);
        assertThat(range.bestXMm()).as("in the middle").isEqualTo(207);
    }

    @Test
    void itIsReadFromTheFrontOfTheBayToTheFrontFace() {
        StrapRow row = only(build(sized(PACK, 160, 60, 40)).withBays(List.of(bay(90, 400))));
        assertThat(row.position().words(Figures.METRIC))
                .isEqualTo("mm from the front of “Pack bay” to the front face of the pack");
        StrapRange range = Objects.requireNonNull(row.cells().get(0).range());
        assertThat(row.position().read(range.foremostXMm())).isEqualTo(Length.ofMm(12));
        assertThat(row.position().read(range.aftmostXMm())).isEqualTo(Length.ofMm(61));
    }

    @Test
    void withoutALengthItIsReadToTheMiddle() {
        StrapRow row = only(build(PACK).withBays(List.of(bay(90.5, 400))));
        assertThat(row.position().to()).isEqualTo("the middle of the pack");
        StrapRange range = Objects.requireNonNull(row.cells().get(0).range());
        assertThat(row.position().read(range.foremostXMm())).as("whole as read").isEqualTo(Length.ofMm(92));
    }

    @Test
    void withoutABayItIsReadFromTheFrontEndOfItsTravel() {
        StrapRow row = only(build(movable(PACK, 150, 400)));
        assertThat(row.position().from()).isEqualTo("the front end of its travel");
        assertThat(row.position().read(182)).isEqualTo(Length.ofMm(32));
    }

    @Test
    void whatTravelLeavesOpenIsTakenOffTheRange() {
        StrapRange range = range(build(movable(PACK, 210, 400)));
        assertThat(range.foremostXMm()).isEqualTo(210);
        assertThat(range.bestXMm()).isEqualTo(210);
        assertThat(range.aftmostXMm()).isEqualTo(231);
    }

    @Test
    void saysHowMuchFartherItWouldHaveToGo() {
        assertThat(reason(build(movable(PACK, 250, 400))))
                .isEqualTo("It would have to go 19 mm farther forward than it can.");
        assertThat(reason(build(movable(PACK, 100, 150))))
                .isEqualTo("It would have to go 32 mm farther aft than it can.");
    }

    @Test
    void aRuleToKeepApartLeavesAGap() {
        Build build = build(movable(PACK, 170, 400))
                .withLines(List.of(movable(PACK, 170, 400), MOTOR, REST, part("compass", 0, 205)))
                .withKeepApart(List.of(new KeepApart("K1", "Compass", "compass", "pack", Length.ofMm(20))));
        StrapRange range = range(build);
        assertThat(range.foremostXMm()).as("behind the gap from 185 to 225").isEqualTo(225);
        assertThat(range.aftmostXMm()).isEqualTo(231);
        assertThat(range.bestXMm()).isEqualTo(225);
    }

    @Test
    void everyFlightCaseHasItsOwnCell() {
        Build build = Ledgers.withCases(
                build(movable(PACK, 100, 400)),
                Ledgers.loadCase("light", Purpose.FLIGHT, List.of("motor")),
                Ledgers.loadCase("home", Purpose.FLIGHT, List.of("pack")),
                Ledgers.loadCase("bench", Purpose.GROUND, List.of()),
                new LoadCase(
                        "ferry",
                        "Ferry",
                        Purpose.FLIGHT,
                        false,
                        List.of(),
                        Map.of("pack", Trims.at(250)),
                        List.of(),
                        List.of()));
        List<StrapCell> cells = only(build).cells();
        assertThat(cells).extracting(StrapCell::loadCase).containsExactly("all-up", "light", "home", "ferry");
        assertThat(cells.get(2).reason(Figures.METRIC)).isEqualTo("It stays at home.");
        assertThat(cells.get(3).range())
                .as("wherever the case has it now")
                .isEqualTo(cells.get(0).range());
        // by derivation: 4800 g without the motor, 373.4375 mm; 300 + 4800 (350 - 373.4375)/800 = 159.375
        assertThat(Objects.requireNonNull(cells.get(1).range()).aftmostXMm()).isEqualTo(159);
    }

    @Test
    void whatIsNotKnownIsNotStrapped() {
        PartLine nowhere = part("tail", 100, 900).withPlace(LinePlace.UNKNOWN);
        Build build = build(movable(PACK, 100, 400));
        assertThat(reason(build.withLines(List.of(movable(PACK, 100, 400), MOTOR, REST, nowhere))))
                .startsWith("Not every mass and station aboard is known");
        assertThat(reason(build.withGeometry(Trims.limits(null)))).isEqualTo("There are no limits to balance it by.");
    }

    @Test
    void aPackThatIsFixedIsNoRow() {
        assertThat(StrapTable.of(BalanceStatement.of(build(PACK))).rows()).isEmpty();
    }
}
