package dev.ledgerwing.web.team;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

class NewMemberTest {

    @Test
    void keepsToTheLengthsOfNameAndPassphrase() {
        assertThat(new NewMember(" M ", "x".repeat(12)).name()).isEqualTo("M");
        assertThat(new NewMember("n".repeat(60), "x".repeat(128)).name()).hasSize(60);
        assertThatIllegalArgumentException().isThrownBy(() -> new NewMember(" ", "x".repeat(12)));
        assertThatIllegalArgumentException().isThrownBy(() -> new NewMember("n".repeat(61), "x".repeat(12)));
        assertThatIllegalArgumentException().isThrownBy(() -> new NewMember("n", "x".repeat(11)));
        assertThatIllegalArgumentException().isThrownBy(() -> new NewMember("n", "x".repeat(129)));
    }

    @Test
    void neverPrintsThePassphrase() {
        assertThat(new NewMember("Mara", "peat bog at dawn").toString()).isEqualTo("NewMember[name=Mara]");
    }
}
