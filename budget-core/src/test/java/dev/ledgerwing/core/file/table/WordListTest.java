package dev.ledgerwing.core.file.table;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.FitState;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class WordListTest {

    @ParameterizedTest
    @EnumSource(Category.class)
    void everyCategoryIsKnownByItsOwnWordAndTitle(Category category) {
        assertThat(CategoryWords.given(category.title())).contains(category);
        assertThat(CategoryWords.given(category.name())).contains(category);
    }

    @Test
    void everyBasisAndStateIsKnownByItsOwnWord() {
        WordList<Basis> bases = WordList.load("basis-words.txt", Basis.class);
        WordList<FitState> states = WordList.load("state-words.txt", FitState.class);

        assertThat(Basis.values())
                .allSatisfy(basis -> assertThat(bases.meaning(basis.word())).contains(basis));
        assertThat(FitState.values())
                .allSatisfy(state -> assertThat(states.meaning(state.word())).contains(state));
    }

    @ParameterizedTest
    @EnumSource(Meaning.class)
    void everyMeaningHasHeadingsThatLeadToIt(Meaning meaning) {
        WordList<Meaning> words = WordList.load("header-words.txt", Meaning.class);

        assertThat(words.entries().values()).extracting(WordList.Entry::means).contains(meaning);
    }

    @ParameterizedTest
    @CsvSource({
        "Aileron servo, SERVO",
        "Servo lead 600, WIRING",
        "Battery tray, STRUCTURE",
        "Tray for the battery, STRUCTURE",
        "Nose lead, BALLAST",
        "'Servo, water rudder', SERVO",
        "'Covering film, fin', FASTENING",
        "'Strut, spring wire 2,5 mm', STRUCTURE",
        "Servos, SERVO",
        "Servokabel, WIRING",
        "Bügelfolie 25 µm, FASTENING",
        "Motorträger, STRUCTURE",
        "'Wire, red, 0.5', WIRING",
        "Sundries, ",
        "..., "
    })
    void aNameProposesACategoryByItsLastTellingWord(String name, @Nullable Category category) {
        assertThat(CategoryWords.proposedBy(name).orElse(null)).isEqualTo(category);
    }
}
