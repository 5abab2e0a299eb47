package dev.ledgerwing.core.power.network;

import static dev.ledgerwing.core.power.Supplies.bench;
import static dev.ledgerwing.core.power.Supplies.build;
import static dev.ledgerwing.core.power.Supplies.feed;
import static dev.ledgerwing.core.power.Supplies.parts;
import static dev.ledgerwing.core.power.Supplies.rail;
import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.ElectricalLoad;
import dev.ledgerwing.core.build.ElectricalLoad.Draws;
import dev.ledgerwing.core.build.WireRun;
import dev.ledgerwing.core.build.WireRun.Routing;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** FAA AC 43.13-1B Table 11-9: 22 AWG with insulation for 105 °C carries 3 A in a bundle, and the table ends at 24 AWG. */
class LeadRuleTest {

    /** Three pieces on a rail of 6 V that is nominally 12 V. */
    private static Build with(int awg, Draws draws, double typicalA) {
        WireRun lead = new WireRun(awg, Length.ofMm(10), 3, Routing.BUNDLE, 105.0);
        ElectricalLoad load =
                new ElectricalLoad("main", draws, typicalA, 2 * typicalA, 0.0, 30.0, Map.of(), null, lead);
        return build(
                List.of(bench("b", 6)), List.of(rail("main", 12)), List.of(feed("b", "main")), parts("L", 3, load));
    }

    @ParameterizedTest
    @CsvSource({"2.41, TIGHT", "2.99, TIGHT", "3.01, BREAKS"})
    void holdsWhatOnePieceDrawsAgainstTheTable(double typicalA, Verdict verdict) {
        assertThat(Found.said(LeadRule.LEAD, verdict, with(22, Draws.CONSTANT_CURRENT, typicalA)))
                .contains("The leads of “Part L” carry", "3 A");
    }

    @Test
    void saysNothingOfLeadsWithinTheirReserve() {
        Found.none(LeadRule.LEAD, with(22, Draws.CONSTANT_CURRENT, 2.4));
    }

    @Test
    void doesNotKnowThinnerLeadsThanTheTableHas() {
        assertThat(Found.said(LeadRule.LEAD, Verdict.UNKNOWN, with(26, Draws.CONSTANT_CURRENT, 0.1)))
                .contains("is not known", "26 AWG is outside of");
    }

    /** By derivation: 1.6 A at 12 V are 19.2 W, a little more than 3.2 A at the 6 V that arrive. */
    @Test
    void countsConstantPowerAtTheVoltageThatArrives() {
        assertThat(Found.said(LeadRule.LEAD, Verdict.BREAKS, with(22, Draws.CONSTANT_POWER, 1.6)))
                .contains("more than the 3 A");
    }
}
