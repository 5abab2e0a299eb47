package dev.ledgerwing.report.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CommandLineTest {

    @ParameterizedTest
    @ValueSource(strings = {"review", "sheets", "compare", "channels", "table"})
    void explainsEachCommand(String command) {
        Run run = Run.of(command, "--help");

        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("budget-report " + command, "Exit codes:");
        assertThat(run.err()).isEmpty();
        assertThat(run.out().lines()).allMatch(line -> line.length() <= 80);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "review",
                "review --no-such-option x",
                "nonsense",
                "sheets x",
                "sheets x --out y --date soon",
                "table x --column 3"
            })
    void saysInOneLineWhatIsWrongWithTheWordsGiven(String words) {
        Run run = Run.of((Object[]) words.split(" "));

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err().lines())
                .singleElement()
                .asString()
                .startsWith("budget-report: ")
                .endsWith("--help)");
    }

    @Test
    void asksForACommandWhereNoneIsGiven() {
        Run run = Run.of();

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).startsWith("budget-report: Missing required subcommand");
    }

    @Test
    void saysWhichFilesItReads() {
        assertThat(Run.of("--version").out()).contains("reads ledgerwing-build/1");
    }
}
