package dev.ledgerwing.web.walk;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Page;

/** Signs Mara in; on a server without an account this is the first visit. */
final class SignIn {

    private static final String PASSPHRASE = "a quiet bog at dawn";

    private SignIn() {}

    static void on(Page page) {
        page.navigate("/");
        if (page.url().endsWith("/welcome")) {
            page.getByLabel("Your name").fill("Mara");
            page.locator("#passphrase").fill(PASSPHRASE);
            page.locator("#again").fill(PASSPHRASE);
            page.getByText("Create the account").click();
        } else {
            page.getByLabel("Name").fill("Mara");
            page.locator("#passphrase").fill(PASSPHRASE);
            page.keyboard().press("Enter");
        }
        assertThat(page.locator("h1")).hasText("Fleet");
    }
}
