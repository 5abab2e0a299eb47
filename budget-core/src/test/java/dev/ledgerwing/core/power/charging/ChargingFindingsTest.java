package dev.ledgerwing.core.power.charging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.Said;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Builds;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.FeedElement.Kind;
import dev.ledgerwing.core.build.FeedElement.Sharing;
import dev.ledgerwing.core.build.PowerRules;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.Radio;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioFunction.Criticality;
import dev.ledgerwing.core.build.SolarArray;
import dev.ledgerwing.core.build.SolarArray.Connection;
import dev.ledgerwing.core.power.energy.Flights;
import dev.ledgerwing.core.power.network.NetworkStatement;
import dev.ledgerwing.core.power.network.PowerNetwork;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChargingFindingsTest {

    private static final String NOT_SAID =
            " On loss of signal the charging is to be off: what “Charging” is to do then is not said.";

    private static final PowerSource PACK = Flights.pack("one", 5000.0);

    @Test
    void saysNothingWhereThereAreNoCells() {
        assertThat(findings(Suns.with(List.of(PACK), Flights.feed("one", "main"))))
                .isEmpty();
    }

    @Test
    void saysThatCellsReachNoPack() {
        Build build = Suns.with(
                List.of(PACK, Suns.cells(Suns.DIRECT)), Flights.feed("cells", "other"), Flights.feed("one", "main"));
        says(
                only("power.charge-way", build),
                Verdict.TIGHT,
                "“Cells” leads to no rail that a pack feeds: the sun charges nothing, and by itself it is not counted as a"
                        + " source.");
    }

    @Test
    void saysThatADiodeIsInTheWay() {
        Build build = Suns.with(
                List.of(PACK, Suns.cells(Suns.DIRECT)),
                Flights.feed("cells", "main"),
                Flights.feed("one", "main", FeedElement.diode("Blocker", 10.0, 0.4)));
        says(
                only("power.charge-way", build),
                Verdict.TIGHT,
                "The sun cannot reach “Pack one”: the diode “Blocker” lies between it and “Cells” and lets current out of"
                        + " the pack only.");
        assertThat(findings(build)).hasSize(1);
    }

    @Test
    void doesNotKnowWhatARegulatorLetsThrough() {
        Build build = Suns.with(
                List.of(PACK, Suns.cells(Suns.DIRECT)),
                Flights.feed("cells", "main", Builds.regulator(12)),
                Flights.feed("one", "main"));
        says(
                only("power.charge-way", build),
                Verdict.UNKNOWN,
                "What “Cells” gives to “Pack one” is not known: “Regulator” lies between, and nothing here says what it"
                        + " lets through that way.");
    }

    @Test
    void saysNothingOfTheWayWhereItIsOpen() {
        assertThat(of("power.charge-way", Suns.on(PACK, Suns.DIRECT))).isEmpty();
    }

    /** 2.2 A flow, and 1 C may: with a reserve of 20 % the pack needs 2.75 Ah. */
    @ParameterizedTest
    @CsvSource({"2751, HOLDS", "2749, TIGHT", "2201, TIGHT", "2199, BREAKS"})
    void holdsTheCurrentAgainstWhatThePackBears(double capacityMah, Verdict verdict) {
        Finding finding = only("power.charge-current", Suns.on(Flights.pack("one", capacityMah), Suns.DIRECT));
        assertThat(finding.verdict()).isEqualTo(verdict);
        assertThat(finding.measured()).isEqualTo(2.2);
        assertThat(finding.limit()).isCloseTo(capacityMah / 1000, within(1e-9));
        assertThat(finding.unit()).isEqualTo("A");
    }

    @Test
    void saysTheCurrentAndWhatThePackBears() {
        says(
                only("power.charge-current", Suns.on(PACK, Suns.TRACKED)),
                Verdict.HOLDS,
                "In full sun with everything else off up to 3 A flow into “Pack one”, it may be charged with 5 A.");
        says(
                only("power.charge-current", Suns.on(Flights.pack("one", 3500.0), Suns.TRACKED)),
                Verdict.TIGHT,
                "In full sun with everything else off up to 3 A flow into “Pack one”, it may be charged with 3.5 A: less"
                        + " than 20 % is left, and between clouds the sun is stronger for moments.");
        says(
                only("power.charge-current", Suns.on(Flights.pack("one", 2000.0), Suns.TRACKED)),
                Verdict.BREAKS,
                "In full sun with everything else off up to 3 A flow into “Pack one”, more than the 2 A it may be charged"
                        + " with.");
    }

    @Test
    void doesNotKnowTheCurrentWithoutItsInputs() {
        SolarArray bare =
                new SolarArray(null, null, null, null, null, null, 0, 0, false, Connection.TRACKER, null, null);
        says(
                only("power.charge-current", Suns.on(Flights.packOf("one", null, 80.0, null, true), bare)),
                Verdict.UNKNOWN,
                "How fast the sun may charge “Pack one” is not known: enter the greatest power and the efficiency of the"
                        + " tracker of “Cells”; the capacity and the charging rate of “Pack one”.");
        assertThat(only("power.charge-current", Suns.on(Flights.packOf("one", 5000.0, 80.0, null, true), Suns.DIRECT))
                        .verdict())
                .isEqualTo(Verdict.UNKNOWN);
    }

    @Test
    void breaksWhereNothingStopsTheCharging() {
        says(
                only("power.charge-stop", Suns.on(uncut(), Suns.DIRECT)),
                Verdict.BREAKS,
                "Nothing stops the sun from charging “Pack one” further than full: it needs a cut-off that works by itself"
                        + " at 12.6 V.");
    }

    @Test
    void breaksWhereARadioSwitchIsTheOnlyGuard() {
        says(
                only("power.charge-stop", switched(Suns.on(uncut(), Suns.DIRECT))),
                Verdict.BREAKS,
                "Only the radio can stop the sun from charging “Pack one” further than full: a radio switch must not be the"
                        + " only guard, it needs a cut-off that works by itself at 12.6 V." + NOT_SAID);
    }

    @Test
    void isTightWhereTheRadioCannotStopTheCharging() {
        says(
                only("power.charge-stop", Suns.on(PACK, Suns.DIRECT)),
                Verdict.TIGHT,
                "The charging of “Pack one” is cut off by itself at 12.6 V, but no function of the radio can stop the"
                        + " charging by “Cells”: on loss of signal it goes on.");
    }

    @Test
    void holdsWithACutOffAndAFunctionOfTheRadio() {
        says(
                only("power.charge-stop", switched(Suns.on(PACK, Suns.DIRECT), "off")),
                Verdict.HOLDS,
                "The charging of “Pack one” is cut off by itself at 12.6 V, and the radio can stop it. On loss of signal"
                        + " “Charging” is to be off.");
    }

    @Test
    void doesNotKnowWhatStopsTheChargingOnLossOfSignalWhereThatIsNotSaid() {
        says(
                only("power.charge-stop", switched(Suns.on(PACK, Suns.DIRECT))),
                Verdict.UNKNOWN,
                "The charging of “Pack one” is cut off by itself at 12.6 V, and the radio can stop it." + NOT_SAID);
    }

    @Test
    void breaksWhereColdCellsCanOverchargeAndNothingStopsThem() {
        says(
                only("power.charge-over", Suns.on(uncut(), Suns.DIRECT)),
                Verdict.BREAKS,
                "At −10 °C the open cells of “Cells” stand at 19.89 V, above the 12.6 V of “Pack one” when full: they can"
                        + " overcharge it, a stop is required.");
    }

    @Test
    void holdsWhereTheCutOffStopsColdCells() {
        says(
                only("power.charge-over", Suns.on(PACK, Suns.DIRECT)),
                Verdict.HOLDS,
                "At −10 °C the open cells of “Cells” stand at 19.89 V, above the 12.6 V of “Pack one” when full: they can"
                        + " overcharge it, and the cut-off must stop it.");
    }

    @Test
    void holdsWhereColdCellsStayBelowTheFullPack() {
        says(
                only("power.charge-over", Suns.on(uncut(), Suns.direct(9.0, 10.9, -0.3))),
                Verdict.HOLDS,
                "At −10 °C the open cells of “Cells” stand at 12.04 V, not above the 12.6 V of “Pack one” when full.");
    }

    @Test
    void goesByTheColdestCellsOfTheRules() {
        Build build = Suns.on(PACK, Suns.direct(9.0, 11.9, -0.3));
        assertThat(only("power.charge-over", build).measured()).isCloseTo(13.15, within(0.001));
        assertThat(only("power.charge-over", withCells(20, 30, build)).measured())
                .isCloseTo(12.079, within(0.001));
    }

    @Test
    void doesNotKnowWhetherColdCellsOverchargeWithoutTheCoefficient() {
        says(
                only("power.charge-over", Suns.on(PACK, Suns.direct(15.0, 18.0, null))),
                Verdict.UNKNOWN,
                "Whether cold cells could charge “Pack one” further than full is not known: enter the change of voltage"
                        + " with temperature of “Cells”.");
        assertThat(only("power.charge-over", Suns.on(PACK, Suns.direct(15.0, null, -0.3)))
                        .verdict())
                .isEqualTo(Verdict.UNKNOWN);
    }

    @Test
    void isTightWhereHotCellsNeverFillThePack() {
        says(
                only("power.charge-fill", Suns.on(PACK, Suns.DIRECT)),
                Verdict.TIGHT,
                "At 70 °C the cells of “Cells” give their power at 12.57 V, below the 12.6 V of “Pack one” when full: hot"
                        + " cells never fill it.");
    }

    @Test
    void holdsWhereHotCellsFillThePack() {
        says(
                only("power.charge-fill", Suns.on(PACK, Suns.direct(15.5, 18.0, -0.3))),
                Verdict.HOLDS,
                "At 70 °C the cells of “Cells” give their power at 13.07 V, enough for the 12.6 V of “Pack one” when"
                        + " full.");
    }

    @Test
    void countsWhatIsLostInADiode() {
        says(
                only("power.charge-fill", behindADiode(0.5)),
                Verdict.TIGHT,
                "At 70 °C the cells of “Cells” give their power at 12.57 V behind the diode, below the 12.6 V of “Pack one”"
                        + " when full: hot cells never fill it.");
        says(
                only("power.charge-fill", behindADiode(null)),
                Verdict.UNKNOWN,
                "Whether hot cells get “Pack one” full is not known: enter the voltage lost in the diode behind “Cells”.");
    }

    @Test
    void doesNotKnowWhetherHotCellsFillWithoutTheirVoltages() {
        says(
                only("power.charge-fill", Suns.on(PACK, Suns.direct(null, null, null))),
                Verdict.UNKNOWN,
                "Whether hot cells get “Pack one” full is not known: enter the voltage of greatest power, the"
                        + " open-circuit voltage and the change of voltage with temperature of “Cells”.");
    }

    @Test
    void concludesNothingFromTheVoltsBehindATracker() {
        Build build = Suns.on(PACK, Suns.TRACKED);
        assertThat(of("power.charge-over", build)).isEmpty();
        assertThat(of("power.charge-fill", build)).isEmpty();
    }

    /** 2.2 A flow back into the pack. */
    @ParameterizedTest
    @CsvSource({"2.1, BREAKS", "2.3, TIGHT", "2.7, TIGHT"})
    void holdsWhatLiesBeforeThePackAgainstTheCurrentThatFlowsBack(double ratingA, Verdict verdict) {
        assertThat(only("power.charge-element", behind(fuse(ratingA))).verdict())
                .isEqualTo(verdict);
    }

    @Test
    void saysWhatFlowsBack() {
        says(
                only("power.charge-element", behind(fuse(2.0))),
                Verdict.BREAKS,
                "When the sun charges “Pack one” with everything else off, up to 2.2 A flow back through the fuse “Main”"
                        + " of “one to main”, more than the 2 A it may carry.");
        says(
                only("power.charge-element", behind(fuse(2.5))),
                Verdict.TIGHT,
                "When the sun charges “Pack one” with everything else off, up to 2.2 A flow back through the fuse “Main”"
                        + " of “one to main”, of the 2.5 A it may carry: less than 20 % is left.");
    }

    @Test
    void saysNothingOfWhatBearsTheCurrentBack() {
        assertThat(of("power.charge-element", behind(fuse(2.8)))).isEmpty();
    }

    @Test
    void letsPlugsSideBySideShareTheCurrentBack() {
        FeedElement two = new FeedElement(
                "Plugs", Kind.CONNECTOR, 2.3, null, 2, Sharing.OWN_BRANCH, null, null, null, null, null);
        assertThat(of("power.charge-element", behind(two))).isEmpty();
    }

    private static Build behind(FeedElement element) {
        return Suns.with(
                List.of(PACK, Suns.cells(Suns.DIRECT)),
                Flights.feed("cells", "main"),
                Flights.feed("one", "main", element));
    }

    private static FeedElement fuse(double ratingA) {
        return FeedElement.rated("Main", Kind.FUSE, ratingA);
    }

    private static Build behindADiode(@Nullable Double forwardV) {
        return Suns.with(
                List.of(PACK, Suns.cells(Suns.direct(15.5, 18.0, -0.3))),
                Flights.feed("cells", "main", FeedElement.diode("Blocker", 10.0, forwardV)),
                Flights.feed("one", "main"));
    }

    private static PowerSource uncut() {
        return Flights.packOf("one", 5000.0, 80.0, 1.0, false);
    }

    /** The same with a function of the radio that can stop the charging. */
    private static Build switched(Build build) {
        return switched(build, null);
    }

    private static Build switched(Build build, @Nullable String onSignalLoss) {
        RadioFunction charging = new RadioFunction(
                "charging",
                "Charging",
                RadioFunction.Kind.SWITCHED,
                List.of("off", "on"),
                Criticality.CONVENIENCE,
                false,
                onSignalLoss,
                null,
                Map.of(),
                null);
        SolarArray was = Suns.DIRECT;
        SolarArray stoppable = new SolarArray(
                was.maxPowerW(),
                was.maxPowerV(),
                was.openCircuitV(),
                was.shortCircuitA(),
                was.powerPercentPerC(),
                was.voltagePercentPerC(),
                was.tiltDeg(),
                was.facesDeg(),
                was.mirrored(),
                was.connection(),
                was.trackerEfficiencyPercent(),
                "charging");
        return withRadio(build, Radio.of(List.of(charging)))
                .withSources(List.of(build.power().sources().get(0), Suns.cells(stoppable)));
    }

    private static Build withRadio(Build build, Radio radio) {
        return new Build(
                build.airframe(),
                build.budget(),
                build.judgedBy(),
                build.geometry(),
                build.assemblies(),
                build.lines(),
                build.loadCases(),
                build.bays(),
                build.keepApart(),
                build.phases(),
                build.power(),
                radio,
                build.outputs(),
                build.weighIns(),
                build.booking(),
                build.assemblyBookings());
    }

    private static Build withCells(double coldestC, double hottestC, Build build) {
        return build.withPowerRules(new PowerRules(
                null, null, null, null, null, null, null, null, null, null, null, null, null, coldestC, hottestC));
    }

    private static void says(Finding finding, Verdict verdict, String sentence) {
        assertThat(Said.sentence(finding)).isEqualTo(sentence);
        assertThat(finding.verdict()).isEqualTo(verdict);
    }

    private static Finding only(String code, Build build) {
        List<Finding> findings = of(code, build);
        assertThat(findings).hasSize(1);
        return findings.get(0);
    }

    private static List<Finding> of(String code, Build build) {
        return findings(build).stream()
                .filter(finding -> finding.code().equals(code))
                .toList();
    }

    private static List<Finding> findings(Build build) {
        return ChargingFindings.of(NetworkStatement.of(PowerNetwork.of(build)), Charging.of(build));
    }
}
