package dev.ledgerwing.web.parts;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Nature;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.web.desk.Readings;
import dev.ledgerwing.web.desk.Revision;
import dev.ledgerwing.web.support.Browser;
import dev.ledgerwing.web.support.Browser.Page;
import dev.ledgerwing.web.support.PageTest;
import dev.ledgerwing.web.team.SignedInBrowser;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.assertj.core.data.Offset;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.TestPropertySource;

/** The parts page as a browser without script sees it. */
@PageTest
@TestPropertySource(properties = "ledgerwing.demo=true")
class PartsPageTest {

    @LocalServerPort
    int port;

    @Autowired
    Readings readings;

    private Browser browser;

    @BeforeEach
    void signIn() {
        browser = SignedInBrowser.at(port);
    }

    private static String parts(String code) {
        return "/airframes/" + code + "/parts";
    }

    private Page add(String code, Map<String, String> typed) {
        Map<String, String> all = new HashMap<>(Map.of("category", "BALLAST"));
        all.putAll(typed);
        return browser.send(browser.open(parts(code) + "/new"), parts(code), all);
    }

    private PartLine named(String code, String name) {
        return readings.head(code).build().lines().stream()
                .filter(line -> line.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void subtotalsAddUpToTheBasicMass() {
        Page page = browser.open(parts("dunlin"));
        double sum = page.document().select("tr.group td.num:not(.wide-only)").eachText().stream()
                .mapToDouble(Double::parseDouble)
                .sum();
        double total = Double.parseDouble(
                page.document().expectFirst("tfoot td.num:not(.wide-only)").text());

        assertThat(sum).isCloseTo(total, Offset.offset(0.05 * 12));
        assertThat(readings.head("dunlin").review().mass().basic().grams()).isCloseTo(total, Offset.offset(0.05));
    }

    @Test
    void tellsAtOnceWhatAPartBreaksAndTakesItBack() {
        Mass before = readings.head("godwit").review().mass().predicted();

        Page added = add("godwit", Map.of("name", "Lead in the nose", "mass", "0,3 kg", "basis", "WEIGHED", "x", "40"));
        String strip = added.document().expectFirst(".impact").text();
        assertThat(strip)
                .contains("Lead in the nose added")
                .contains("breaks the target by")
                .contains("Show fixes");

        Page undone = browser.send(added, "/airframes/godwit/undo", Map.of());
        assertThat(undone.document().expectFirst(".impact").text()).contains("taken back");
        assertThat(readings.head("godwit").review().mass().predicted()).isEqualTo(before);
        assertThat(readings.history("godwit").get(0).author()).isEqualTo("Mara");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            mass      | abc      | is not a mass such as
            mass      | -12      | A mass is from 0 g to 1000 kg
            mass      | 1e400    | is not a mass such as
            mass      | NaN      | is not a mass such as
            mass      | 12 stone | is not a mass such as
            mass      | 2000 kg  | A mass is from 0 g to 1000 kg
            quantity  | 0        | A quantity is a whole number
            quantity  | 1.5      | A quantity is a whole number
            quantity  | 12*      | A quantity is a whole number
            x         | far      | is not a length such as
            x         | 400 m    | A station is at most 100 m
            growth    | -1       | a number from 0 to 500
            costEach  | free     | is not a number such as
            name      | ''       | Please name the part
            note      | a\u0000b | control characters
            newAssembly | a\u0000b | leave out line breaks and invisible characters
            """)
    void keepsWhatWasTypedAndSaysWhatIsWrong(String field, String typed, String sentence) {
        int revisions = readings.history("dunlin").size();
        Map<String, String> form = new HashMap<>(Map.of("name", "Trial part", "mass", "10", "x", "100"));
        form.put(field, typed);

        Page again = add("dunlin", form);

        assertThat(again.status()).isEqualTo(422);
        assertThat(again.document().select(".error").text()).contains(sentence);
        if (!typed.contains("\u0000")) {
            assertThat(again.document().expectFirst("[name=" + field + "]").val())
                    .isEqualTo(typed);
        }
        assertThat(readings.history("dunlin")).hasSize(revisions);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"<script>alert(1)</script>", "=cmd|' /C calc'!A0", "${7*7}", "__${7*7}__", "O'Neil \"x\" &amp;"})
    void showsHostileNamesAsText(String name) {
        Page page = add("dunlin", Map.of("name", name, "mass", "1"));

        assertThat(page.status()).isEqualTo(200);
        assertThat(page.document().select("a.part").eachText()).contains(name);
        assertThat(page.document().select("main script")).isEmpty();
    }

    @Test
    void aPartWithoutAMassIsNotKnownAndNeverZero() {
        Page page = add("dunlin", Map.of("name", "Mystery box", "mass", ""));

        assertThat(page.document().expectFirst(".impact").text()).contains("not known");
        assertThat(page.document().expectFirst(".title-block .verdict").text()).isEqualTo("not known");
        browser.send(page, "/airframes/dunlin/undo", Map.of());
    }

    @Test
    void movesAPartToANewAssembly() {
        add("curlew", Map.of("name", "Field radio", "mass", "80", "category", "RADIO"));
        PartLine line = named("curlew", "Field radio");

        Page moved = edit("curlew", line, Map.of("assembly", "", "newAssembly", "Ground box"));

        assertThat(moved.document().expectFirst(".impact").text()).contains("Field radio: moved to Ground box");
        assertThat(named("curlew", "Field radio").assembly()).isEqualTo("ground-box");
        assertThat(moved.document().select("tr.group th").eachText()).contains("Ground box");
    }

    private Page edit(String code, PartLine line, Map<String, String> typed) {
        String address = parts(code) + "/" + line.id();
        return browser.send(browser.open(address), address, typed);
    }

    @Test
    void remembersWhetherAChangeCorrectsOrFits() {
        PartLine line = readings.head("godwit").build().lines().get(0);
        String address = parts("godwit") + "/" + line.id();
        browser.send(
                browser.open(address),
                address,
                Map.of("nature", "CORRECTED", "mass", "171.5", "note", "scales of the club"));

        Revision newest = readings.history("godwit").get(0);
        assertThat(newest.nature()).isEqualTo(Nature.CORRECTED);
        assertThat(newest.title()).startsWith(line.name());
    }

    @Test
    void lookingInOuncesRoundsNothing() {
        PartLine before = readings.head("curlew").build().lines().get(0);
        Page page = browser.open(parts("curlew"));
        try {
            browser.post("/units", page, Map.of("units", "OUNCE_INCH", "back", "/"));
            Page saved = edit("curlew", before, Map.of("note", "looked at in ounces"));
            assertThat(saved.document().expectFirst("table.parts thead").text()).contains("Total, oz");

            PartLine after = readings.head("curlew").build().line(before.id()).orElseThrow();
            assertThat(after.mass()).isEqualTo(before.mass());
            assertThat(after.place()).isEqualTo(before.place());
            assertThat(after.note()).isEqualTo("looked at in ounces");
        } finally {
            browser.post("/units", page, Map.of("units", "GRAM_MILLIMETRE", "back", "/"));
        }
    }

    @Test
    void mergesWithWhatSomebodyElseChangedMeanwhile() {
        PartLine line = readings.head("curlew").build().lines().get(1);
        String address = parts("curlew") + "/" + line.id();
        Page first = browser.open(address);
        Page second = browser.open(address);

        browser.send(first, address, Map.of("note", "from the first bench"));
        Page merged = browser.send(second, address, Map.of("partCode", "PK-2"));

        PartLine now = readings.head("curlew").build().line(line.id()).orElseThrow();
        assertThat(now.note()).isEqualTo("from the first bench");
        assertThat(now.supply().partCode()).isEqualTo("PK-2");
        assertThat(merged.document().expectFirst(".impact").text()).contains("Merged with revision");
    }

    @Test
    void showsAClashWithWhatWasTypedAndLetsItBeSavedAgain() {
        PartLine line = readings.head("curlew").build().lines().get(2);
        String address = parts("curlew") + "/" + line.id();
        Page first = browser.open(address);
        Page second = browser.open(address);

        browser.send(first, address, Map.of("mass", "91", "basis", "WEIGHED"));
        Page clash = browser.send(second, address, Map.of("mass", "95", "basis", "CATALOGUE"));

        assertThat(clash.status()).isEqualTo(422);
        assertThat(clash.text()).contains("set differently on both sides").contains("in the meantime");
        assertThat(clash.document().expectFirst("[name=mass]").val()).isEqualTo("95");

        browser.send(clash, address, Map.of());
        PartLine now = readings.head("curlew").build().line(line.id()).orElseThrow();
        assertThat(now.mass().unitMass()).isEqualTo(Mass.ofGrams(95));
        assertThat(now.mass().basis()).isEqualTo(Basis.CATALOGUE);
    }

    @Test
    void savingAgainAfterAClashKeepsWhatTheOtherChangedElsewhere() {
        PartLine line = readings.head("curlew").build().lines().get(4);
        String address = parts("curlew") + "/" + line.id();
        Page first = browser.open(address);
        Page second = browser.open(address);

        browser.send(first, address, Map.of("mass", "33", "note", "theirs", "supplier", "club order"));
        Page clash = browser.send(second, address, Map.of("mass", "37"));
        assertThat(clash.status()).isEqualTo(422);
        browser.send(clash, address, Map.of());

        PartLine now = readings.head("curlew").build().line(line.id()).orElseThrow();
        assertThat(now.mass().unitMass()).isEqualTo(Mass.ofGrams(37));
        assertThat(now.note()).isEqualTo("theirs");
        assertThat(now.supply().supplier()).isEqualTo("club order");
    }

    @Test
    void whatWasTypedForAPartThatIsGoneCanBeAddedAnew() {
        add("curlew", Map.of("name", "Short-lived lamp", "mass", "12"));
        PartLine line = named("curlew", "Short-lived lamp");
        String address = parts("curlew") + "/" + line.id();
        Page open = browser.open(address);
        browser.send(browser.open(address), address + "/remove", Map.of());

        Page gone = browser.send(open, address, Map.of("note", "still wanted"));
        assertThat(gone.text()).contains("This part was removed in the meantime");
        browser.send(gone, parts("curlew"), Map.of());

        assertThat(named("curlew", "Short-lived lamp").note()).isEqualTo("still wanted");
    }

    @Test
    void aFormIsReadInTheUnitsItWasShownIn() {
        PartLine line = readings.head("curlew").build().lines().get(5);
        String address = parts("curlew") + "/" + line.id();
        Page inGrams = browser.open(address);
        browser.post("/units", inGrams, Map.of("units", "OUNCE_INCH", "back", "/"));
        try {
            browser.send(inGrams, address, Map.of("mass", "43", "note", "typed as grams"));
        } finally {
            browser.post("/units", inGrams, Map.of("units", "GRAM_MILLIMETRE", "back", "/"));
        }

        PartLine now = readings.head("curlew").build().line(line.id()).orElseThrow();
        assertThat(now.mass().unitMass()).isEqualTo(Mass.ofGrams(43));
        assertThat(now.place()).isEqualTo(line.place());
    }

    @ParameterizedTest
    @CsvSource({
        "category,foo",
        "basis,x",
        "state,x",
        "weighedAs,x",
        "nature,x",
        "units,x",
        "seen,abc",
        "seen,99999999999",
        "seen,"
    })
    void aValueThatNoPageOffersIsRefusedInPlainWords(String field, @Nullable String value) {
        Page form = browser.open(parts("dunlin") + "/new");
        Map<String, String> typed = new HashMap<>(Map.of(
                "seen", form.document().expectFirst("[name=seen]").val(),
                "units", "GRAM_MILLIMETRE",
                "name", "Odd part",
                "assembly", "wing",
                "quantity", "1",
                "category", "RADIO",
                "basis", "GUESSED",
                "state", "PLANNED"));
        typed.put(field, value == null ? "" : value);

        Page answer = browser.post(parts("dunlin"), form, typed);

        assertThat(answer.status()).isBetween(200, 499);
        assertThat(answer.text()).doesNotContain("java.lang").doesNotContain("dev.ledgerwing");
        assertThat(answer.document().select("footer, main")).isNotEmpty();
    }

    @Test
    void removesAPartThatALoadCaseMentionsAndGivesItBack() {
        String absent = readings.head("curlew").build().loadCases().stream()
                .flatMap(loadCase -> loadCase.absent().stream())
                .findFirst()
                .orElseThrow();
        String address = parts("curlew") + "/" + absent;

        Page removed = browser.send(browser.open(address), address + "/remove", Map.of());
        assertThat(readings.head("curlew").build().line(absent)).isEmpty();
        assertThat(browser.open(address).status()).isEqualTo(404);

        browser.send(removed, "/airframes/curlew/undo", Map.of());
        assertThat(readings.head("curlew").build().line(absent)).isPresent();
        assertThat(readings.head("curlew").build().loadCases())
                .anyMatch(loadCase -> loadCase.absent().contains(absent));
    }

    @Test
    void findsPartsByNameAndByPartCode() {
        Page found = browser.open(parts("curlew") + "?find=SERVO");

        assertThat(found.document().select("a.part").eachText())
                .isNotEmpty()
                .allMatch(name -> name.toLowerCase(Locale.ROOT).contains("servo"));
        assertThat(browser.open(parts("curlew") + "?find=<b>none</b>").text()).contains("No part has “<b>none</b>”");
    }

    @Test
    void keepsAnAssemblyThatHoldsPartsAndRenamesIt() {
        Page page = browser.open("/airframes/dunlin/assemblies/wing");
        assertThat(page.document().select("form[action$=/remove]")).isEmpty();

        browser.send(page, "/airframes/dunlin/assemblies/wing", Map.of("name", "Wing, two halves"));

        assertThat(readings.head("dunlin")
                        .build()
                        .assembly("wing")
                        .orElseThrow()
                        .name())
                .isEqualTo("Wing, two halves");
    }
}
