package dev.ledgerwing.web.walk;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.ConsoleMessage;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Debian's Chromium, and what it complained about. */
final class Chromium implements AutoCloseable {

    private final Playwright playwright;
    private final Browser browser;
    private final List<String> complaints = new ArrayList<>();

    Chromium() {
        playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        browser = playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(Path.of("/usr/bin/chromium"))
                        .setArgs(List.of("--no-sandbox", "--disable-gpu", "--disable-background-networking")));
    }

    Page page(int port, int width, ColorScheme scheme) {
        Page page = browser.newContext(new Browser.NewContextOptions()
                        .setBaseURL("http://localhost:" + port)
                        .setViewportSize(width, 900)
                        .setColorScheme(scheme))
                .newPage();
        page.onConsoleMessage(this::hear);
        page.onPageError(complaints::add);
        return page;
    }

    /** A refused form answers 422, which the browser reports though all is well. */
    private void hear(ConsoleMessage message) {
        if (message.type().equals("error") && !message.text().contains("422")) {
            complaints.add(message.text() + " " + message.location());
        }
    }

    /** Scripts that failed and what the Content-Security-Policy blocked. */
    List<String> complaints() {
        return List.copyOf(complaints);
    }

    /** What axe finds against WCAG 2.2 A and AA, as rule and place. */
    static List<String> barriers(Page page) {
        return new AxeBuilder(page)
                .withTags(List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa")).analyze().getViolations().stream()
                        .flatMap(rule -> rule.getNodes().stream().map(node -> rule.getId() + " " + node.getHtml()))
                        .toList();
    }

    @Override
    public void close() {
        browser.close();
        playwright.close();
    }
}
