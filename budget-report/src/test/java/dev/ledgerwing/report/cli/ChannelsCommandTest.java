package dev.ledgerwing.report.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.file.BuildFile;
import dev.ledgerwing.report.Golden;
import dev.ledgerwing.report.RadioBuilds;
import dev.ledgerwing.seed.SeedAirframe;
import dev.ledgerwing.seed.SeedFleet;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ChannelsCommandTest {

    @TempDir
    private Path folder;

    @Test
    void printsThePlanPositionByPosition() throws IOException {
        Run run = channels(RadioBuilds.shared());

        assertThat(run.err()).isEmpty();
        assertThat(run.out())
                .contains(
                        "The functions fit on the channels.", "Channel 4, shared by 2", "Wheels: down; Charging: off");
        Golden.assertMatches("channels.txt", run.out());
    }

    @Test
    void printsTheReasonAndEveryConcessionWhereItDoesNotFitAndExitsWith1() throws IOException {
        Build curlew = fleet("curlew");
        Run run = channels(curlew);

        assertThat(run.code()).isEqualTo(1);
        assertThat(run.out())
                .contains(
                        "The functions do not fit on the channels.", "\nWhy\n", "Any one of these would make them fit");
        Golden.assertMatches("channels-no-fit.json", channels(curlew, "--json").out());
    }

    @Test
    void givesOtherProgramsTheSameNames() throws IOException {
        Run run = channels(RadioBuilds.shared(), "--json");

        assertThat(run.out())
                .contains("\"outcome\" : \"FITS\"", "\"plan\" : \"RECORDED\"", "\"channelsAvailable\" : 4")
                .contains("\"statesByPosition\" : [");
        Golden.assertMatches("channels.json", run.out());
    }

    @Test
    void exitsWith0WhereOnlySomethingIsNotKnown() throws IOException {
        Run run = channels(RadioBuilds.shared().withRadioLink(null));

        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("is not known.", "To be recorded first");
    }

    @Test
    void exitsWith2ForAFileThatCannotBeUsed() {
        Run run = Run.of("channels", folder.resolve("missing.json"));

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("there is no such file");
    }

    @Test
    void fitsATerminalOf80Columns() throws IOException {
        for (SeedAirframe airframe : SeedFleet.airframes()) {
            assertThat(channels(airframe.last().build()).out().lines())
                    .allMatch(line -> line.codePointCount(0, line.length()) <= 80);
        }
    }

    private static Build fleet(String code) {
        return SeedFleet.airframes().stream()
                .map(airframe -> airframe.last().build())
                .filter(build -> build.airframe().code().equals(code))
                .findFirst()
                .orElseThrow();
    }

    private Run channels(Build build, Object... options) throws IOException {
        Path file = Files.write(folder.resolve(build.airframe().code() + ".json"), BuildFile.write(build));
        Object[] words = new Object[options.length + 2];
        words[0] = "channels";
        words[1] = file;
        System.arraycopy(options, 0, words, 2, options.length);
        return Run.of(words);
    }
}
