package dev.ledgerwing.web.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.file.table.PartsTable;
import dev.ledgerwing.core.file.table.TablePart;
import dev.ledgerwing.core.file.table.TableReading;
import dev.ledgerwing.web.team.TestMember;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;

/** The parts out again as a table. */
@ImportPageTest
class WritingATableTest {

    @Autowired
    MockMvc mvc;

    @Autowired
    TableWalk walk;

    @Test
    void givesAFileThatTheImportReadsBack() throws Exception {
        MockHttpServletResponse out = out("curlew");

        assertThat(out.getContentType()).isEqualTo("text/csv;charset=UTF-8");
        assertThat(out.getHeader("Content-Disposition"))
                .isEqualTo("attachment; filename=\"curlew-parts-revision-12.csv\"");
        TableReading back = PartsTable.read(out.getContentAsByteArray());
        assertThat(back.problems()).isEmpty();
        assertThat(back.parts())
                .extracting(TablePart::name)
                .containsExactlyElementsOf(walk.head("curlew").build().lines().stream()
                        .map(PartLine::name)
                        .toList());
    }

    @Test
    void holdsNothingThatRunsAsAFormula() throws Exception {
        String code = walk.blankAirframe();
        walk.apply(walk.preview(code, TableWalk.rows("Part,Mass [g],Assembly", "=1+1,70,@SUM(A1)")));

        String text = out(code).getContentAsString(StandardCharsets.UTF_8);
        assertThat(text.lines().toList().get(1)).startsWith("'=1+1,").contains(",'@SUM(A1),");
        assertThat(walk.head(code).build().lines().get(0).name()).isEqualTo("=1+1");
    }

    private MockHttpServletResponse out(String code) throws Exception {
        return mvc.perform(get("/airframes/" + code + "/parts.csv").with(TestMember.mara()))
                .andReturn()
                .getResponse();
    }
}
