package dev.ledgerwing.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class FingerprintTest {

    /** FIPS 180-4 example: SHA-256 of "abc" (NIST, Examples with Intermediate Values). */
    @Test
    void isTheSha256OfTheBytes() {
        assertThat(Fingerprint.of("abc".getBytes(StandardCharsets.US_ASCII)))
                .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }

    @Test
    void isShownShortInGroups() {
        assertThat(Fingerprint.shown("ba7816bf8f01cfea")).isEqualTo("ba78 16bf 8f01");
        assertThat(Fingerprint.shown("ba7816")).isEqualTo("ba78 16");
        assertThat(Fingerprint.shown("")).isEmpty();
    }
}
