package dev.ledgerwing.core.mass;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.Builds;
import dev.ledgerwing.core.Said;
import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.LineMass;
import dev.ledgerwing.core.build.LoadCase.Purpose;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MassFindingsTest {

    @Test
    void namesEachPartWithoutAMass() {
        Build build = Builds.with(
                Builds.certain("a", 100),
                Builds.line("tray", Category.STRUCTURE, 1, LineMass.notKnown()),
                Builds.line("mast", Category.RADIO, 2, LineMass.notKnown()));
        List<Finding> findings = only("mass.unknown", build);
        assertThat(findings).extracting(Finding::line).containsExactly("tray", "mast");
        assertThat(findings).extracting(Finding::verdict).containsOnly(Verdict.UNKNOWN);
        assertThat(findings).extracting(Finding::measured).containsOnlyNulls();
        assertThat(findings.get(0).sentence())
                .isEqualTo("“Part tray” has no mass yet and is in no sum: weigh it, or enter a guess.");
    }

    @Test
    void namesAPartWithoutAMassThatStaysAtHomeToo() {
        Build build = Builds.withExactCases(
                Builds.with(Builds.line("tray", Category.STRUCTURE, 1, LineMass.notKnown())),
                List.of(Builds.designCase(List.of("tray"))));
        assertThat(only("mass.unknown", build)).extracting(Finding::line).containsExactly("tray");
    }

    @Test
    void namesWhatIsCarriedWithoutAMassOnceForEachCase() {
        Build build = Builds.withCases(
                Builds.with(Builds.certain("a", 100)),
                Builds.loadCase("one", Purpose.FLIGHT, List.of(), Builds.extra("Box", null, Basis.GUESSED)),
                Builds.loadCase(
                        "two",
                        Purpose.GROUND,
                        List.of(),
                        Builds.extra("Box", null, Basis.GUESSED),
                        Builds.extra("Box", null, Basis.GUESSED)));
        assertThat(only("mass.unknown", build))
                .extracting(Finding::subject)
                .containsExactly("Box in “Case one”", "Box in “Case two”");
    }

    @ParameterizedTest
    @CsvSource({"42, more", "-42, less"})
    void saysABookingThatIsThere(double bookedG, String word) {
        List<Finding> findings =
                only("mass.booking", Builds.withBooking(bookedG, Builds.with(Builds.certain("a", 100))));
        assertThat(findings)
                .extracting(Said::sentence)
                .containsExactly("The scales said 42 g " + word
                        + " than the ledger: booked, counted in the predicted mass, not explained yet. Noted: “weighed on the"
                        + " kitchen scales”.");
        assertThat(findings).extracting(Finding::measured).containsExactly(bookedG);
    }

    @Test
    void saysNothingOfABookingOfNothing() {
        assertThat(only("mass.booking", Builds.withBooking(0, Builds.with(Builds.certain("a", 100)))))
                .isEmpty();
    }

    @Test
    void judgesTheMassBudgetAlone() {
        assertThat(MassFindings.of(MassForecast.of(Builds.with()), Figures.METRIC))
                .extracting(Finding::budget)
                .containsOnly(Budget.MASS);
    }

    private static List<Finding> only(String code, Build build) {
        return MassFindings.of(MassForecast.of(build), Figures.METRIC).stream()
                .filter(finding -> finding.code().equals(code))
                .toList();
    }
}
