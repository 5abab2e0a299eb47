package dev.ledgerwing.web.setup;

import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;

/** Prints {@link UnusableFirstAccount} as sentences in place of a stack trace. */
class UnusableFirstAccountAnalyzer extends AbstractFailureAnalyzer<UnusableFirstAccount> {

    @Override
    protected FailureAnalysis analyze(Throwable root, UnusableFirstAccount cause) {
        return new FailureAnalysis(
                "The first account cannot be created from the environment:" + System.lineSeparator()
                        + cause.getMessage(),
                "Set both variables so that they fit, or neither, and create the account at the first visit.",
                cause);
    }
}
