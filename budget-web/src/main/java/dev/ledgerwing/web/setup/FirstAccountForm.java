package dev.ledgerwing.web.setup;

import dev.ledgerwing.web.support.PlainText;
import dev.ledgerwing.web.team.NewMember;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import org.jspecify.annotations.Nullable;

/**
 * What was typed on the first visit.
 *
 * @param again the passphrase once more: a slip in the only account would lock everybody out
 * @param key the one-time key, where the server asks for it
 */
record FirstAccountForm(
        @NotBlank(message = "Please give your name.")
        @Size(max = NewMember.NAME_AT_MOST, message = "A name has at most {max} characters.")
        @PlainText
        @Nullable
        String name,

        @NotBlank(message = "Please choose a passphrase.")
        @Size(
                min = NewMember.PASSPHRASE_AT_LEAST,
                max = NewMember.PASSPHRASE_AT_MOST,
                message = "A passphrase has {min} to {max} characters.")
        @Nullable
        String passphrase,

        @Nullable String again,

        @Nullable String key) {

    FirstAccountForm {
        name = name == null ? null : name.strip();
    }

    /** Whether the passphrase was typed the same twice. */
    boolean typedTwice() {
        return passphrase != null && passphrase.equals(again);
    }

    NewMember newMember() {
        if (name == null || passphrase == null) {
            throw new IllegalStateException("only a form without problems makes a member");
        }
        return new NewMember(name, passphrase);
    }

    /** Keeps passphrase and key out of logs. */
    @Override
    public String toString() {
        return "FirstAccountForm[name=" + name + "]";
    }
}
