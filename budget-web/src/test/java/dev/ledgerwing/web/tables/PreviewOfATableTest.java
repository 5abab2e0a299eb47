package dev.ledgerwing.web.tables;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.seed.SeedFleet;
import dev.ledgerwing.web.tables.TableWalk.Answer;
import java.util.List;
import java.util.Map;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** How a table is shown before it is imported. */
@ImportPageTest
class PreviewOfATableTest {

    @Autowired
    TableWalk walk;

    @Test
    void showsHowEachColumnOfTheDemoTableWasUnderstood() throws Exception {
        Answer preview = walk.preview("dunlin", SeedFleet.partsTable());

        assertThat(preview.text("section[aria-labelledby=how] > p"))
                .contains("UTF-8, cells parted by semicolons, decimal comma, headings in row 1.");
        assertThat(marked(preview, "meanings"))
                .containsExactly("NAME", "QUANTITY", "UNIT_MASS", "BASIS", "STATION_X", "SUPPLIER", "NOTE");
        assertThat(marked(preview, "units")).containsExactly("", "", "g", "", "mm", "", "");
        assertThat(preview.page().select("table.column-list tbody tr").get(2).text())
                .contains("Mass each [g]", "38,5 · 4,2 · 2,8", "from the heading “Mass each [g]”");
    }

    @Test
    void showsThePartsAsTheyWouldBeStored() throws Exception {
        Answer preview = walk.preview("dunlin", SeedFleet.partsTable());

        List<Element> rows = preview.page().select("section[aria-labelledby=parts] tbody tr");
        assertThat(rows).hasSize(25);
        assertThat(rows.get(0).select("td").eachText())
                .containsExactly(
                        "3",
                        "Float shell, glass on foam made here · both out of the mould",
                        "Floats",
                        "Structure proposed",
                        "2",
                        "38.5",
                        "weighed",
                        "77",
                        "255",
                        "planned");
        assertThat(preview.text("section[aria-labelledby=import]"))
                .contains("New assemblies: Floats, Struts, Fin under the tail, Electrics.");
    }

    @Test
    void neverShowsAnUnknownMassAsFine() throws Exception {
        Answer preview = walk.preview("dunlin", SeedFleet.partsTable());

        assertThat(preview.text(".answer"))
                .contains("25 parts can be imported", "at least: not known is the mass of 1");
        List<Element> totals = preview.page().select("section[aria-labelledby=totals] .verdict");
        assertThat(totals)
                .extracting(Element::text)
                .containsExactly("holds", "holds", "holds", "not known", "not known");
        assertThat(preview.text("section[aria-labelledby=totals]")).contains("The mass of row 35 is not known");
    }

    @Test
    void tellsWhatItWouldDoToTheMassBudgetBeforeItIsDone() throws Exception {
        String code = walk.blankAirframe();
        Answer preview = walk.preview(code, TableWalk.rows("Part,Mass [g],Basis", "Spar,1100,weighed"));

        Element way = preview.page().expectFirst(".way");
        assertThat(way.expectFirst(".verdict").text()).isEqualTo("breaks");
        assertThat(way.text()).contains("+1100\u2009g, predicted 1100\u2009g: breaks the target by 100\u2009g.");
        assertThat(walk.head(code).revision().number()).as("nothing was stored").isEqualTo(1);
    }

    @Test
    void namesEveryProblemByRowAndColumnAndOffersNoImport() throws Exception {
        Answer preview = walk.preview(
                "dunlin",
                TableWalk.rows(
                        "Part,Qty,Mass [g],x [mm]",
                        "Spar,1,-3,0",
                        "Rib,1,1e400,0",
                        "Skin,1,NaN,0",
                        "Fin,1,12 stone,0",
                        "Tail,-2,12,nowhere"));

        assertThat(preview.text("#import-form [role=alert]")).startsWith("6 problems stand in the way");
        assertThat(preview.page().select("section[aria-labelledby=problems] tbody tr"))
                .extracting(row -> row.select("td").eachText().subList(0, 3))
                .containsExactly(
                        List.of("2", "3 Mass [g]", "-3"),
                        List.of("3", "3 Mass [g]", "1e400"),
                        List.of("4", "3 Mass [g]", "NaN"),
                        List.of("5", "3 Mass [g]", "12 stone"),
                        List.of("6", "2 Qty", "-2"),
                        List.of("6", "4 x [mm]", "nowhere"));
        assertThat(preview.page().select("section[aria-labelledby=import]")).isEmpty();
    }

    @Test
    void showsFormulaAndMarkupAsTheTextTheyAre() throws Exception {
        String code = walk.blankAirframe();
        Answer preview = walk.preview(
                code,
                TableWalk.rows(
                        "Part,Mass [g],Assembly,<i>Odd</i>",
                        "<script>alert(1)</script>,1,<b>Wing</b>,x",
                        "=1+1,2,@SUM(A1),y"));

        assertThat(preview.page().select("main script, main i, main td b")).isEmpty();
        assertThat(preview.text("section[aria-labelledby=parts]")).contains("<script>alert(1)</script>", "=1+1");
        assertThat(preview.text("table.column-list")).contains("<i>Odd</i>");
        assertThat(preview.text("section[aria-labelledby=import]")).contains("<b>Wing</b>, @SUM(A1)");
    }

