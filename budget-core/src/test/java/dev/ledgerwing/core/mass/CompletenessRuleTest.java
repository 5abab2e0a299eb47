package dev.ledgerwing.core.mass;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.Ledgers;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Stage;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class CompletenessRuleTest {

    private static final PartLine HULL = Ledgers.named("hull", "Hull", Category.STRUCTURE);
    private static final PartLine WIRING = Ledgers.named("wires", "Leads", Category.WIRING);

    @ParameterizedTest
    @EnumSource(
            value = Stage.class,
            names = {"BUILD", "FLIGHT_TEST", "IN_SERVICE"})
    void missesGlueWiringAndFastenersFromTheBuildOn(Stage stage) {
        assertThat(findings(stage, HULL))
                .extracting(Finding::code)
                .containsExactly("mass.no-glue-or-covering", "mass.no-wiring", "mass.no-fasteners");
        assertThat(findings(stage, HULL)).extracting(Finding::verdict).containsOnly(Verdict.UNKNOWN);
    }

    @ParameterizedTest
    @EnumSource(
            value = Stage.class,
            names = {"CONCEPT", "DESIGN"})
    void missesNothingBefore(Stage stage) {
        assertThat(findings(stage, HULL)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Epoxy and filler",
                "Covering, wing",
                "Iron-on film",
                "Laminating resin",
                "CA",
                "Hinge TAPE",
                "Glue",
                "Paint"
            })
    void knowsGlueAndCoveringByWord(String name) {
        assertThat(missing(name)).containsExactly("mass.no-fasteners");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Screws M3",
                "Nylon wing bolts",
                "Lock nuts",
                "Cable ties",
                "Hatch magnets",
                "Hook-and-loop strap",
                "Pin"
            })
    void knowsFastenersByWord(String name) {
        assertThat(missing(name)).containsExactly("mass.no-glue-or-covering");
    }

    @Test
    void letsOneLineStandForBoth() {
        assertThat(missing("Glue and screws")).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"Sundries", "Minute things", "Spinner", "Necktie"})
    void countsALineOfNeitherWordAsNeither(String name) {
        assertThat(missing(name)).containsExactly("mass.no-glue-or-covering", "mass.no-fasteners");
    }

    @Test
    void looksAtFasteningLinesOnly() {
        assertThat(findings(Stage.BUILD, WIRING, Ledgers.named("x", "Film camera with bolts", Category.PAYLOAD)))
                .hasSize(2);
    }

    @Test
    void saysWhatToDo() {
        Finding finding = findings(Stage.BUILD, HULL).get(0);
        assertThat(finding.sentence())
                .isEqualTo(
                        "No line of the category “Fastening, glue and covering” names glue or covering: what it weighs is in"
                                + " no sum yet.");
        assertThat(finding.remedies())
                .extracting(remedy -> remedy.sentence())
                .containsExactly("Add a line for glue or covering, guessed if need be.");
    }

    @Test
    void leavesAnEmptyLedgerToTheTarget() {
        assertThat(findings(Stage.BUILD)).isEmpty();
    }

    private static List<String> missing(String name) {
        return findings(Stage.BUILD, WIRING, Ledgers.named("x", name, Category.FASTENING)).stream()
                .map(Finding::code)
                .toList();
    }

    private static List<Finding> findings(Stage stage, PartLine... lines) {
        return new CompletenessRule(MassStatement.of(Ledgers.atStage(stage, Ledgers.with(lines)))).findings();
    }
}
