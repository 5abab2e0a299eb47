package dev.ledgerwing.web.team;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dev.ledgerwing.web.support.PageTest;
import dev.ledgerwing.web.support.SampleController;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;

@PageTest
@Import(SampleController.class)
class UnitsTest {

    @Autowired
    MockMvc mvc;

    @Test
    void changeTheFiguresOfEveryPageForThisMember() throws Exception {
        choose("OUNCE_INCH", "/sample/mass").andExpect(redirectedUrl("/sample/mass"));
        assertThat(read("/sample/mass")).isEqualTo("Mara reads 35.27\u2009oz");
        choose("GRAM_MILLIMETRE", "/sample/mass");
        assertThat(read("/sample/mass")).isEqualTo("Mara reads 1000\u2009g");
    }

    @ParameterizedTest
    @CsvSource({
        "/sample?a=1&b=x%20y, /sample?a=1&b=x%20y",
        "https://evil.example/, /",
        "//evil.example, /",
        "///evil.example, /",
        "/\\evil.example, /",
        "sample, /",
        "/a{b}, /",
        "'', /"
    })
    void leadBackToAPageOfThisServerOnly(String back, String target) throws Exception {
        choose("GRAM_MILLIMETRE", back).andExpect(status().isSeeOther()).andExpect(redirectedUrl(target));
    }

    @Test
    void refuseAUnitThatDoesNotExist() throws Exception {
        choose("STONE", "/sample").andExpect(status().isBadRequest());
    }

    private ResultActions choose(String units, String back) throws Exception {
        return mvc.perform(post("/units")
                .param("units", units)
                .param("back", back)
                .with(TestMember.mara())
                .with(csrf()));
    }

    private String read(String path) throws Exception {
        return mvc.perform(get(path).with(TestMember.mara()))
                .andReturn()
                .getResponse()
                .getContentAsString();
    }
}
