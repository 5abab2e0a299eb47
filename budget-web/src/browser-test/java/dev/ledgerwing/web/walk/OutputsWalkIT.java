package dev.ledgerwing.web.walk;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import dev.ledgerwing.core.build.Airframe;
import dev.ledgerwing.core.build.Assembly;
import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.LineMass;
import dev.ledgerwing.core.build.MassBudget;
import dev.ledgerwing.core.build.Output;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Stage;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.web.LedgerwingApplication;
import dev.ledgerwing.web.desk.Desk;
import dev.ledgerwing.web.desk.Readings;
import dev.ledgerwing.web.desk.Signature;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;

/** A board with too few outputs, what parts need, a plan, a number in the wrong place, another board, and the printed sheet. */
@SpringBootTest(
        classes = LedgerwingApplication.class,
        webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT,
        properties = "spring.datasource.url=jdbc:h2:mem:outputs-walk;DB_CLOSE_DELAY=-1")
class OutputsWalkIT {

    private static final String OUTPUTS = "/airframes/snipe/outputs";

    @LocalServerPort
    int port;

    @Autowired
    Readings readings;

    @Autowired
    Desk desk;

    private void openServosAndABoard() {
        desk.open(
                Build.blank(
                                new Airframe("snipe", "Snipe", null, Stage.DESIGN, "nose tip"),
                                new MassBudget(Mass.ofGrams(2000), null, null, null))
                        .withAssemblies(List.of(new Assembly("nose", "Nose", Assembly.MovesWith.NOSE)))
                        .withLines(List.of(
                                part("L1", "Flight controller", Category.AVIONICS, 1),
                                part("L2", "Aileron servo", Category.SERVO, 2),
                                part("L3", "Elevator servo", Category.SERVO, 1))),
                new Signature("Mara", ""));
    }

    private static PartLine part(String id, String name, Category category, int quantity) {
        return PartLine.named(id, "nose", name, category, quantity, LineMass.of(Mass.ofGrams(20), Basis.WEIGHED));
    }

    @Test
    void fromABoardThatIsShortToOneThatHasRoomAndThePrintedSheet() throws IOException {
        try (Chromium chromium = new Chromium()) {
            Page page = chromium.page(port, 1280, ColorScheme.LIGHT);
            SignIn.on(page);
            openServosAndABoard();
            page.navigate(OUTPUTS);
            assertThat(page.locator(".first-steps")).containsText("A flight controller");

            enterABoard(page, "Moor board", "1-2", "22 g");
            enterABoard(page, "Fen board", "1-6", "34 g");
            sayWhatPartsNeed(page);
            putAboard(page);
            assertThat(page.locator("main")).containsText("3 outputs needed, 2 on the board: 1 short.");
            assertThat(page.locator("table.boards")).containsText("1 short");

            button(page, "Plan again").click();
            assertThat(page.locator(".impact .change")).containsText("Outputs planned again");
            assertThat(numbers()).containsExactly(1, 2, null);
            moveTheElevatorWhereNothingIs(page);
            assertThat(page.locator("section[aria-labelledby=driven]")).containsText("Moor board has no output 9");
            assertThat(Chromium.barriers(page)).isEmpty();

            chooseTheOther(page);
            button(page, "Plan again").click();
            assertThat(page.locator(".impact .change")).containsText("Outputs planned again");
            assertThat(numbers()).doesNotContainNull().doesNotContain(9);

            printTheSheet(page);
            assertThat(chromium.complaints()).isEmpty();
        }
    }

    private List<Integer> numbers() {
        return readings.head("snipe").build().outputs().assignments().stream()
                .map(Output::number)
                .toList();
    }

    private static void enterABoard(Page page, String name, String numbers, String mass) {
        page.navigate(OUTPUTS + "/boards/new");
        page.locator("[name='name']").fill(name);
        page.locator("[name='bank.0.name']").fill("A");
        page.locator("[name='bank.0.numbers']").fill(numbers);
        page.locator("[name='bank.0.rates']").fill("50, 333");
        page.getByLabel("servo pulse").check();
        page.locator("[name='mass']").fill(mass);
        button(page, "Add the flight controller").click();
        assertThat(page.locator(".impact .change")).containsText(name);
    }

    private static void sayWhatPartsNeed(Page page) {
        page.navigate(OUTPUTS + "/needs");
        page.getByLabel("Outputs, Aileron servo").fill("2");
        page.getByLabel("Outputs, Elevator servo").fill("1");
        save(page);
    }

    private static void putAboard(Page page) {
        page.navigate(OUTPUTS + "/fitted");
        page.locator("[name='board']").selectOption("moor-board");
        page.locator("[name='part']").selectOption("L1");
        save(page);
    }

    private static void moveTheElevatorWhereNothingIs(Page page) {
        page.locator("section[aria-labelledby=driven]")
                .getByRole(AriaRole.LINK, new Locator.GetByRoleOptions().setName("Elevator servo").setExact(true))
                .click();
        page.locator("[name='number']").fill("9");
        save(page);
    }

    private void chooseTheOther(Page page) {
        page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("Try Fen board"))
                .click();
        assertThat(page.locator("main")).containsText("nothing is changed yet");
        assertThat(page.locator("main")).containsText("+15");
        assertThat(Chromium.barriers(page)).isEmpty();
        button(page, "Choose it").click();
        assertThat(page.locator(".impact .change")).containsText("Flight controller chosen: Fen board");
        assertThat(readings.head("snipe").build().line("L1").orElseThrow().totalMass())
                .isEqualTo(Mass.ofGrams(34));
    }

    private static Locator button(Page page, String name) {
        return page.getByRole(
                AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
    }

    private static void save(Page page) {
        button(page, "Save").click();
        assertThat(page.locator(".impact")).isVisible();
    }

    private void printTheSheet(Page page) throws IOException {
        int number = readings.head("snipe").revision().number();
        page.navigate("/airframes/snipe/sheets/" + number + "/outputs.html");
        page.evaluate("document.fonts.ready.then(() => true)"); // text is blank on paper until its font is there
        try (PDDocument paper = Loader.loadPDF(page.pdf(new Page.PdfOptions().setFormat("A4")))) {
            assertThat(new PDFTextStripper().getText(paper)).contains("Snipe", "Fen board", "Aileron servo");
        }
    }
}
