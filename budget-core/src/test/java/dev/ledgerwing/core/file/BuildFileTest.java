package dev.ledgerwing.core.file;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.BuildChange;
import dev.ledgerwing.core.build.Builds;
import dev.ledgerwing.core.build.Nature;
import dev.ledgerwing.core.build.Outputs;
import dev.ledgerwing.core.build.PowerRules;
import dev.ledgerwing.core.build.Problem;
import dev.ledgerwing.core.build.Rail;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class BuildFileTest {

    private static final String HEAD = """
            {"format": "ledgerwing-build/1",
             "airframe": {"code": "dunlin", "name": "Dunlin", "stage": "BUILD", "datum": "nose tip"},
             "assemblies": [{"code": "wing", "name": "Wing", "movesWith": "WING"}],
             "loadCases": [{"code": "all-up", "name": "All up", "purpose": "FLIGHT", "design": true}],
            """;
    private static final String SPAR =
            "{\"id\": \"L1\", \"assembly\": \"wing\", \"name\": \"Spar\", \"category\": \"STRUCTURE\", \"quantity\": 1,"
                    + " \"state\": \"PLANNED\", \"mass\": {\"basis\": \"GUESSED\", \"unitMassG\": 120.5}}";

    @Test
    void whatIsWrittenReadsBackAsTheSameRecord() {
        for (long seed = 1; seed <= 200; seed++) {
            Build build = Builds.seeded(seed);
            byte[] bytes = BuildFile.write(build);

            assertThat(BuildFile.read(bytes)).as("seed %s", seed).isEqualTo(BuildReading.of(build));
            assertThat(BuildFile.write(BuildFile.readOwn(bytes))).isEqualTo(bytes);
        }
    }

    @Test
    void aChangeReadsBackAsTheSameChange() {
        for (long seed = 1; seed <= 60; seed++) {
            BuildChange change =
                    BuildChange.between("anything", Nature.CORRECTED, Builds.seeded(seed), Builds.seeded(seed + 1000));

            assertThat(ChangeJson.read(ChangeJson.write(change)))
                    .as("seed %s", seed)
                    .isEqualTo(change);
        }
    }

    @Test
    void readsAShortFileWrittenByHand() {
        Build build = read(HEAD + "\"lines\": [" + SPAR + "]}").build().orElseThrow();

        assertThat(build.lines().get(0).totalMass().grams()).isEqualTo(120.5);
        assertThat(build.lines().get(0).place().station()).isNull();
        assertThat(build.airframe().purpose()).isNull();
        assertThat(build.budget().targetMass()).isNull();
        assertThat(build.lines().get(0).mass().growthPercent()).isNull();
    }

    @Test
    void readsTheRailsOfAFileThatKnowsNoSources() {
        Build build = read(HEAD + "\"lines\": [], \"power\": {\"rails\": [{\"code\": \"main\", \"name\": \"Main\"}]}}")
                .build()
                .orElseThrow();

        assertThat(build.power().rails()).containsExactly(new Rail("main", "Main", null, null, null, false));
        assertThat(build.power().sources()).isEmpty();
        assertThat(build.power().rules()).isEqualTo(PowerRules.DEFAULT);
    }

    @Test
    void namesTheElementOfAFeedThatIsAtFault() {
        String feed = """
                {"code": "leg", "name": "Leg", "from": "pack", "to": "main",
                 "elements": [{"name": "Regulator", "kind": "REGULATOR", "count": 1,
                               "regulator": {"type": "SWITCHING", "outputV": 5, "efficiencyPercent": 104}}]}""";

        assertThat(problems(HEAD + "\"lines\": [], \"power\": {\"feeds\": [" + feed + "]}}"))
                .containsExactly(
                        "power.feeds[0].elements[0].regulator.efficiencyPercent: must be 100 or less, was 104");
    }

    @Test
    void readsTheFunctionsOfAFileThatKnowsNoLink() {
        String gear = "{\"code\": \"gear\", \"name\": \"Gear\", \"kind\": \"SWITCHED\", \"states\": [\"up\", \"down\"],"
                + " \"criticality\": \"MISSION\"}";

        Build build = read(HEAD + "\"lines\": [], \"radio\": {\"functions\": [" + gear + "]}}")
                .build()
                .orElseThrow();

        assertThat(build.radio().link()).isNull();
        assertThat(build.radio().functions().get(0).demandByPhase()).isEmpty();
        assertThat(build.radio().channels()).isEmpty();
        assertThat(build.outputs()).isEqualTo(Outputs.NONE);
    }

    @Test
    void namesThePlaceOfAFaultInTheRadio() {
        String gear = "{\"code\": \"gear\", \"name\": \"Gear\", \"kind\": \"SWITCHED\", \"states\": [\"up\", \"down\"],"
                + " \"criticality\": \"MISSION\", \"demandByPhase\": {\"cruise\": {\"mustSelect\": [\"half\"]}}}";
        String lever = "{\"code\": \"lever\", \"name\": \"Lever\", \"kind\": \"SWITCH\", \"positions\": 0}";

        assertThat(problems(HEAD + "\"lines\": [], \"radio\": {\"controls\": [" + lever + "]}}"))
                .containsExactly("radio.controls[0].positions: must be 2 or more, was 0");
        assertThat(problems(HEAD + "\"lines\": [], \"radio\": {\"functions\": [" + gear + "]}}"))
                .containsExactly("radio.functions[0]: demandByPhase.cruise.mustSelect: there is no state “half”");
    }

    static Stream<Arguments> oneFault() {
        return Stream.of(
                fault("-3", "lines[0].mass.unitMassG: must be 0 or more, was -3"),
                fault("1e400", "lines[0].mass.unitMassG: must be 1000000 or less, was 1E+400"),
                fault("\"12\"", "lines[0].mass.unitMassG: must be a number or null, was “12”"),
                fault("0.0001", "lines[0].mass.unitMassG: must have at most three decimals, was 0.0001"),
                fault("true", "lines[0].mass.unitMassG: must be a number or null, was true"));
    }

    private static Arguments fault(String value, String problem) {
        return Arguments.of(value, problem);
    }

    @ParameterizedTest
    @MethodSource("oneFault")
    void namesThePlaceOfAFault(String value, String problem) {
        assertThat(problems(HEAD + "\"lines\": [" + SPAR.replace("120.5", value) + "]}"))
                .containsExactly(problem);
    }

    @Test
    void namesEverythingAtOnce() {
        String lines = SPAR.replace("\"Spar\"", "\" \"").replace("120.5", "-1") + ","
                + SPAR.replace("\"quantity\": 1", "\"quantity\": 1.5")
                        .replace("L1", "L2")
                        .replace("name", "nmae");

        assertThat(problems(HEAD + "\"colour\": 3, \"lines\": [" + lines + "]}"))
                .containsExactlyInAnyOrder(
                        "colour: is not a field of a build file",
                        "lines[0].name: must not be empty, was “ ”",
                        "lines[0].mass.unitMassG: must be 0 or more, was -1",
                        "lines[1].quantity: must be a whole number, was 1.5",
                        "lines[1].name: is missing",
                        "lines[1].nmae: is not a field of a build file");
    }

    @Test
    void reportsWhatOnlyTheRecordItselfCanSee() {
        String weighedGuess = SPAR.replace("\"GUESSED\"", "\"GUESSED\", \"weighedAs\": \"EACH\"");
        String odd = SPAR.replace("L1", "L2").replace("\"state\"", "\"place\": {\"mirroredAtYMm\": 20}, \"state\"");

        assertThat(problems(HEAD + "\"lines\": [" + weighedGuess + "," + odd + "]}"))
                .containsExactly(
                        "lines[0].mass: weighedAs goes with basis WEIGHED, the basis was GUESSED",
                        "lines[1]: quantity must be even for a part that is mirrored, was 1");
        assertThat(problems(HEAD + "\"lines\": [" + SPAR.replace("\"wing\"", "\"tail\"") + "]}"))
                .containsExactly("lines[0].assembly: there is no assembly “tail”");
    }

    @Test
    void refusesWhatIsNotStrictJson() {
        assertThat(problems("{\"format\": \"ledgerwing-build/1\", \"lines\": NaN}")
                        .get(0))
                .contains("not readable as JSON");
        assertThat(problems("{\"format\": \"ledgerwing-build/1\", \"format\": \"x\"}")
                        .get(0))
                .contains("line 1")
                .contains("format");
        assertThat(problems("{\"format\": \"ledgerwing-build/1\"} {}").get(0)).contains("not readable as JSON");
        assertThat(problems("")).hasSize(1);
        assertThat(problems("[]")).containsExactly("a build file is one JSON object, this is something else");
        assertThat(problems("\u0000")).hasSize(1);
        assertThat(problems("{\"format\": \"ledgerwing-build/9\"}").get(0))
                .contains("this version reads ledgerwing-build/1");
        assertThat(problems("[".repeat(5000)).get(0)).contains("not readable as JSON");
        for (String broken : List.of("{\"a\": [1, 2", "{\"a\": \"x", "{\"format\": \"x\"} {}", "nul")) {
            assertThat(problems(broken).get(0)).doesNotContain("Source").doesNotContain("Feature");
        }
    }

    @Test
    void refusesAFileOfFiftyMegabytesBeforeReadingIt() {
        assertThat(BuildFile.read(new byte[50 * 1024 * 1024]).problems())
                .containsExactly(new Problem("", "the file is larger than 16 MB, which no build file should be"));
    }

    @Test
    void keepsHtmlAndFormulasAsPlainText() {
        String name = "=cmd|' /C calc'!A0 <script>alert(1)</script>";
        Build build = read(HEAD + "\"lines\": [" + SPAR.replace("Spar", name) + "]}")
                .build()
                .orElseThrow();

        assertThat(build.lines().get(0).name()).isEqualTo(name);
    }

    @Test
    void writesTheSameBytesForTheSameRecord() {
        List<String> texts = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            texts.add(new String(BuildFile.write(Builds.seeded(7)), StandardCharsets.UTF_8));
        }
        assertThat(texts).allMatch(texts.get(0)::equals);
    }

    private static BuildReading read(String text) {
        return BuildFile.read(text.getBytes(StandardCharsets.UTF_8));
    }

    private static List<String> problems(String text) {
        return read(text).problems().stream().map(Problem::toString).toList();
    }
}
