package dev.ledgerwing.web.setup;

import java.util.List;

/** The settings for the first account do not make one. */
class UnusableFirstAccount extends RuntimeException {

    UnusableFirstAccount(List<String> problems) {
        super(String.join(System.lineSeparator(), problems));
    }
}