    @Test
    void readsAgainWithAnotherMeaningAndUnit() throws Exception {
        Answer preview = walk.preview("dunlin", TableWalk.rows("Part,Colour,Weight", "Spar,2,100"));
        Answer again =
                walk.readAgain(preview, Map.of("meaning 2", "QUANTITY", "unit 3", "oz", "reason", "spring clean"));

        assertThat(marked(again, "meanings")).containsExactly("NAME", "QUANTITY", "UNIT_MASS");
        assertThat(again.page().select("table.column-list .why").eachText())
                .containsExactly("from the heading “Part”", "chosen by hand", "chosen by hand");
        assertThat(again.text("section[aria-labelledby=parts]")).contains("Spar", "2835", "5669.9");
        assertThat(again.page().expectFirst("[name=reason]").val()).isEqualTo("spring clean");
    }

    @Test
    void choicesCanBeTakenBackOneByOneAlsoWhereTwoWantTheSame() throws Exception {
        Answer preview = walk.preview("dunlin", TableWalk.rows("Part,Old name,Mass [g]", "Spar,Longeron,100"));
        Answer both = walk.readAgain(preview, Map.of("meaning 1", "NOTE", "meaning 2", "NOTE"));
        assertThat(both.text("section[aria-labelledby=problems]")).contains("Choose one of the two.");
        assertThat(marked(both, "meanings")).as("shown as chosen").containsExactly("NOTE", "NOTE", "UNIT_MASS");

        Answer one = walk.readAgain(both, Map.of("meaning 1", "NAME"));
        assertThat(one.page().select("section[aria-labelledby=problems]")).isEmpty();
        assertThat(one.text("section[aria-labelledby=parts]")).contains("Spar Longeron");
    }

    @Test
    void asksWhatTheColumnsHoldWhereNoHeadingsSaySo() throws Exception {
        Answer preview = walk.preview("dunlin", TableWalk.rows("Spar;2;78,5", "Rib;14;3,2"));
        assertThat(preview.text("[role=alert]")).contains("No header row was found");
        assertThat(preview.page().select("table.column-list .sample").eachText())
                .containsExactly("Spar · Rib", "2 · 14", "78,5 · 3,2");

        Answer told = walk.readAgain(
                preview, Map.of("meaning 1", "NAME", "meaning 2", "QUANTITY", "meaning 3", "UNIT_MASS", "unit 3", "g"));
        assertThat(told.text(".answer")).contains("2 parts can be imported, together 201.8\u2009g");
    }

    @Test
    void doesNotFallOverAnAddressThatWasTamperedWith() throws Exception {
        String address =
                walk.give("dunlin", TableWalk.rows("Part,Qty", "Spar,1")).leadsTo();

        assertThat(walk.open(address + "?columns=1.SPAR").status()).isEqualTo(400);
        assertThat(walk.open(address + "?columns=999.NAME").status()).isEqualTo(400);
        assertThat(walk.open(address + "?columns=200.NAME").status()).isEqualTo(200);
    }

    @Test
    void staysSmallHoweverMuchThereIsToSay() throws Exception {
        String[] rows = new String[300];
        rows[0] = "Part,Mass [g]";
        for (int i = 1; i < rows.length; i++) {
            rows[i] = "Rib " + "x".repeat(500) + ",heavy";
        }
        Answer preview = walk.preview("dunlin", TableWalk.rows(rows));

        assertThat(preview.text("[role=alert]")).contains("598 problems");
        assertThat(preview.page().select("section[aria-labelledby=problems] tbody tr"))
                .hasSize(100);
        assertThat(preview.text("section[aria-labelledby=problems] > p")).isEqualTo("The first 100 of 598.");
        assertThat(preview.text(".cell-text")).doesNotContain("x".repeat(121));
    }

    @Test
    void leavesOutTotalsThatHoldWhereThereAreTooMany() throws Exception {
        String table = "Part,Mass [g]\n" + "Rib,1\nSubtotal,1\n".repeat(60) + "Rib,1\nSubtotal,5\n";
        Answer preview = walk.preview("dunlin", TableWalk.rows(table));

        assertThat(preview.text("section[aria-labelledby=totals] > p")).isEqualTo("1 of 61, those that hold left out.");
        assertThat(preview.text("section[aria-labelledby=totals] .verdict")).isEqualTo("breaks");
    }

    private static List<String> marked(Answer preview, String name) {
        return preview.page().select("select[name=" + name + "]").stream()
                .map(list -> list.select("option[selected]").attr("value"))
                .toList();
    }
}
