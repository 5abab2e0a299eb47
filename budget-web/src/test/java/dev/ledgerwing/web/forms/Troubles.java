package dev.ledgerwing.web.forms;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.quantity.Figures;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What a form says of what was typed, asked without a server. */
public record Troubles(RecordForm form, Build build, Map<String, String> good) {

    /** Spoils one field of what is good, and checks that the sentence stands there and nothing is to be done. */
    public void say(String field, String typed, String sentence) {
        Map<String, String> wrong = new HashMap<>(good);
        wrong.put(field, typed == null ? "" : typed);
        Entries entries = entries(wrong);
        assertThat(form.deed(entries, build)).isEmpty();
        assertThat(entries.troubles()).containsOnlyKeys(field);
        assertThat(entries.troubles().get(field)).singleElement().asString().contains(sentence);
    }

    /** Checks that the same texts are taken as they stand, so that what is said is said of the spoilt field. */
    public void sayNothingOfWhatIsGood() {
        Entries entries = entries(good);
        assertThat(form.deed(entries, build)).isPresent();
        assertThat(entries.areFine()).isTrue();
    }

    private static Entries entries(Map<String, String> texts) {
        Map<String, List<String>> typed = new HashMap<>();
        texts.forEach((field, text) -> typed.put(field, List.of(text)));
        return new Entries(new Typed(typed), new Shown(Figures.METRIC));
    }
}
