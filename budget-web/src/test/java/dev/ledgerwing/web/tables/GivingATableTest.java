package dev.ledgerwing.web.tables;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.web.tables.TableWalk.Answer;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** What may be given as a table, and who gets to see it. */
@ImportPageTest
class GivingATableTest {

    @Autowired
    TableWalk walk;

    @Test
    void asksForAFileOrForRows() throws Exception {
        Document page = walk.open("/airframes/dunlin/import").page();

        assertThat(page.select("form[enctype=multipart/form-data] [name=file]")).hasSize(1);
        assertThat(page.select("form[enctype=multipart/form-data] [name=_csrf]"))
                .as("works without script")
                .hasSize(1);
        assertThat(page.select("form textarea[name=rows]")).hasSize(1);
        assertThat(page.select("[style], style, script:not([src])")).isEmpty();
    }

    @Test
    void saysWhenNothingWasGiven() throws Exception {
        Answer noFile = walk.give("dunlin", new byte[0]);
        Answer noRows = walk.paste("dunlin", " \n");

        assertThat(noFile.status()).isEqualTo(422);
        assertThat(noFile.text("#file-error")).isEqualTo("The file is empty.");
        assertThat(noRows.status()).isEqualTo(422);
        assertThat(noRows.text("#rows-error")).contains("Please paste the rows");
    }

    @Test
    void refusesWhatIsNoTable() throws Exception {
        assertRefused("Part,Qty\nSpar\0,1\n", "NUL byte");
        assertRefused("Part,Qty" + ",".repeat(2_000) + "\nSpar,1\n", "at most 200 are read");
        assertRefused("Part,Qty\n" + "Spar,1\n".repeat(20_001), "more than 20 000 rows");
        assertRefused("Part,Qty\n\"Spar,1\n", "never closed");
    }

    private void assertRefused(String table, String sentence) throws Exception {
        int before = walk.head("dunlin").revision().number();
        Answer file = walk.give("dunlin", TableWalk.rows(table));
        Answer pasted = walk.paste("dunlin", table);

        assertThat(file.status()).isEqualTo(422);
        assertThat(file.text("#file-error")).contains(sentence);
        assertThat(pasted.status()).isEqualTo(422);
        assertThat(pasted.text("#rows-error")).contains(sentence);
        assertThat(walk.head("dunlin").revision().number()).isEqualTo(before);
    }

    @Test
    void keepsTheRowsThatWereRefused() throws Exception {
        Answer refused = walk.paste("dunlin", "Part,Qty\n\"<b>Spar</b>,1");

        assertThat(refused.page().expectFirst("textarea").wholeText()).isEqualTo("Part,Qty\n\"<b>Spar</b>,1");
        assertThat(refused.page().select("textarea[aria-invalid=true]")).hasSize(1);
    }

    @Test
    void takesRowsPastedFromASpreadsheet() throws Exception {
        Answer given = walk.paste("dunlin", "Part\tQty\tMass [g]\r\nSpar\t2\t78,5\r\n");

        Answer preview = walk.open(given.leadsTo());
        assertThat(preview.text(".heading")).contains("pasted rows");
        assertThat(preview.text("section[aria-labelledby=how]")).contains("UTF-8, cells parted by tabs, decimal comma");
    }

    @Test
    void showsATableToNobodyButTheMemberWhoGaveIt() throws Exception {
        String preview =
                walk.give("dunlin", TableWalk.rows("Part,Qty", "Spar,1")).leadsTo();

        assertThat(walk.open(preview).status()).isEqualTo(200);
        assertThat(walk.openAsJonas(preview).status()).isEqualTo(404);
        assertThat(walk.openAsJonas(preview).text()).doesNotContain("Spar");
        assertThat(walk.open(preview.replace("dunlin", "godwit")).status()).isEqualTo(404);
    }

    @Test
    void asksAgainForATableThatIsGone() throws Exception {
        Answer gone = walk.open("/airframes/dunlin/import/00000000-0000-0000-0000-000000000000");

        assertThat(gone.status()).isEqualTo(404);
        assertThat(gone.text("[role=alert]")).contains("no longer here", "Please give it again.");
        assertThat(gone.page().select("[name=file]")).hasSize(1);
    }

    @Test
    void knowsNoTableForAnAirframeThatIsNotThere() throws Exception {
        assertThat(walk.open("/airframes/heron/import").status()).isEqualTo(404);
        assertThat(walk.give("heron", TableWalk.rows("Part,Qty", "Spar,1")).status())
                .isEqualTo(404);
        assertThat(walk.open("/airframes/heron/parts.csv").status()).isEqualTo(404);
    }
}
