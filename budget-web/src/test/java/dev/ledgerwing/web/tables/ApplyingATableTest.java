package dev.ledgerwing.web.tables;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Nature;
import dev.ledgerwing.core.build.PartDeeds;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.seed.SeedFleet;
import dev.ledgerwing.web.airframe.ImpactStrip;
import dev.ledgerwing.web.desk.Deed;
import dev.ledgerwing.web.desk.Desk;
import dev.ledgerwing.web.desk.Outcome;
import dev.ledgerwing.web.desk.Seen;
import dev.ledgerwing.web.desk.Signature;
import dev.ledgerwing.web.desk.Snapshot;
import dev.ledgerwing.web.tables.TableWalk.Answer;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** What importing a table stores, and when it stores nothing. */
@ImportPageTest
class ApplyingATableTest {

    private static final byte[] WING =
            TableWalk.rows("Part,Qty,Mass [g],Assembly", "Spar,2,70,Wing", "Rib,14,3.2,Wing");

    @Autowired
    TableWalk walk;

    @Autowired
    Desk desk;

    @Test
    void importsTheDemoTableIntoDunlinAsOneRevision() throws Exception {
        Snapshot before = walk.head("dunlin");

        Answer done =
                walk.apply(walk.preview("dunlin", SeedFleet.partsTable()), Map.of("reason", "floats for the spring"));

        assertThat(done.leadsTo()).isEqualTo("/airframes/dunlin/parts");
        Snapshot after = walk.head("dunlin");
        assertThat(after.revision().number()).isEqualTo(before.revision().number() + 1);
        assertThat(after.revision().title()).isEqualTo("25 parts imported from parts.csv");
        assertThat(after.revision().reason()).isEqualTo("floats for the spring");
        assertThat(after.revision().author()).isEqualTo("Mara");
        assertThat(after.build().lines()).hasSize(before.build().lines().size() + 25);
        assertThat(strip(done).title()).isEqualTo(after.revision().title());
        assertThat(strip(done).undoNumber()).isEqualTo(after.revision().number());
    }

    @Test
    void whatWasShownIsWhatIsStored() throws Exception {
        String code = walk.blankAirframe();
        Answer preview = walk.preview(code, TableWalk.rows("Part,Colour,Weight", "Spar,2,100"));
        Answer again = walk.readAgain(preview, Map.of("meaning 2", "QUANTITY", "unit 3", "oz"));

        walk.apply(again, Map.of("looseAssembly", "Left wing"));

        Build stored = walk.head(code).build();
        assertThat(stored.lines()).hasSize(1);
        assertThat(stored.lines().get(0).quantity()).isEqualTo(2);
        assertThat(stored.lines().get(0).totalMass().mg()).isEqualTo(5_669_904);
        assertThat(stored.assemblies()).extracting(assembly -> assembly.name()).containsExactly("Left wing");
    }

    @Test
    void columnsChangedWithoutReadingAgainAreShownFirst() throws Exception {
        String code = walk.blankAirframe();
        Answer preview = walk.preview(code, WING);

        Answer changed = walk.apply(preview, Map.of("unit 3", "oz", "reason", "as found"));

        assertThat(changed.leadsTo()).endsWith("?columns=3.UNIT_MASS.oz");
        assertThat(changed.passedOn())
                .containsEntry(
                        "notice",
                        "Columns were changed, so nothing was imported yet: this is how the table reads now.");
        assertThat(walk.head(code).revision().number()).isEqualTo(1);
    }

