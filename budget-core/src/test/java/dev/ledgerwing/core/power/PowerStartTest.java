package dev.ledgerwing.core.power;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.ledgerwing.core.build.Airframe;
import dev.ledgerwing.core.build.Assembly;
import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.FeedElement.Kind;
import dev.ledgerwing.core.build.LineMass;
import dev.ledgerwing.core.build.MassBudget;
import dev.ledgerwing.core.build.Pack;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.core.build.Stage;
import dev.ledgerwing.core.quantity.Mass;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PowerStartTest {

    private static final Rail DRIVE = new Rail("drive", "Drive", 22.2, 19.2, 25.2, false);
    private static final Rail SERVOS = new Rail("servos", "Servos", 6.0, 5.2, 6.4, false);
    private static final Rail PAYLOAD = new Rail("payload", "Payload", 12.0, 11.4, 12.6, false);

    private final Build blank = Build.blank(
            new Airframe("dunlin", "Dunlin", null, Stage.DESIGN, "nose tip"), new MassBudget(null, null, null, null));

    @ParameterizedTest
    @EnumSource
    void noRatingIsInvented(PowerStart start) {
        Build build = start.on(blank);

        assertThat(build.power().feeds())
                .isNotEmpty()
                .allSatisfy(feed ->
                        assertThat(feed.elements()).isNotEmpty().allSatisfy(PowerStartTest::saysNothingOfItsRatings));
        assertThat(packs(build)).isNotEmpty().allSatisfy(pack -> {
            assertThat(pack.cellCapacityMah()).isNull();
            assertThat(pack.continuousC()).isNull();
            assertThat(pack.automaticCutOff()).isFalse();
        });
    }

    private static void saysNothingOfItsRatings(FeedElement element) {
        assertThat(element.ratingA()).isNull();
        assertThat(element.peakRatingA()).isNull();
        assertThat(element.milliohm()).isNull();
        assertThat(element.forwardV()).isNull();
    }

    private static List<Pack> packs(Build build) {
        return build.power().sources().stream()
                .filter(source -> source.kind() == PowerSource.Kind.BATTERY)
                .map(source -> Objects.requireNonNull(source.pack()))
                .toList();
    }

    @ParameterizedTest
    @EnumSource
    void isNotPutOnTopOfASupply(PowerStart start) {
        Build once = start.on(blank);

        assertThat(PowerStart.isOffered(once)).isFalse();
        assertThatIllegalArgumentException().isThrownBy(() -> start.on(once)).withMessageContaining("is there already");
    }

    @ParameterizedTest
    @EnumSource
    void railsThatAreThereStayAsTheyAre(PowerStart start) {
        Build build = start.on(blank.withRails(List.of(PAYLOAD, SERVOS, DRIVE)));

        assertThat(build.power().rails()).startsWith(PAYLOAD, SERVOS, DRIVE);
    }

    @Test
    void onePackFeedsANewRailThroughARegulator() {
        Build build = PowerStart.ONE_PACK.on(blank);

        assertThat(build.power().rails()).extracting(Rail::nominalV).containsExactly(5.0);
        assertThat(build.power().feeds()).singleElement().satisfies(feed -> {
            assertThat(kinds(feed)).containsExactly(Kind.CONNECTOR, Kind.FUSE, Kind.SWITCH, Kind.REGULATOR);
            assertThat(feed.name()).isEqualTo("Flight pack to Supply, 5 V");
        });
    }

    private static List<Kind> kinds(Feed feed) {
        return feed.elements().stream().map(FeedElement::kind).toList();
    }

    @Test
    void aRailOfWholeCellsIsFedStraightFromThePack() {
        Build build = PowerStart.ONE_PACK.on(blank.withRails(List.of(PAYLOAD, SERVOS, DRIVE)));

        assertThat(build.power().rails()).hasSize(3);
        assertThat(build.power().feeds())
                .extracting(feed -> feed.from() + " " + feed.to())
                .containsExactly("pack drive", "drive servos");
        assertThat(packs(build)).extracting(Pack::seriesCells).containsExactly(6);
        assertThat(Objects.requireNonNull(
                                build.power().feeds().get(1).elements().get(1).regulator())
                        .outputV())
                .isEqualTo(6);
    }

    @Test
    void eachOfTwoPacksHasADiodeAndTheRailMayLoseEither() {
        Build build = PowerStart.TWO_PACKS.on(blank);

        Rail rail = build.power().rails().get(0);
        assertThat(rail.redundant()).isTrue();
        assertThat(build.power().feeds()).hasSize(2).allSatisfy(feed -> {
            assertThat(feed.to()).isEqualTo(rail.code());
            assertThat(kinds(feed)).endsWith(Kind.DIODE);
        });
        assertThat(build.power().sources()).extracting(PowerSource::name).containsExactly("Pack A", "Pack B");
    }

    @Test
    void twoPacksFeedARailThatIsThere() {
        Build build = PowerStart.TWO_PACKS.on(blank.withRails(List.of(DRIVE, SERVOS)));

        assertThat(build.power().rails()).containsExactly(DRIVE, SERVOS);
        assertThat(build.power().feeds()).extracting(Feed::to).containsExactly("servos", "servos");
    }

    @Test
    void packAndCellsMeetAtOneRail() {
        Build build = PowerStart.PACK_AND_CELLS.on(blank);

        assertThat(build.power().feeds())
                .extracting(feed -> feed.from() + " " + feed.to())
                .containsExactly("pack pack-rail", "cells pack-rail", "pack-rail supply-5v");
        assertThat(build.power().rails()).extracting(Rail::nominalV).containsExactlyInAnyOrder(5.0, 11.1);
    }

    @Test
    void aPackIsTheOnlyBatteryOfTheLedgerButNeverAGuess() {
        Build one = blank.withAssemblies(List.of(new Assembly("nose", "Nose", Assembly.MovesWith.NOSE)))
                .withLines(List.of(battery("L1", "Peat pack")));
        PowerSource known = PowerStart.ONE_PACK.on(one).power().sources().get(0);
        assertThat(known.part()).isEqualTo("L1");
        assertThat(known.name()).isEqualTo("Peat pack");

        Build two = one.withLines(List.of(battery("L1", "Peat pack"), battery("L2", "Standby pack")));
        assertThat(PowerStart.ONE_PACK.on(two).power().sources().get(0).part()).isNull();
    }

    private static PartLine battery(String id, String name) {
        return PartLine.named(id, "nose", name, Category.BATTERY, 1, LineMass.of(Mass.ofGrams(500), Basis.WEIGHED));
    }

    @Test
    void aCodeThatARailHasIsNotTakenASecondTime() {
        Build build = PowerStart.ONE_PACK.on(
                blank.withRails(List.of(new Rail("pack", "Pack rail", null, null, null, false))));

        assertThat(build.power().sources()).extracting(PowerSource::code).containsExactly("pack-2");
        assertThat(build.power().feeds()).extracting(Feed::from).containsExactly("pack-2");
    }
}
