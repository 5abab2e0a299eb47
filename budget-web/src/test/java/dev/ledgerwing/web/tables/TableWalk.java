package dev.ledgerwing.web.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import dev.ledgerwing.core.build.Airframe;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.MassBudget;
import dev.ledgerwing.core.build.Stage;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.web.desk.Desk;
import dev.ledgerwing.web.desk.Readings;
import dev.ledgerwing.web.desk.Signature;
import dev.ledgerwing.web.desk.Snapshot;
import dev.ledgerwing.web.team.TestMember;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.MvcResult;
import org.springframework.test.web.servlet.RequestBuilder;
import org.springframework.test.web.servlet.request.AbstractMockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

/** Walks a table through the pages of the import, as Mara, filling in each form as it was shown. */
class TableWalk {

    private final MockMvc mvc;
    private final Desk desk;
    private final Readings readings;

    TableWalk(MockMvc mvc, Desk desk, Readings readings) {
        this.mvc = mvc;
        this.desk = desk;
        this.readings = readings;
    }

    /** An answer with what was passed on to the page it leads to. */
    record Answer(int status, String leadsTo, Map<String, Object> passedOn, Document page) {

        String text() {
            return page.body().text();
        }

        /** The text of a part of the page; empty where it has none. */
        String text(String selector) {
            return page.select(selector).text();
        }
    }

    static byte[] rows(String... rows) {
        return (String.join("\n", rows) + "\n").getBytes(StandardCharsets.UTF_8);
    }

    /** Opens a blank airframe with a target of 1 kg; gives its code. */
    String blankAirframe() {
        String code = "t" + UUID.randomUUID().toString().substring(0, 18);
        desk.open(
                Build.blank(
                        new Airframe(code, "Trial", null, Stage.BUILD, "nose tip"),
                        new MassBudget(Mass.ofGrams(1000), null, null, null)),
                new Signature("Ines", ""));
        return code;
    }

    Snapshot head(String code) {
        return readings.head(code);
    }

    Answer give(String code, byte[] table) throws Exception {
        return answer(
                signed(multipart(page(code)).file(new MockMultipartFile("file", "parts.csv", "text/csv", table))));
    }

    Answer paste(String code, String rows) throws Exception {
        return answer(signed(post(page(code)).param("rows", rows)));
    }

    /** Gives a table that can be read and opens its preview. */
    Answer preview(String code, byte[] table) throws Exception {
        Answer given = give(code, table);
        assertThat(given.status()).as(given.text()).isEqualTo(302);
        return open(given.leadsTo());
    }

    Answer open(String path) throws Exception {
        return answer(get(path).with(TestMember.mara()));
    }

    Answer openAsJonas(String path) throws Exception {
        return answer(get(path).with(TestMember.jonas()));
    }

    /** Presses the button that reads again, and follows to where it leads. */
    Answer readAgain(Answer preview, Map<String, String> chosen) throws Exception {
        Answer again = answer(filled(preview, chosen, "/columns"));
        assertThat(again.status()).isEqualTo(302);
        return answer(get(again.leadsTo()).flashAttrs(again.passedOn()).with(TestMember.mara()));
    }

    Answer apply(Answer preview, Map<String, String> chosen) throws Exception {
        return answer(filled(preview, chosen, ""));
    }

    Answer apply(Answer preview) throws Exception {
        return apply(preview, Map.of());
    }

    private static String page(String code) {
        return "/airframes/" + code + "/import";
    }

    /** @param chosen by name; the lists of columns by {@code meaning 3} and {@code unit 3} */
    private MockHttpServletRequestBuilder filled(Answer preview, Map<String, String> chosen, String button) {
        Element form = preview.page().expectFirst("#import-form");
        MockHttpServletRequestBuilder request = post(form.attr("action") + button);
        Map<String, String> typed = new LinkedHashMap<>();
        form.select("input[type=hidden], input[type=text]")
                .forEach(field -> typed.put(field.attr("name"), field.val()));
        form.select("input[type=radio][checked]").forEach(field -> typed.put(field.attr("name"), field.val()));
        chosen.forEach((name, value) -> typed.compute(name, (same, shown) -> value));
        typed.forEach((name, value) -> request.param(name, value));
        request.param("meanings", lists(form, "meanings", "meaning ", chosen));
        request.param("units", lists(form, "units", "unit ", chosen));
        return signed(request);
    }

    private static String[] lists(Element form, String name, String key, Map<String, String> chosen) {
        List<Element> lists = form.select("select[name=" + name + "]");
        String[] values = new String[lists.size()];
        for (int i = 0; i < values.length; i++) {
            Element marked = lists.get(i).selectFirst("option[selected]");
            String shown = marked == null ? "" : marked.val();
            values[i] = Objects.requireNonNullElse(chosen.get(key + (i + 1)), shown);
        }
        return values;
    }

    private static <B extends AbstractMockHttpServletRequestBuilder<B>> B signed(B request) {
        return request.with(TestMember.mara()).with(csrf());
    }

    private Answer answer(RequestBuilder request) throws Exception {
        MvcResult result = mvc.perform(request).andReturn();
        MockHttpServletResponse response = result.getResponse();
        return new Answer(
                response.getStatus(),
                Objects.requireNonNullElse(response.getRedirectedUrl(), ""),
                Map.copyOf(result.getFlashMap()),
                Jsoup.parse(response.getContentAsString(StandardCharsets.UTF_8)));
    }
}
