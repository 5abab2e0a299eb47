package dev.ledgerwing.web.outputs;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Board;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.FittedBoard;
import dev.ledgerwing.core.build.Output;
import dev.ledgerwing.core.build.Output.Driven;
import dev.ledgerwing.core.build.OutputBank;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.PortNeeds;
import dev.ledgerwing.core.build.PulseKind;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.web.support.Browser.Page;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

/** The outputs page: need against supply, what drives what, trying, choosing and planning again. */
class OutputsPageTest extends OutputsFormWalk {

    private static Board board(String code, String name, int outputs, double grams) {
        List<Integer> numbers = IntStream.rangeClosed(1, outputs).boxed().toList();
        OutputBank bank = new OutputBank("A", numbers, List.of(50.0, 100.0), List.of(PulseKind.SERVO_PULSE));
        return new Board(code, name, List.of(bank), 1, 1, 0, 0, Mass.ofGrams(grams), 0.2, 0.3, null);
    }

    /** Three outputs needed, two on the small board that is aboard; two parts answer to one address. */
    private static Build squeezed(Build build) {
        Map<String, PortNeeds> needs = Map.of(
                "L1", new PortNeeds(0, 0, List.of("0x28"), 0, 0),
                "L2", new PortNeeds(2, 0, List.of(), 0, 0),
                "L3", new PortNeeds(1, 0, List.of(), 0, 0),
                "L4", new PortNeeds(0, 1, List.of("0x28"), 0, 0));
        return build.withLines(build.lines().stream()
                        .map(line -> line.withNeeds(needs.getOrDefault(line.id(), PortNeeds.NONE)))
                        .toList())
                .withBoards(List.of(board("moor", "Moor board", 2, 20), board("fen", "Fen board", 6, 34)))
                .withFittedBoard(new FittedBoard("moor", "L1"));
    }

    private static Output output(String code, int number, String line) {
        return new Output(
                code,
                code,
                number,
                List.of(new Driven(line, 1)),
                PulseKind.SERVO_PULSE,
                333.0,
                100.0,
                1000.0,
                2000.0,
                1500.0,
                false);
    }

    private Page page() {
        return browser.open(outputs);
    }

    private Page press(String address) {
        return browser.post(outputs + address, page(), Map.of("seen", Integer.toString(number())));
    }

