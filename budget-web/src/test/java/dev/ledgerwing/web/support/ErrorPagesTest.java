package dev.ledgerwing.web.support;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.web.support.Browser.Page;
import dev.ledgerwing.web.team.Members;
import dev.ledgerwing.web.team.TestMember;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.Map;
import org.jsoup.Jsoup;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.annotation.Import;

/** Over HTTP, because only a real server leads a failure to the error page. */
@PageTest
@Import(SampleController.class)
class ErrorPagesTest {

    private static final String FORM = "application/x-www-form-urlencoded";
    private static final String UPLOAD = "multipart/form-data; boundary=edge";

    @Autowired
    Members members;

    @LocalServerPort
    int port;

    private Browser browser;
    private Page signedIn;

    @BeforeEach
    void signIn() {
        TestMember.exist(members);
        browser = new Browser(port);
        browser.send(
                browser.open("/sign-in"),
                "/sign-in",
                Map.of("name", TestMember.NAME, "passphrase", TestMember.PASSPHRASE));
        signedIn = browser.open("/sample");
        assertThat(signedIn.status()).isEqualTo(200);
    }

    @ParameterizedTest
    @CsvSource({
        "/sample/missing, 404, Not found, There is no airframe “heron”.",
        "/nowhere,        404, Not found, There is nothing at this address.",
        "/error,          404, Not found, There is nothing at this address.",
        "/sample/clash,   409, Somebody was faster, nothing of yours was stored.",
        "/sample/file,    405, Not understood, could not make sense",
        "/sample;x,       400, Not understood, could not make sense",
        "/sample/fault,   500, This went wrong, The server failed at this."
    })
    void showPlainWordsInTheLayout(String path, int status, String heading, String sentence) {
        Page page = browser.open(path);
        assertThat(page.status()).isEqualTo(status);
        assertThat(page.heading()).isEqualTo(heading);
        assertThat(page.text()).contains("Ledgerwing").contains(sentence).doesNotContain("secret detail", "Exception");
    }

    @Test
    void sayThatARefusedPostChangedNothing() throws Exception {
        HttpResponse<String> answer = post("/sample", FORM, "name=Spar", "forged");
        assertThat(answer.statusCode()).isEqualTo(403);
        assertThat(Jsoup.parse(answer.body()).expectFirst("h1").text()).isEqualTo("Not allowed");
    }

    @Test
    void sayHowMuchAFormMayHold() throws Exception {
        String form = "note=" + "x".repeat(8_500_000);
        assertTooLarge(post("/sample", FORM, form, token()));
    }

    @Test
    void sayThatAFormOfTooManyFieldsIsNotUnderstood() throws Exception {
        HttpResponse<String> answer = post("/sample", FORM, "name=Spar&".repeat(10_001), token());
        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(Jsoup.parse(answer.body()).expectFirst("h1").text()).isEqualTo("Not understood");
    }

    @Test
    void sayHowMuchAFileMayHoldWhereverTheTokenIs() throws Exception {
        String file = part("name=\"file\"; filename=\"table.csv\"", "x".repeat(9_000_000)) + "--edge--\r\n";
        assertTooLarge(post("/sample/file", UPLOAD, file, token()));
        assertTooLarge(post("/sample/file", UPLOAD, part("name=\"_csrf\"", token()) + file, null));
    }

    @Test
    void sayFirstThatAForgedUploadIsNotAllowed() throws Exception {
        String file = part("name=\"file\"; filename=\"table.csv\"", "x".repeat(9_000_000)) + "--edge--\r\n";
        HttpResponse<String> answer = post("/sample/file", UPLOAD, file, "forged");
        assertThat(answer.statusCode()).isEqualTo(403);
        assertThat(Jsoup.parse(answer.body()).expectFirst("h1").text()).isEqualTo("Not allowed");
    }

    @Test
    void answerHtmxWithASentenceForThePagesNotice() throws Exception {
        HttpResponse<String> answer = send(request("/sample/missing").header("HX-Request", "true"));
        assertThat(answer.statusCode()).isEqualTo(404);
        assertThat(answer.headers().firstValue("HX-Retarget")).hasValue("#notice");
        assertThat(answer.body()).startsWith("<p class=\"notice problem\"").contains("There is no airframe “heron”.");
    }

    private static void assertTooLarge(HttpResponse<String> answer) {
        assertThat(answer.statusCode()).isEqualTo(413);
        assertThat(Jsoup.parse(answer.body()).expectFirst("h1").text()).isEqualTo("Too large");
        assertThat(answer.headers().firstValue("Content-Security-Policy"))
                .hasValue(SecurityConfiguration.CONTENT_SECURITY_POLICY);
    }

    private static String part(String disposition, String content) {
        return "--edge\r\nContent-Disposition: form-data; " + disposition + "\r\n\r\n" + content + "\r\n";
    }

    private String token() {
        return signedIn.document().expectFirst("meta[name=csrf-token]").attr("content");
    }

    private HttpResponse<String> post(String path, String type, String body, @Nullable String token) throws Exception {
        HttpRequest.Builder request = request(path).header("Content-Type", type).POST(BodyPublishers.ofString(body));
        return send(token == null ? request : request.header("X-CSRF-TOKEN", token));
    }

    private HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create("http://localhost:" + port + path))
                .header("Cookie", "JSESSIONID=" + browser.sessionCookie());
    }

    private static HttpResponse<String> send(HttpRequest.Builder request) throws Exception {
        return HttpClient.newHttpClient().send(request.build(), BodyHandlers.ofString());
    }
}
