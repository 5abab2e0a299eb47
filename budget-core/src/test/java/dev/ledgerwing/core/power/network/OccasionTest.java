package dev.ledgerwing.core.power.network;

import static dev.ledgerwing.core.power.Supplies.build;
import static dev.ledgerwing.core.power.Supplies.constantCurrent;
import static dev.ledgerwing.core.power.Supplies.feed;
import static dev.ledgerwing.core.power.Supplies.pack;
import static dev.ledgerwing.core.power.Supplies.part;
import static dev.ledgerwing.core.power.Supplies.phase;
import static dev.ledgerwing.core.power.Supplies.rail;
import static dev.ledgerwing.core.power.Supplies.within;
import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.LoadCase;
import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.Power;
import dev.ledgerwing.core.build.PowerRules;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

class OccasionTest {

    /** A phase with everything aboard and one in which something stays at home. */
    private static Build leavingAtHome(String line) {
        PowerSource pack = PowerSource.battery(
                "p", "Pack", "PACK", Objects.requireNonNull(pack("p", 3, 0).pack()));
        Build all = build(
                new Power(
                        List.of(pack("q", 3, 0)),
                        List.of(rail("main", 11.1)),
                        List.of(feed("q", "main")),
                        PowerRules.DEFAULT,
                        null),
                List.of(),
                part("PACK"),
                part("L", within(8, 13, constantCurrent("main", 2, 3))));
        LoadCase light = new LoadCase(
                "light", "Light", LoadCase.Purpose.FLIGHT, false, List.of(line), Map.of(), List.of(), List.of());
        return all.withFeeds(List.of())
                .withSources(List.of(pack))
                .withFeeds(List.of(feed("p", "main")))
                .withLoadCases(List.of(LoadCase.everythingAboard(), light))
                .withPhases(List.of(
                        phase("loaded"), new Phase("light", "Light phase", 5.0, false, "light", List.of(), false)));
    }

    private static NetworkSolution solution(Build build, int occasion) {
        PowerNetwork network = PowerNetwork.of(build);
        return network.on(network.occasions().get(occasion)).normal(Charge.NOMINAL, LoadLevel.CONTINUOUS);
    }

    @Test
    void aPackThatStaysAtHomeGivesNothing() {
        Build build = leavingAtHome("PACK");
        assertThat(solution(build, 0).loads().get(0).isDark()).isFalse();
        assertThat(solution(build, 1).loads().get(0).isDark()).isTrue();
        assertThat(Found.said(RailRule.LOW, Verdict.BREAKS, build)).contains("“Part L” on “Rail main” gets no voltage");
    }

    @Test
    void aPartThatStaysAtHomeDrawsNothing() {
        Build build = leavingAtHome("L");
        assertThat(solution(build, 0).amperes("p")).isEqualTo(2);
        assertThat(solution(build, 1).amperes("p")).isZero();
        assertThat(solution(build, 1).loads().get(0).runs()).isFalse();
        Found.none(RailRule.LOW, build);
    }

    @Test
    void withoutPhasesThereIsOneOccasionForAllTheTime() {
        PowerNetwork network = PowerNetwork.of(leavingAtHome("L").withPhases(List.of()));
        assertThat(network.occasions())
                .singleElement()
                .extracting(Occasion::name)
                .isEqualTo("all the time");
    }
}
