package dev.ledgerwing.web.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import dev.ledgerwing.web.team.TestMember;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.select.Elements;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.AbstractMockHttpServletRequestBuilder;

@PageTest
@Import(SampleController.class)
class LayoutTest {

    @Autowired
    MockMvc mvc;

    @Test
    void framesAPageWithTheSignedInMember() throws Exception {
        Document page = page(get("/sample"));
        assertThat(page.title()).isEqualTo("Sample · Ledgerwing");
        assertThat(page.expectFirst("html").attr("lang")).isEqualTo("en");
        assertThat(page.expectFirst(".top-bar .person").text()).isEqualTo("Mara");
        assertThat(page.select("main")).hasSize(1);
        assertThat(page.select("form[action=/sign-out][method=post] [name=_csrf]"))
                .hasSize(1);
    }

    @Test
    void holdsNoInlineScriptOrStyle() throws Exception {
        Document page = page(get("/sample"));
        assertThat(page.select("[style], style, script:not([src])")).isEmpty();
        assertThat(page.select("[onclick], [hx-on], [href^=javascript]")).isEmpty();
    }

    @Test
    void givesScriptsTheTokenThatPostsNeed() throws Exception {
        assertThat(page(get("/sample")).expectFirst("meta[name=csrf-token]").attr("content"))
                .isNotBlank();
    }

    @Test
    void tellsVerdictsApartByWordShapeAndColour() throws Exception {
        Elements verdicts = page(get("/sample")).select(".title-block nav .verdict");
        assertThat(verdicts.eachText()).containsExactly("holds", "tight", "not known", "breaks");
        assertThat(verdicts.eachAttr("class"))
                .containsExactly("verdict holds", "verdict tight", "verdict unknown", "verdict breaks");
        assertThat(verdicts.select("svg"))
                .extracting(Element::html)
                .doesNotContain("")
                .doesNotHaveDuplicates();
    }

    @Test
    void tiesAFieldToItsHint() throws Exception {
        Document page = page(get("/sample"));
        Element name = page.expectFirst("#name");
        assertThat(page.expectFirst("label[for=name]").text()).isEqualTo("Name");
        assertThat(name.hasAttr("aria-invalid")).isFalse();
        assertThat(page.expectFirst("#" + name.attr("aria-describedby")).text())
                .isEqualTo("As it is written on the part.");
        assertThat(page.expectFirst("#mass").hasAttr("aria-describedby")).isFalse();
        assertThat(page.expectFirst("#mass").attr("inputmode")).isEqualTo("decimal");
    }

    @Test
    void saysWhatIsWrongWithAFieldAndKeepsWhatWasTyped() throws Exception {
        Document page = page(post("/sample")
                .param("name", "a name <b>beyond</b> twenty characters")
                .param("mass", "feather")
                .param("basis", "WEIGHED")
                .param("note", "two\nlines")
                .with(csrf()));
        Element name = page.expectFirst("#name");
        assertThat(name.val()).isEqualTo("a name <b>beyond</b> twenty characters");
        assertThat(name.attr("aria-invalid")).isEqualTo("true");
        assertThat(name.attr("aria-describedby")).isEqualTo("name-hint name-error");
        assertThat(page.expectFirst("#name-error").text()).isEqualTo("At most 20 characters.");
        assertThat(page.expectFirst(".notice[role=alert] p").text()).isEqualTo("A feather is no mass.");
        assertThat(page.expectFirst("#mass").val()).isEqualTo("feather");
        assertThat(page.select("#basis option[selected]").eachAttr("value")).containsExactly("WEIGHED");
        assertThat(page.expectFirst("#note").wholeText()).isEqualTo("two\nlines");
    }

    @ParameterizedTest
    @ValueSource(strings = {"a\u0000b", "a\nb", "a\u202eb", "\u00a0\u00a0"})
    void refusesNamesThatCannotBeSeenAsTheyAre(String name) throws Exception {
        Document page = page(post("/sample").param("name", name).with(csrf()));
        assertThat(page.expectFirst("#name-error").text())
                .isEqualTo("Please leave out line breaks and invisible characters.");
    }

    private Document page(AbstractMockHttpServletRequestBuilder<?> request) throws Exception {
        return Jsoup.parse(mvc.perform(request.with(TestMember.mara()))
                .andReturn()
                .getResponse()
                .getContentAsString());
    }
}
