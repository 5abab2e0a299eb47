package dev.ledgerwing.seed;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.mass.MassFindings;
import dev.ledgerwing.core.mass.MassForecast;
import dev.ledgerwing.core.mass.MassMargin;
import dev.ledgerwing.core.mass.MassStatement;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SeedMassTest {

    @ParameterizedTest
    @CsvSource({"curlew, BREAKS", "godwit, TIGHT", "dunlin, HOLDS"})
    void theFleetShowsEveryVerdictOnATarget(String code, Verdict verdict) {
        assertThat(findings(code))
                .filteredOn(finding -> finding.code().equals("mass.target"))
                .extracting(Finding::verdict)
                .containsExactly(verdict);
        assertThat(Verdict.worst(findings(code).stream().map(Finding::verdict).toList()))
                .isEqualTo(verdict);
    }

    @Test
    void theCurlewIsOverByOneAndAHalfToThreePerCent() {
        assertThat(marginPercentOfTarget("curlew")).isBetween(-3.0, -1.5);
    }

    @Test
    void theDunlinIsNearlyAllWeighed() {
        assertThat(statement("dunlin").total().weighedPercent()).isGreaterThan(98);
    }

    private static double marginPercentOfTarget(String code) {
        MassMargin margin = statement(code).margin().orElseThrow();
        return 100.0 * margin.mass().mg() / margin.target().mg();
    }

    private static List<Finding> findings(String code) {
        return MassFindings.of(MassForecast.of(statement(code)), Figures.METRIC);
    }

    private static MassStatement statement(String code) {
        return SeedFleet.airframes().stream()
                .filter(airframe -> airframe.code().equals(code))
                .map(airframe -> MassStatement.of(airframe.last().build()))
                .findFirst()
                .orElseThrow();
    }
}
