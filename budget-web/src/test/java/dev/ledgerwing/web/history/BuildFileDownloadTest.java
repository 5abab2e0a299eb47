package dev.ledgerwing.web.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import dev.ledgerwing.core.file.BuildFile;
import dev.ledgerwing.web.desk.Readings;
import dev.ledgerwing.web.desk.Seen;
import dev.ledgerwing.web.desk.Snapshot;
import dev.ledgerwing.web.support.PageTest;
import dev.ledgerwing.web.team.Members;
import dev.ledgerwing.web.team.TestMember;
import java.security.MessageDigest;
import java.util.HexFormat;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.context.TestPropertySource;
import org.springframework.test.web.servlet.MockMvc;

@PageTest
@TestPropertySource(properties = "ledgerwing.demo=true")
class BuildFileDownloadTest {

    @Autowired
    MockMvc mvc;

    @Autowired
    Readings readings;

    @Autowired
    Members members;

    private MockHttpServletResponse download(int number) throws Exception {
        return mvc.perform(get("/airframes/curlew/history/" + number + "/build.json")
                        .with(TestMember.mara()))
                .andReturn()
                .getResponse();
    }

    @Test
    void theBytesAreThoseTheFingerprintWasTakenOf() throws Exception {
        Snapshot snapshot = readings.at(new Seen("curlew", 7));
        byte[] bytes = download(7).getContentAsByteArray();

        assertThat(HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes)))
                .isEqualTo(snapshot.fingerprint());
        assertThat(bytes).isEqualTo(readings.document(new Seen("curlew", 7)));
        assertThat(BuildFile.readOwn(bytes)).isEqualTo(snapshot.build());
    }

    @Test
    void itIsKeptAsAFileNotShownAsAPage() throws Exception {
        MockHttpServletResponse answer = download(7);
        assertThat(answer.getContentType()).isEqualTo("application/json");
        assertThat(answer.getHeader("Content-Disposition")).isEqualTo("attachment; filename=\"curlew-r7.json\"");
        assertThat(answer.getHeader("X-Content-Type-Options")).isEqualTo("nosniff");
    }

    @Test
    void nobodyGetsItWithoutSigningIn() throws Exception {
        TestMember.exist(members);
        MockHttpServletResponse answer = mvc.perform(get("/airframes/curlew/history/7/build.json"))
                .andReturn()
                .getResponse();
        assertThat(answer.getStatus()).isEqualTo(302);
        assertThat(answer.getContentAsByteArray()).isEmpty();
    }
}
