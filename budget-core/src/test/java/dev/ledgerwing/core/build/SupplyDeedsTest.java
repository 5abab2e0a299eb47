package dev.ledgerwing.core.build;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.ElectricalLoad.Draws;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

class SupplyDeedsTest {

    /** A pack and cells on one rail; a servo on it serves the gear and runs in two phases. */
    private static Build supplied() {
        SolarArray cells = new SolarArray(
                60.0, 18.0, 22.0, 3.4, null, null, 0, 0, false, SolarArray.Connection.DIRECT, null, "charging");
        return Builds.small()
                .withPhases(List.of(
                        new Phase("climb", "Climb", 3.0, false, null, List.of("cruise"), false),
                        new Phase("cruise", "Cruise", null, true, null, List.of("climb"), true)))
                .withFunctions(List.of(function("gear"), function("charging")))
                .withRails(List.of(new Rail("main", "Main", 5.0, null, null, false)))
                .withSources(List.of(
                        PowerSource.battery("pack", "Pack", null, Builds.pack(3)),
                        PowerSource.solar("cells", "Cells", null, cells)))
                .withFeeds(List.of(feed("one", "pack"), feed("two", "pack"), feed("three", "cells")))
                .withSolarDay(new SolarDay(
                        "Moss", 53, -2, LocalDate.of(2026, 6, 21), 1, 0, 15, 100, 90, null, 6, 100, "cruise"))
                .withLines(Builds.small().lines().stream()
                        .map(SupplyDeedsTest::supplied)
                        .toList());
    }

    private static PartLine supplied(PartLine line) {
        return line.id().equals("L002")
                ? line.withServes(List.of("gear", "charging"))
                        .withElectrical(List.of(new ElectricalLoad(
                                "main",
                                Draws.CONSTANT_CURRENT,
                                0.1,
                                0.5,
                                null,
                                null,
                                Map.of("climb", 0.5, "cruise", 0.1),
                                null,
                                null)))
                : line;
    }

    private static RadioFunction function(String code) {
        return new RadioFunction(
                code, code, RadioFunction.Kind.PROPORTIONAL, List.of(), RadioFunction.Criticality.FLIGHT, false);
    }

    private static Feed feed(String code, String from) {
        return new Feed(code, code, from, "main", List.of());
    }

    private static PartLine servo(Build build) {
        return build.line("L002").orElseThrow();
    }

    @Test
    void aSourceTakesItsFeedsWithIt() {
        Build left = SupplyDeeds.withoutSource(supplied(), "pack");
        assertThat(left.power().sources()).extracting(PowerSource::code).containsExactly("cells");
        assertThat(left.power().feeds()).extracting(Feed::code).containsExactly("three");
    }

    @Test
    void aPhaseTakesEveryMentionOfItWithIt() {
        Build left = SupplyDeeds.withoutPhases(supplied(), List.of("cruise"));
        assertThat(left.phases()).extracting(Phase::code).containsExactly("climb");
        assertThat(left.phases().get(0).next()).isEmpty();
        assertThat(servo(left).electrical().get(0).dutyByPhase()).isEqualTo(Map.of("climb", 0.5));
        assertThat(Objects.requireNonNull(left.power().day()).phase()).isNull();
    }

    @Test
    void aPhaseThatTheDayDoesNotMentionLeavesTheDay() {
        Build before = supplied();
        assertThat(SupplyDeeds.withoutPhases(before, List.of("climb")).power().day())
                .isEqualTo(before.power().day());
    }

    @Test
    void aFunctionTakesEveryMentionOfItWithIt() {
        Build left = SupplyDeeds.withoutFunctions(supplied(), List.of("charging"));
        assertThat(left.radio().functions()).extracting(RadioFunction::code).containsExactly("gear");
        assertThat(servo(left).serves()).containsExactly("gear");
        assertThat(Objects.requireNonNull(left.power().sources().get(1).array()).stopFunction())
                .isNull();
    }
}