    @Test
    void storesNothingWhileAProblemStands() throws Exception {
        String code = walk.blankAirframe();
        Answer preview = walk.preview(code, TableWalk.rows("Part,Mass [g]", "Spar,70", "Rib,-3"));

        Answer refused = walk.apply(preview);

        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.text("[role=alert]")).contains("A problem stands in the way");
        assertThat(walk.head(code).build().lines()).isEmpty();
        assertThat(walk.head(code).revision().number()).isEqualTo(1);
    }

    @Test
    void keepsWhatWasTypedWhereAFieldIsWrong() throws Exception {
        String code = walk.blankAirframe();
        Answer preview = walk.preview(code, TableWalk.rows("Part,Mass [g]", "Spar,70"));

        Answer refused = walk.apply(preview, Map.of("looseAssembly", " ", "reason", "r".repeat(301)));

        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.text("#looseAssembly-error")).isEqualTo("Please name the assembly for these parts.");
        assertThat(refused.text("#reason-error")).contains("at most 300 characters");
        assertThat(refused.page().expectFirst("[name=reason]").val()).hasSize(301);
        assertThat(walk.head(code).revision().number()).isEqualTo(1);
    }

    @Test
    void aFormThatWasTamperedWithStoresNothingAndFailsNowhere() throws Exception {
        String code = walk.blankAirframe();
        Answer preview = walk.preview(code, WING);

        Answer above = walk.apply(preview, Map.of("placing", "ABOVE"));
        assertThat(above.status()).isEqualTo(422);
        assertThat(above.text("#import-form [role=alert]")).contains("The page was incomplete");
        assertThat(walk.apply(preview, Map.of("seen", "many")).status()).isEqualTo(422);
        assertThat(walk.apply(preview, Map.of("seen", "77")).status()).isEqualTo(404);
        assertThat(walk.apply(preview, Map.of("columns", "1.<b>")).status()).isEqualTo(400);
        assertThat(walk.apply(preview, Map.of("reason", "a\0b")).status()).isEqualTo(422);
        assertThat(walk.head(code).revision().number()).isEqualTo(1);
    }

    @Test
    void aTotalThatDisagreesIsFoundAndNotLost() throws Exception {
        String code = walk.blankAirframe();
        Answer preview = walk.preview(code, TableWalk.rows("Part,Mass [g],Assembly", "Spar,70,Wing", "Total,90,"));
        assertThat(preview.text("section[aria-labelledby=totals] .verdict")).isEqualTo("breaks");
        assertThat(preview.text(".answer")).contains("A total is not the sum of its rows.");

        Answer done = walk.apply(preview, Map.of("reason", "first table"));

        String sentence = "Row 3 “Total” states 90\u2009g; the part of row 2 has 70\u2009g: it is 20\u2009g more.";
        assertThat(walk.head(code).revision().reason()).isEqualTo("first table. " + sentence);
        assertThat(strip(done).note()).isEqualTo(sentence);
        assertThat(walk.head(code).build().lines()).hasSize(1);
    }

    @Test
    void mergesWithWhatOthersDidMeanwhile() throws Exception {
        String code = walk.blankAirframe();
        walk.apply(walk.preview(code, WING));
        Answer preview = walk.preview(code, WING);
        PartLine spar = walk.head(code).build().lines().get(0);
        Outcome removed = desk.change(
                new Seen(code, 2),
                Deed.fitting("Spar removed", build -> PartDeeds.removed(build, spar.id())),
                new Signature("Jonas", ""));
        assertThat(removed).isInstanceOf(Outcome.Landed.class);

        Answer done = walk.apply(preview);

        assertThat(walk.head(code).build().lines()).extracting(PartLine::name).containsExactly("Rib", "Spar", "Rib");
        assertThat(strip(done).note()).isEqualTo("Merged with revision 3 by Jonas.");
    }

    @Test
    void saysWhoClashedAndKeepsTheTable() throws Exception {
        String code = walk.blankAirframe();
        walk.apply(walk.preview(code, WING));
        Answer preview = walk.preview(code, TableWalk.rows("Part,Mass [g],Assembly", "Panel,400,Wing"));
        PartLine spar = walk.head(code).build().lines().get(0);
        PartLine renamed = PartLine.named(spar.id(), "wing", "Longeron", spar.category(), 2, spar.mass());
        desk.change(
                new Seen(code, 2),
                Deed.fitting("Spar renamed", build -> PartDeeds.changed(build, renamed, Nature.FITTED)),
                new Signature("Jonas", ""));

        Answer clash = walk.apply(preview, Map.of("placing", "REPLACE"));
        assertThat(clash.status()).isEqualTo(422);
        assertThat(clash.text("[role=alert]"))
                .contains("removed on one side and changed on the other", "Jonas made revision 3");
        assertThat(walk.head(code).revision().number()).isEqualTo(3);

        Answer done = walk.apply(clash);
        assertThat(done.leadsTo()).endsWith("/parts");
        assertThat(walk.head(code).build().lines()).extracting(PartLine::name).containsExactly("Panel");
    }

    @Test
    void replacesAllPartsWhereNoLoadCaseSpeaksOfThem() throws Exception {
        String code = walk.blankAirframe();
        walk.apply(walk.preview(code, WING));
        Answer preview = walk.preview(code, TableWalk.rows("Part,Mass [g],Assembly", "Panel,400,Wing"));
        assertThat(preview.page().select(".way")).hasSize(2);

        walk.apply(preview, Map.of("placing", "REPLACE"));

        assertThat(walk.head(code).build().lines()).extracting(PartLine::name).containsExactly("Panel");
        assertThat(walk.head(code).revision().title()).isEqualTo("All parts replaced by 1 part from parts.csv");
    }

    @Test
    void doesNotReplacePartsThatALoadCaseSpeaksOf() throws Exception {
        int before = walk.head("godwit").revision().number();
        Answer preview = walk.preview("godwit", WING);
        assertThat(preview.page().select("[value=REPLACE][disabled]")).hasSize(1);
        assertThat(preview.text("#placing-REPLACE")).contains("The parts cannot be replaced: the load case “");

        Answer refused = walk.apply(preview, Map.of("placing", "REPLACE"));
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.text("[role=alert]")).contains("The parts cannot be replaced");
        assertThat(walk.head("godwit").revision().number()).isEqualTo(before);
    }

    @Test
    void aSecondClickImportsNothingMore() throws Exception {
        String code = walk.blankAirframe();
        Answer preview = walk.preview(code, WING);
        Answer first = walk.apply(preview);
        Answer second = walk.apply(preview);

        assertThat(second.leadsTo()).isEqualTo(first.leadsTo());
        assertThat(strip(second)).isEqualTo(strip(first));
        assertThat(walk.head(code).revision().number()).isEqualTo(2);

        Answer back = walk.open(preview.page().expectFirst("#import-form").attr("action"));
        assertThat(back.status()).isEqualTo(404);
        assertThat(back.text("[role=alert]")).contains("imported already");
    }

    @Test
    void importsTenThousandRowsInOneGo() throws Exception {
        String code = walk.blankAirframe();
        String[] rows = new String[10_001];
        rows[0] = "Part,Qty,Mass each [g],Assembly";
        for (int i = 1; i < rows.length; i++) {
            rows[i] = "Rib " + i + ",1,0.05,Panel " + i % 40;
        }
        Answer preview = walk.preview(code, TableWalk.rows(rows));
        assertThat(preview.text(".answer")).contains("10000 parts can be imported, together 500\u2009g");
        assertThat(preview.text("section[aria-labelledby=parts]")).endsWith("The first 50 of 10000 parts.");

        assertThat(walk.apply(preview).status()).isEqualTo(302);

        Snapshot after = walk.head(code);
        assertThat(after.revision().number()).isEqualTo(2);
        assertThat(after.build().lines())
                .hasSize(10_000)
                .extracting(PartLine::id)
                .doesNotHaveDuplicates();
        assertThat(after.revision().basic().grams()).isEqualTo(500);
    }

    private static ImpactStrip strip(Answer answer) {
        return (ImpactStrip) Objects.requireNonNull(answer.passedOn().get("strip"));
    }
}
