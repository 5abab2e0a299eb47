package dev.ledgerwing.web.tables;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.web.support.Browser;
import dev.ledgerwing.web.support.Browser.Page;
import dev.ledgerwing.web.team.Members;
import dev.ledgerwing.web.team.TestMember;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** Over HTTP, sent as a browser without script does: only a real server reads a body that large. */
@ImportPageTest
class LargeUploadTest {

    private static final int MEGABYTE = 1 << 20;

    @Autowired
    Members members;

    @LocalServerPort
    int port;

    private Browser browser;
    private Page page;

    @BeforeEach
    void signIn() {
        TestMember.exist(members);
        browser = new Browser(port);
        browser.send(
                browser.open("/sign-in"),
                "/sign-in",
                Map.of("name", TestMember.NAME, "passphrase", TestMember.PASSPHRASE));
        page = browser.open("/airframes/curlew/import");
        assertThat(page.status()).isEqualTo(200);
    }

    @Test
    void aFileOfFiftyMegabytesIsRefusedWithAPage() throws Exception {
        HttpResponse<String> answer = upload(50);

        assertThat(answer.statusCode()).isEqualTo(413);
        Document refusal = Jsoup.parse(answer.body());
        assertThat(refusal.expectFirst("h1").text()).isEqualTo("Too large");
        assertThat(refusal.select("header.top-bar")).hasSize(1);
    }

    @Test
    void aFileOfSevenMegabytesIsTaken() throws Exception {
        HttpResponse<String> answer = upload(7);

        assertThat(answer.statusCode()).isEqualTo(302);
        Page preview = browser.open(answer.headers().firstValue("Location").orElseThrow());
        assertThat(preview.text()).contains("7 parts can be imported").doesNotContain("New assemblies");
    }

    /** One part a megabyte, the rest is a column that is not read. */
    private HttpResponse<String> upload(int megabytes) throws Exception {
        String token = page.document().expectFirst("form[enctype] [name=_csrf]").val();
        String open = "--edge\r\nContent-Disposition: form-data; name=\"_csrf\"\r\n\r\n" + token
                + "\r\n--edge\r\nContent-Disposition: form-data; name=\"file\"; filename=\"large.csv\"\r\n\r\n"
                + "Part,Assembly,Padding\n";
        String row = "Spar,Wing," + "x".repeat(MEGABYTE - 20) + "\n";
        List<byte[]> body = new ArrayList<>();
        body.add(bytes(open));
        body.addAll(Collections.nCopies(megabytes, bytes(row)));
        body.add(bytes("\r\n--edge--\r\n"));
        HttpRequest request = HttpRequest.newBuilder(URI.create("http://localhost:" + port + page.path()))
                .header("Cookie", "JSESSIONID=" + browser.sessionCookie())
                .header("Content-Type", "multipart/form-data; boundary=edge")
                .POST(BodyPublishers.ofByteArrays(body))
                .build();
        return HttpClient.newHttpClient().send(request, BodyHandlers.ofString());
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
