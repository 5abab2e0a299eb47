package dev.ledgerwing.seed;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.file.BuildFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SeedFleetTest {

    private static final Instant END_OF_THE_LAST_DAY = Instant.parse("2026-11-25T00:00:00Z");

    static List<SeedAirframe> airframes() {
        return SeedFleet.airframes();
    }

    @Test
    void namesTheThreeAirframesInOrder() {
        assertThat(airframes()).extracting(SeedAirframe::code).containsExactly("curlew", "godwit", "dunlin");
    }

    @ParameterizedTest
    @MethodSource("airframes")
    void countsTwelveRevisionsWithoutGaps(SeedAirframe airframe) {
        assertThat(airframe.revisions())
                .extracting(SeedRevision::number)
                .containsExactlyElementsOf(IntStream.rangeClosed(1, 12).boxed().toList());
    }

    @ParameterizedTest
    @MethodSource("airframes")
    void packagesEveryFileOfTheFolder(SeedAirframe airframe) {
        Path folder = Path.of(airframe.code());
        List<String> named =
                airframe.revisions().stream().map(SeedRevision::fileText).toList();

        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files.filter(file -> file.toString().endsWith(".json"))
                            .sorted()
                            .map(SeedFleetTest::text))
                    .containsExactlyElementsOf(named);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    @ParameterizedTest
    @MethodSource("airframes")
    void momentsRiseToTheLastDay(SeedAirframe airframe) {
        List<Instant> moments =
                airframe.revisions().stream().map(SeedRevision::moment).toList();

        assertThat(moments).isSorted().doesNotHaveDuplicates().allMatch(moment -> moment.isBefore(END_OF_THE_LAST_DAY));
    }

    @ParameterizedTest
    @MethodSource("airframes")
    void everyRevisionHasAnAuthorOfTheTeamAndAReasonThatFitsATitle(SeedAirframe airframe) {
        assertThat(airframe.revisions()).allSatisfy(revision -> {
            assertThat(revision.author()).isIn("Mara", "Jonas", "Ines", "Tomke");
            assertThat(revision.reason()).isNotBlank().hasSizeLessThanOrEqualTo(200);
        });
    }

    @ParameterizedTest
    @MethodSource("airframes")
    void everyBuildFileIsReadWithoutAProblem(SeedAirframe airframe) {
        assertThat(airframe.revisions())
                .allSatisfy(revision -> assertThat(
                                BuildFile.read(revision.buildFile()).problems())
                        .as("revision %s", revision.number())
                        .isEmpty());
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