    private static String row(Page page, String title) {
        Element table = page.document().expectFirst("table.boards");
        return table.select("tbody tr").stream()
                .filter(row -> row.expectFirst("th").text().equals(title))
                .map(Element::text)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void anEmptyPageSaysWhatToDoFirst() {
        Page page = page();
        assertThat(page.status()).isEqualTo(200);
        assertThat(page.text()).contains("Record these, in this order").contains("Take the propeller off");
        assertThat(page.document().select(".first-steps a").eachAttr("href"))
                .containsExactly(
                        outputs + "/needs", outputs + "/boards/new", outputs + "/fitted", outputs + "/assignments/new");
        assertThat(page.document().select("table.boards, form[action$=plan]")).isEmpty();
    }

    @Test
    void needStandsAgainstSupplyBoardByBoardWithTheShortageInNumbers() {
        others(OutputsPageTest::squeezed);
        Page page = page();
        assertThat(page.text()).contains("3 outputs needed, 2 on the board: 1 short.");
        assertThat(row(page, "Outputs")).isEqualTo("Outputs 3 2 breaks 1 short 6 holds");
        assertThat(row(page, "Serial ports")).isEqualTo("Serial ports 1 1 tight 1 tight");
        assertThat(row(page, "Addresses on the I²C bus")).contains("1 bus breaks 0x28 is 2 times there");
        assertThat(row(page, "All of them in banks")).contains("1 left over breaks");
        assertThat(row(page, "Mass")).contains("34").contains("+14");
        assertThat(row(page, "All in all")).isEqualTo("All in all breaks breaks");
        assertThat(page.document().select("a[href$=moor/try]")).isEmpty();
    }

    @Test
    void aBoardIsTriedBeforeItIsChosenAndUndoTakesItBack() {
        others(OutputsPageTest::squeezed);
        int before = number();
        Page trial = browser.open(outputs + "/boards/fen/try");
        assertThat(trial.status()).isEqualTo(200);
        assertThat(trial.text())
                .contains("nothing is changed yet")
                .contains("+15")
                .contains("With it");
        assertThat(number()).isEqualTo(before);

        Page after = press("/boards/fen/choose");
        assertThat(after.path()).isEqualTo(outputs);
        assertThat(after.document().expectFirst(".impact").text())
                .contains("Flight controller chosen: Fen board")
                .contains("+15");
        assertThat(build().outputs().fitted()).isEqualTo(new FittedBoard("fen", "L1"));
        assertThat(build().line("L1").map(PartLine::totalMass)).contains(Mass.ofGrams(34));
        assertThat(after.text()).contains("3 outputs needed, 6 on the board: 3 left.");

        browser.post(
                "/airframes/" + code + "/undo", after, Map.of("number", Integer.toString(number()), "back", "OUTPUTS"));
        assertThat(build().outputs().fitted()).isEqualTo(new FittedBoard("moor", "L1"));
        assertThat(build().line("L1").map(PartLine::totalMass)).contains(Mass.ofGrams(20));
    }

    @Test
    void whatIsDrivenByNothingIsToldAndPlanningAgainDrivesIt() {
        others(build -> squeezed(build)
                .withFittedBoard(new FittedBoard("fen", "L1"))
                .withOutputs(List.of(output("aileron", 4, "L2"))));
        Page page = page();
        assertThat(page.text())
                .contains("Aileron servo: nothing drives 1 of its 2 pieces, 1 output is missing.")
                .contains("Elevator servo: nothing drives it, 1 output is missing.");
        assertThat(page.document().select("a[href$='part=L3']")).hasSize(1);

        Page after = press("/plan");
        assertThat(after.path()).isEqualTo(outputs);
        assertThat(title()).isEqualTo("Outputs planned again");
        assertThat(build().outputs().assignments()).extracting(Output::number).containsExactly(4, 1, 2);
        assertThat(after.text()).doesNotContain("nothing drives");
    }

    @Test
    void aPlanWorkedOutFromAnOlderRecordIsRefusedAndToldSo() {
        others(OutputsPageTest::squeezed);
        Page seen = page();
        int number = number();
        others(build -> build.withOutputs(List.of(output("aileron", 1, "L2"))));
        Page after = browser.post(outputs + "/plan", seen, Map.of("seen", Integer.toString(number)));
        assertThat(after.document().select("[role=alert]").text()).contains("in the meantime");
        assertThat(build().outputs().assignments()).hasSize(1);
    }

    @Test
    void planningWithoutABoardIsRefusedInWords() {
        others(build -> squeezed(build).withFittedBoard(FittedBoard.NONE));
        assertThat(page().document().select("form[action$=plan]")).isEmpty();
        Page after = press("/plan");
        assertThat(after.document().select("[role=alert]").text()).contains("flight controller");
        assertThat(build().outputs().assignments()).isEmpty();
    }

    @Test
    void anOutputUsedTwiceAndOneThatTheBoardHasNotAreMarked() {
        others(build -> squeezed(build)
                .withOutputs(
                        List.of(output("aileron", 1, "L2"), output("elevator", 1, "L3"), output("flap", 9, "L2"))));
        String table =
                page().document().expectFirst("section[aria-labelledby=driven]").text();
        assertThat(table)
                .contains("breaks: used twice, also by elevator")
                .contains("breaks: used twice, also by aileron")
                .contains("breaks: Moor board has no output 9");
    }

    @Test
    void severalPiecesOnOneOutputAreToldAsAYLead() {
        others(build -> squeezed(build)
                .withOutputs(List.of(output("ailerons", 1, "L2").withDrives(List.of(new Driven("L2", 2))))));
        assertThat(page().text()).contains("Y-lead, 2 pieces: peak current not known");
    }

    @Test
    void whatPartsTakeUpIsListedAndLeadsToItsForm() {
        others(OutputsPageTest::squeezed);
        Element ports = page().document().expectFirst("section[aria-labelledby=ports]");
        assertThat(ports.select("tbody th a").eachAttr("href"))
                .containsExactly(
                        outputs + "/needs/L1", outputs + "/needs/L2", outputs + "/needs/L3", outputs + "/needs/L4");
    }

    @Test
    void aBoardThatIsNotThereCannotBeTried() {
        assertThat(browser.open(outputs + "/boards/bog/try").status()).isEqualTo(404);
    }
}
