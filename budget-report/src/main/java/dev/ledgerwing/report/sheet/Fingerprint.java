package dev.ledgerwing.report.sheet;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 of a record's bytes: two sheets with the same fingerprint were printed from the same record. */
public final class Fingerprint {

    private static final int SHOWN = 12;
    private static final int GROUP = 4;

    private Fingerprint() {}

    /** 64 lower-case hexadecimal digits. */
    public static String of(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        }
    }

    /** Its first twelve digits, in groups that are easy to compare by eye: {@code 8f3a 2c10 77be}. */
    public static String shown(String fingerprint) {
        StringBuilder shown = new StringBuilder();
        for (int from = 0; from < Math.min(SHOWN, fingerprint.length()); from += GROUP) {
            shown.append(shown.isEmpty() ? "" : " ")
                    .append(fingerprint, from, Math.min(from + GROUP, fingerprint.length()));
        }
        return shown.toString();
    }
}
