package dev.ledgerwing.core.mass;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.Ledgers;
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
        Build build = Ledgers.with(
                Ledgers.certain("a", 100),
                Ledgers.line("tray", Category.STRUCTURE, 1, LineMass.notKnown()),
                Ledgers.line("mast", Category.RADIO, 2, LineMass.notKnown()));
        List<Finding> findings = only("mass.unknown", build);
        assertThat(findings).extracting(Finding::line).containsExactly("tray", "mast");
        assertThat(findings).extracting(Finding::verdict).containsOnly(Verdict.UNKNOWN);
        assertThat(findings).extracting(Finding::measured).containsOnlyNulls();
        assertThat(findings.get(0).sentence())
                .isEqualTo("“Part tray” has no mass yet and is in no sum: weigh it, or enter a guess.");
    }

    @Test
    void namesAPartWithoutAMassThatStaysAtHomeToo() {
        Build build = Ledgers.withExactCases(
                Ledgers.with(Ledgers.line("tray", Category.STRUCTURE, 1, LineMass.notKnown())),
                List.of(Ledgers.designCase(List.of("tray"))));
        assertThat(only("mass.unknown", build)).extracting(Finding::line).containsExactly("tray");
    }

    @Test
    void namesWhatIsCarriedWithoutAMassOnceForEachCase() {
        Build build = Ledgers.withCases(
                Ledgers.with(Ledgers.certain("a", 100)),
                Ledgers.loadCase("one", Purpose.FLIGHT, List.of(), Ledgers.extra("Box", null, Basis.GUESSED)),
                Ledgers.loadCase(
                        "two",
                        Purpose.GROUND,
                        List.of(),
                        Ledgers.extra("Box", null, Basis.GUESSED),
                        Ledgers.extra("Box", null, Basis.GUESSED)));
        assertThat(only("mass.unknown", build))
                .extracting(Finding::subject)
                .containsExactly("Box in “Case one”", "Box in “Case two”");
    }

    @ParameterizedTest
    @CsvSource({"42, more", "-42, less"})
    void saysABookingThatIsThere(double bookedG, String word) {
        List<Finding> findings =
                only("mass.booking", Ledgers.withBooking(bookedG, Ledgers.with(Ledgers.certain("a", 100))));
        assertThat(findings)
                .extracting(Said::sentence)
                .containsExactly("The scales said 42 g " + word
                        + " than the ledger: booked, counted in the predicted mass, not explained yet. Noted: “weighed on the"
                        + " kitchen scales”.");
        assertThat(findings).extracting(Finding::measured).containsExactly(bookedG);
    }

    @Test
    void saysNothingOfABookingOfNothing() {
        assertThat(only("mass.booking", Ledgers.withBooking(0, Ledgers.with(Ledgers.certain("a", 100)))))
                .isEmpty();
    }

    @Test
    void judgesTheMassBudgetAlone() {
        assertThat(MassFindings.of(MassForecast.of(Ledgers.with()), Figures.METRIC))
                .extracting(Finding::budget)
                .containsOnly(Budget.MASS);
    }

    private static List<Finding> only(String code, Build build) {
        return MassFindings.of(MassForecast.of(build), Figures.METRIC).stream()
                .filter(finding -> finding.code().equals(code))
                .toList();
    }
}
