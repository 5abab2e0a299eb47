package dev.ledgerwing.report.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.report.Builds;
import dev.ledgerwing.report.Golden;
import dev.ledgerwing.report.PowerBuilds;
import dev.ledgerwing.report.sheet.SheetHead;
import dev.ledgerwing.seed.SeedFleet;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StaticSiteTest {

    private static final Pattern LINK = Pattern.compile("(?:href|src)=\"([^\"]*)\"|url\\(\"([^\"]*)\"\\)");

    @Test
    void printsTheFleetAsBefore() throws IOException {
        List<SiteAirframe> fleet = Stream.of(
                        Builds.complete(),
                        Builds.called(Builds.skiff(), "punt", Builds.HOSTILE_NAME),
                        Builds.called(Builds.withTarget(Builds.complete(), 900), "barge", "Barge"))
                .map(StaticSiteTest::airframe)
                .toList();

        Golden.assertMatches("fleet.html", text(site(fleet), "index.html"));
    }

    @Test
    void leadsOnlyToFilesOfItsOwn() {
        List<SiteFile> site = site(everything());
        List<String> paths = site.stream().map(SiteFile::path).toList();

        for (SiteFile file : site) {
            String folder = file.path().contains("/") ? file.path().replaceFirst("[^/]*$", "") : "";
            if (file.path().endsWith(".html") || file.path().endsWith(".css")) {
                assertThat(links(text(file)))
                        .as(file.path())
                        .isNotNull()
                        .allMatch(link -> paths.contains(folder + link));
            }
        }
        assertThat(links(text(site, "index.html")))
                .contains(
                        "skiff-build.html",
                        "skiff-build.pdf",
                        "skiff-balance.html",
                        "skiff-balance.pdf",
                        "skiff-power.html",
                        "skiff-power.pdf",
                        "skiff-radio.html",
                        "skiff-radio.pdf",
                        "skiff-outputs.html",
                        "skiff-outputs.pdf",
                        "paper/sheet.css",
                        "paper/screen.css");
    }

    @Test
    void leadsFromEachSheetToTheOtherAndToTheFleet() {
        List<SiteFile> site = site(everything());

        assertThat(links(text(site, "skiff-build.html")))
                .contains("index.html", "skiff-balance.html", "skiff-power.html");
        assertThat(links(text(site, "skiff-balance.html")))
                .contains("index.html", "skiff-build.html", "skiff-power.html");
        assertThat(links(text(site, "skiff-power.html")))
                .contains("index.html", "skiff-build.html", "skiff-balance.html", "skiff-radio.html");
        assertThat(links(text(site, "skiff-radio.html")))
                .contains("index.html", "skiff-power.html", "skiff-outputs.html");
        assertThat(links(text(site, "skiff-outputs.html")))
                .contains("index.html", "skiff-build.html", "skiff-radio.html");
    }

    @Test
    void needsNoScriptAndNoNetwork() {
        for (SiteFile file : site(everything())) {
            if (file.path().endsWith(".html")) {
                assertThat(text(file).replace("http://www.w3.org/", ""))
                        .as(file.path())
                        .doesNotContain("http://", "https://", "<script", "style=");
            }
        }
    }

    @Test
    void putsTheWorstFirstAndAmongEqualsTheLeastMargin() {
        List<SiteAirframe> fleet = Stream.of(
                        Builds.called(
                                Builds.withTarget(PowerBuilds.supplied(Builds.winged()), 2000), "a", "Holds with room"),
                        Builds.called(
                                Builds.withoutTarget(PowerBuilds.supplied(Builds.winged())),
                                "b",
                                "Not known, no target"),
                        Builds.called(Builds.withTarget(PowerBuilds.supplied(Builds.winged()), 800), "c", "Breaks"),
                        Builds.called(
                                Builds.withTarget(PowerBuilds.supplied(Builds.winged()), 1800), "d", "Holds with less"),
                        Builds.called(
                                Builds.withTarget(PowerBuilds.supplied(Builds.winged()), 700), "e", "Breaks more"),
                        Builds.called(Builds.skiff(), "f", "Not known"))
                .map(StaticSiteTest::airframe)
                .toList();

        assertThat(FleetPage.of(fleet, false).rows())
                .extracting(FleetRow::name)
                .containsExactly(
                        "Breaks more",
                        "Breaks",
                        "Not known",
                        "Not known, no target",
                        "Holds with less",
                        "Holds with room");
    }

    @Test
    void countsTheAirframes() {
        assertThat(FleetPage.of(everything(), false).counted()).isEqualTo("4 airframes, worst first");
        assertThat(FleetPage.of(everything().subList(0, 1), false).counted()).isEqualTo("1 airframe");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "../up.html",
                "/root.html",
                "a/../b.html",
                "C:\\x.html",
                ".hidden.html",
                "a//b.html",
                "x",
                "a\u0000.html"
            })
    void knowsNoFileOutsideItsFolder(String path) {
        assertThatThrownBy(() -> new SiteFile(path, new byte[0])).isInstanceOf(IllegalArgumentException.class);
    }

    private static List<SiteAirframe> everything() {
        return Stream.concat(
                        Stream.of(Builds.skiff()),
                        SeedFleet.airframes().stream()
                                .map(airframe -> airframe.last().build()))
                .map(StaticSiteTest::airframe)
                .toList();
    }

    private static SiteAirframe airframe(Build build) {
        return new SiteAirframe(BuildReview.of(build), SheetHead.draft("0123456789abcdef".repeat(4)));
    }

    private static List<SiteFile> site(List<SiteAirframe> fleet) {
        return new StaticSite().files(fleet, true);
    }

    private static String text(List<SiteFile> site, String path) {
        return text(site.stream()
                .filter(file -> file.path().equals(path))
                .findFirst()
                .orElseThrow());
    }

    private static String text(SiteFile file) {
        return new String(file.bytes(), StandardCharsets.UTF_8);
    }

    private static List<String> links(String text) {
        return LINK.matcher(text).results().map(StaticSiteTest::link).toList();
    }

    private static String link(MatchResult found) {
        return found.group(1) == null ? found.group(2) : found.group(1);
    }
}
