package dev.ledgerwing.web.walk;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import dev.ledgerwing.web.LedgerwingApplication;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.api.TestInstance;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;

/** First visit, a part, what it breaks, undo; on a desk and on a phone, by day and by night, with the keyboard alone. */
@SpringBootTest(
        classes = LedgerwingApplication.class,
        webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT,
        properties = "spring.datasource.url=jdbc:h2:mem:walk;DB_CLOSE_DELAY=-1")
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PartsWalkIT {

    @LocalServerPort
    int port;

    private Chromium chromium;

    @BeforeAll
    void launch() {
        chromium = new Chromium();
    }

    @AfterAll
    void close() {
        chromium.close();
    }

    @Test
    void aBuilderAddsAPartSeesWhatItBreaksAndTakesItBack() {
        Page page = chromium.page(port, 1280, ColorScheme.LIGHT);
        SignIn.on(page);
        page.getByText("Godwit").first().click();

        page.getByText("Add a part").click();
        page.getByLabel("Part", exactly()).fill("Lead in the nose");
        page.getByLabel("Mass each, g").fill("abc");
        page.getByText("Add the part").click();
        assertThat(page.getByText("Please choose a category.")).isVisible();
        assertThat(page.getByLabel("Mass each, g")).hasValue("abc");

        page.getByLabel("Mass each, g").fill("0.3 kg");
        page.getByLabel("Category").selectOption("BALLAST");
        page.getByText("Add the part").click();
        assertThat(page.locator(".impact")).containsText("breaks the target by");
        assertThat(page.locator(".impact")).isFocused();
        assertThat(page.locator(".title-block .verdict").first()).containsText("breaks by");

        page.getByText("Undo").click();
        assertThat(page.locator(".impact")).containsText("taken back");
        assertThat(page.locator(".title-block .verdict").first()).hasText("tight");
        assertThat(chromium.complaints()).isEmpty();
    }

    private static Page.GetByLabelOptions exactly() {
        return new Page.GetByLabelOptions().setExact(true);
    }

    @Test
    void theKeyboardAloneIsEnough() {
        Page page = chromium.page(port, 1280, ColorScheme.LIGHT);
        SignIn.on(page);
        page.navigate("/airframes/dunlin/parts");
        page.locator("a.part").first().focus();
        page.keyboard().press("Enter");
        assertThat(page.getByLabel("Part", exactly())).isFocused();
        page.keyboard().press("Tab");
        page.keyboard().press("Tab");
        page.keyboard().type("61");
        page.keyboard().press("Enter");
        assertThat(page.locator(".impact")).isFocused();
        page.locator("button.fold").first().focus();
        page.keyboard().press("Enter");
        assertThat(page.locator("a.part").first()).isHidden();
    }

    /** Contrast hangs on the colours and barriers on the layout, so that each of both is looked at, not every pair. */
    @ParameterizedTest
    @CsvSource({"1280, LIGHT", "360, LIGHT", "390, DARK"})
    void noPageHoldsABarrierOrRunsOffTheScreen(int width, ColorScheme scheme) {
        Page page = chromium.page(port, width, scheme);
        SignIn.on(page);
        for (String path : Pages.OPEN) {
            page.navigate(path);
            assertThat(Chromium.barriers(page)).as("%s %s %s", path, width, scheme).isEmpty();
            assertThat((Integer) page.evaluate("document.documentElement.scrollWidth"))
                    .as("%s at %s px", path, width)
                    .isLessThanOrEqualTo(width);
        }
        assertThat(chromium.complaints()).isEmpty();
    }
}
