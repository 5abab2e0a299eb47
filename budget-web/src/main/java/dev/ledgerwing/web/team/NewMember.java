package dev.ledgerwing.web.team;

/** Somebody about to join, with the passphrase to sign in with. */
public record NewMember(String name, String passphrase) {

    public static final int NAME_AT_MOST = 60;
    public static final int PASSPHRASE_AT_LEAST = 12;
    public static final int PASSPHRASE_AT_MOST = 128;

    public NewMember {
        name = name.strip();
        if (name.isEmpty() || name.length() > NAME_AT_MOST) {
            throw new IllegalArgumentException(
                    "a member's name must have 1 to " + NAME_AT_MOST + " characters, but has " + name.length());
        }
        if (passphrase.length() < PASSPHRASE_AT_LEAST || passphrase.length() > PASSPHRASE_AT_MOST) {
            throw new IllegalArgumentException("a passphrase must have " + PASSPHRASE_AT_LEAST + " to "
                    + PASSPHRASE_AT_MOST + " characters, but has " + passphrase.length());
        }
    }

    /** Keeps the passphrase out of logs. */
    @Override
    public String toString() {
        return "NewMember[name=" + name + "]";
    }
}
