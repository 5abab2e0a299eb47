package dev.ledgerwing.core.words;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Airframe;
import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Booking;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.BuildChange;
import dev.ledgerwing.core.build.Builds;
import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.GrowthTable;
import dev.ledgerwing.core.build.JudgedBy;
import dev.ledgerwing.core.build.LineMass;
import dev.ledgerwing.core.build.LinePlace;
import dev.ledgerwing.core.build.LoadCase;
import dev.ledgerwing.core.build.MassBudget;
import dev.ledgerwing.core.build.Nature;
import dev.ledgerwing.core.build.PartDeeds;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Power;
import dev.ledgerwing.core.build.PowerRules;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.core.build.Stage;
import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ChangeWordsTest {

    private static final Build SMALL = Builds.small();

    private static List<EditText> told(Build before, Build after, Figures figures) {
        BuildChange change = BuildChange.between("change", Nature.FITTED, before, after);
        return new ChangeWords(before, after, figures).of(change);
    }

    /** The one edit there is, spaces made plain. */
    private static EditText only(Build after) {
        List<EditText> edits = told(SMALL, after, Figures.METRIC);
        assertThat(edits).hasSize(1);
        return edits.get(0);
    }

    private static List<String> fields(EditText edit) {
        return edit.fields().stream()
                .map(field -> plain(field.word() + ": " + field.before() + " → " + field.after()))
                .toList();
    }

    private static String plain(String text) {
        return text.replace('\u2009', ' ');
    }

    private static Build withLine(PartLine changed) {
        return PartDeeds.changed(SMALL, changed, Nature.FITTED);
    }

    private static PartLine spar() {
        return SMALL.line("L001").orElseThrow();
    }

    @Test
    void tellsWhatWasWeighed() {
        EditText edit = only(withLine(spar().withMass(LineMass.of(Mass.ofGrams(131.5), Basis.WEIGHED))));
        assertThat(edit.kind()).isEqualTo(EditText.Kind.CHANGED);
        assertThat(edit.what()).isEqualTo("part");
        assertThat(edit.name()).isEqualTo("Spar");
        assertThat(edit.line()).isEqualTo("L001");
        assertThat(fields(edit)).containsExactly("mass of one: 120 g → 131.5 g", "basis: guessed → weighed");
    }

    @Test
    void saysThatAMassIsNotKnownAnyMore() {
        EditText edit = only(withLine(spar().withMass(LineMass.notKnown())));
        assertThat(fields(edit)).containsExactly("mass of one: 120 g → not known");
    }

    @Test
    void tellsMassesAndStationsInTheUnitsOfTheReader() {
        PartLine moved = spar().withPlace(LinePlace.at(Station.atX(Length.ofMm(254))))
                .withMass(LineMass.of(Mass.ofGrams(283.49523125), Basis.GUESSED));
        EditText edit =
                told(SMALL, withLine(moved), new Figures(UnitSystem.OUNCE_INCH)).get(0);
        assertThat(fields(edit)).containsExactly("mass of one: 4.23 oz → 10 oz", "station: not known → 10 in aft");
    }

    @Test
    void tellsAddedAndRemovedPartsByWhatTheyWeigh() {
        PartLine clip = PartLine.named(
                "L009", "nose", "Clip", spar().category(), 4, LineMass.of(Mass.ofGrams(1.5), Basis.CATALOGUE));
        EditText added = only(PartDeeds.added(SMALL, clip));
        assertThat(added.kind()).isEqualTo(EditText.Kind.ADDED);
        assertThat(plain(added.summary())).isEqualTo("4 × 1.5 g catalogue, Nose");
        EditText removed = only(PartDeeds.removed(SMALL, "L002"));
        assertThat(removed.kind()).isEqualTo(EditText.Kind.REMOVED);
        assertThat(plain(removed.summary())).isEqualTo("2 × 12.5 g weighed, Wing");
    }

    @Test
    void tellsAFeedByTheNamesOfItsEndsAndElements() {
        Rail rail = new Rail("avionics", "Avionics", 5.0, 4.8, null, true);
        PowerSource pack = PowerSource.battery("pack", "Standby pack", null, Builds.pack(2));
        FeedElement fuse = FeedElement.rated("Main fuse", FeedElement.Kind.FUSE, 5.0);
        Feed feed = new Feed("leg", "Standby leg", "pack", "avionics", List.of(fuse));
        Power bare = new Power(List.of(pack), List.of(rail), List.of(), PowerRules.DEFAULT, null);
        Build before = SMALL.withPower(bare);

        Build after = before.withFeeds(List.of(feed));

        assertThat(told(before, after, Figures.METRIC))
                .singleElement()
                .satisfies(edit -> assertThat(plain(edit.summary()))
                        .isEqualTo("from Standby pack, to Avionics, elements Main fuse (kind fuse, rating 5 A)"));
    }

    @Test
    void callsThingsByTheirNamesNotByTheirCodes() {
        PartLine glue = SMALL.line("L003").orElseThrow();
        PartLine moved = new PartLine(
                glue.id(),
                "wing",
                glue.name(),
                glue.category(),
                glue.quantity(),
                glue.mass(),
                glue.place(),
                glue.state(),
                glue.supply(),
                glue.note(),
                glue.serves(),
                glue.electrical(),
                glue.needs());
        assertThat(fields(only(withLine(moved)))).containsExactly("assembly: Nose → Wing");
    }

    @Test
    void tellsOfALongListOnlyWhatCameAndWent() {
        Build before = withCase(List.of("L001", "L002"), Map.of());
        Build after = withCase(List.of("L002", "L003"), Map.of("L001", Station.atX(Length.ofMm(50))));
        EditText edit = told(before, after, Figures.METRIC).get(0);
        assertThat(edit.what()).isEqualTo("load case");
        assertThat(fields(edit)).containsExactly("stays at home: Spar → Glue", "sits elsewhere: – → Spar at 50 mm aft");
    }

    private static Build withCase(List<String> absent, Map<String, Station> moved) {
        LoadCase ferry =
                new LoadCase("ferry", "Ferry", LoadCase.Purpose.FLIGHT, false, absent, moved, List.of(), List.of());
        return SMALL.withLoadCases(List.of(LoadCase.everythingAboard(), ferry));
    }

    @Test
    void tellsTheBudgetAndTheStage() {
        Airframe old = SMALL.airframe();
        Build after = SMALL.withAirframe(
                        new Airframe(old.code(), old.name(), old.purpose(), Stage.FLIGHT_TEST, old.datum()))
                .withBudget(
                        new MassBudget(Mass.ofGrams(12_345), Mass.ofGrams(25_000), MassBudget.CeilingIs.AT_MOST, 7.5));
        List<EditText> edits = told(SMALL, after, Figures.METRIC);
        assertThat(edits).extracting(EditText::what).containsExactly("airframe", "mass budget");
        assertThat(fields(edits.get(0))).containsExactly("stage: Design → Flight test");
        assertThat(fields(edits.get(1)))
                .containsExactly(
                        "target: 2000 g → 12.345 kg",
                        "ceiling: none → 25.000 kg",
                        "the ceiling means: nothing → at most",
                        "reserve wanted: the default of the stage → 7.5 %");
    }

    @Test
    void tellsABookingThatWasMade() {
        EditText edit = only(SMALL.withBooking(new Booking(Mass.ofGrams(-12.3), "hall scales")));
        assertThat(edit.kind()).isEqualTo(EditText.Kind.ADDED);
        assertThat(plain(edit.summary())).isEqualTo("mass −12.3 g, reason hall scales");
    }

    @Test
    void tellsTheRulesFieldByField() {
        List<GrowthTable.Row> rows = new ArrayList<>(GrowthTable.OWN_CHOICE.rows());
        rows.set(0, new GrowthTable.Row(rows.get(0).category(), 25, 12, 3));
        JudgedBy rules = new JudgedBy(
                new GrowthTable("our shop's book", rows),
                SMALL.judgedBy().massUncertainty(),
                SMALL.judgedBy().reserves());
        Build after = SMALL.withJudgedBy(rules);
        assertThat(fields(only(after)))
                .containsExactly(
                        "source: " + GrowthTable.OWN_CHOICE.source() + " → our shop's book",
                        "growth by category: Structure: 20 % guessed, 10 % calculated, 3 % catalogue"
                                + " → Structure: 25 % guessed, 12 % calculated, 3 % catalogue");
    }

    @Test
    void saysOfAPartThatOnlyMovedInTheListJustThat() {
        List<PartLine> turned = new ArrayList<>(SMALL.lines());
        Collections.swap(turned, 0, 1);
        EditText edit = only(SMALL.withLines(turned));
        assertThat(edit.kind()).isEqualTo(EditText.Kind.REORDERED);
        assertThat(edit.fields()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void hasWordsForAnythingARecordMayHold(long seed) {
        for (EditText edit : told(Builds.seeded(seed), Builds.seeded(seed + 100), Figures.METRIC)) {
            assertThat(edit.kind() == EditText.Kind.CHANGED)
                    .isEqualTo(!edit.fields().isEmpty());
            assertThat(said(edit))
                    .allSatisfy(text -> assertThat(text)
                            .isNotBlank()
                            .doesNotContain("null")
                            .doesNotContainPattern("[A-Z]{2}_|\\w\\[\\w+="));
        }
    }

    private static List<String> said(EditText edit) {
        List<String> said = new ArrayList<>(List.of(edit.what()));
        if (edit.kind() == EditText.Kind.ADDED || edit.kind() == EditText.Kind.REMOVED) {
            said.add(edit.summary());
        }
        edit.fields().forEach(field -> said.addAll(List.of(field.word(), field.before(), field.after())));
        return said;
    }
}
