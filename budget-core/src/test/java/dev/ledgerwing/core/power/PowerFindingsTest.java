package dev.ledgerwing.core.power;

import static dev.ledgerwing.core.power.Supplies.build;
import static dev.ledgerwing.core.power.Supplies.constantCurrent;
import static dev.ledgerwing.core.power.Supplies.diode;
import static dev.ledgerwing.core.power.Supplies.feed;
import static dev.ledgerwing.core.power.Supplies.fuse;
import static dev.ledgerwing.core.power.Supplies.packOf;
import static dev.ledgerwing.core.power.Supplies.part;
import static dev.ledgerwing.core.power.Supplies.redundant;
import static dev.ledgerwing.core.power.Supplies.within;
import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.Ledgers;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.power.network.ElementAt;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import org.junit.jupiter.api.Test;

class PowerFindingsTest {

    /** Two packs of two cells through diodes: 8 V full, 5.6 V empty behind them. */
    private static Build orFed(double secondForwardV) {
        return build(
                List.of(packOf("a", 2, 10.0, 10.0, 20.0), packOf("b", 2, 10.0, 10.0, 20.0)),
                List.of(redundant("main", 7.4, 5, 8.5)),
                List.of(feed("a", "main", fuse(10), diode(0.4)), feed("b", "main", fuse(10), diode(secondForwardV))),
                part("L", within(5, 8.5, constantCurrent("main", 2, 3))));
    }

    private static List<Finding> findings(Build build) {
        return PowerFindings.of(PowerStatement.of(build), Figures.METRIC);
    }

    @Test
    void allFindingsAreOfPower() {
        assertThat(findings(orFed(0.4)))
                .isNotEmpty()
                .extracting(Finding::budget)
                .containsOnly(Budget.POWER);
        assertThat(findings(orFed(0.4))).extracting(Finding::code).allMatch(code -> code.startsWith("power."));
    }

    /** Which functions a failure takes is not known: no part says what it serves. */
    @Test
    void twoPacksThroughDiodesHold() {
        assertThat(findings(orFed(0.4)))
                .filteredOn(finding -> finding.verdict() != Verdict.HOLDS)
                .extracting(Finding::code)
                .containsExactly("power.single-failure");
    }

    @Test
    void aLegThatDoesNotHoldAloneBreaks() {
        List<Finding> findings = findings(orFed(1.2));
        assertThat(findings)
                .filteredOn(finding -> finding.code().equals("power.redundant"))
                .singleElement()
                .extracting(Finding::verdict)
                .isEqualTo(Verdict.BREAKS);
        PowerStatement statement = PowerStatement.of(orFed(1.2));
        assertThat(statement
                        .failures()
                        .ofElement(new ElementAt("a-main", 0))
                        .orElseThrow()
                        .loads())
                .isNotEmpty();
        assertThat(statement
                        .failures()
                        .ofElement(new ElementAt("b-main", 0))
                        .orElseThrow()
                        .loads())
                .isEmpty();
    }

    @Test
    void whereNothingIsRecordedThereIsOneFinding() {
        assertThat(findings(Ledgers.with())).extracting(Finding::code).containsExactly("power.nothing");
    }
}
