package dev.ledgerwing.web.team;

import dev.ledgerwing.web.support.Browser;
import dev.ledgerwing.web.support.Browser.Page;
import java.util.Map;

/** A browser in which Mara is signed in; creates her account where the server has none yet. */
public final class SignedInBrowser {

    private SignedInBrowser() {}

    public static Browser at(int port) {
        Browser browser = new Browser(port);
        Page first = browser.open("/");
        if (first.path().equals("/welcome")) {
            browser.send(
                    first,
                    "/welcome",
                    Map.of(
                            "name", TestMember.NAME,
                            "passphrase", TestMember.PASSPHRASE,
                            "again", TestMember.PASSPHRASE));
        } else {
            browser.send(first, "/sign-in", Map.of("name", TestMember.NAME, "passphrase", TestMember.PASSPHRASE));
        }
        return browser;
    }
}
