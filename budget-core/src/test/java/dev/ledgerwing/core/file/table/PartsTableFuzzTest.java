package dev.ledgerwing.core.file.table;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Builds;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Objects;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever bytes come in: never an exception, and what is called usable can be imported and written. */
class PartsTableFuzzTest {

    private static final String[] TOKENS = {
        ",",
        ";",
        "\t",
        "\"",
        "\n",
        "\r",
        "'",
        "=",
        "1e400",
        "NaN",
        "-",
        "−5",
        "1,234",
        "1.234,5",
        "12 kg",
        "Total",
        "Sum",
        "Part",
        "Mass [g]",
        "Mass [stone]",
        "Qty",
        "Wing",
        "\u0007",
        "\u00a0",
        "99999999999",
        "0",
        "Ω",
        "𝒳",
        "[",
        "(",
        "/"
    };

    static Stream<Path> tables() throws IOException, URISyntaxException {
        Path folder = Path.of(Objects.requireNonNull(PartsTableFuzzTest.class.getResource("/tables"))
                .toURI());
        try (Stream<Path> folders = Files.list(folder)) {
            return folders.sorted().map(path -> path.resolve("table.csv")).toList().stream();
        }
    }

    @Test
    void randomBytesNeverThrow() {
        for (long seed = 1; seed <= 3000; seed++) {
            Random random = new Random(seed);
            byte[] bytes = new byte[random.nextInt(400)];
            random.nextBytes(bytes);

            holdsTogether(bytes, seed);
        }
    }

    @Test
    void randomTokensNeverThrow() {
        int usable = 0;
        for (long seed = 1; seed <= 3000; seed++) {
            Random random = new Random(seed);
            StringBuilder text =
                    new StringBuilder(random.nextBoolean() ? "Part,Qty,Mass [g],Assembly,Station x\n" : "");
            for (int i = 0; i < random.nextInt(120); i++) {
                text.append(Builds.pick(random, TOKENS));
            }

            usable += holdsTogether(text.toString().getBytes(StandardCharsets.UTF_8), seed) ? 1 : 0;
        }
        assertThat(usable).as("tables that could be imported").isPositive();
    }

    @ParameterizedTest
    @MethodSource("tables")
    void damagedTablesNeverThrow(Path table) throws IOException {
        byte[] whole = Files.readAllBytes(table);
        for (long seed = 1; seed <= 100 && whole.length > 0; seed++) {
            Random random = new Random(seed);
            byte[] damaged = whole.clone();
            for (int i = 0; i < 1 + random.nextInt(8); i++) {
                byte[] token = Builds.pick(random, TOKENS).getBytes(StandardCharsets.UTF_8);
                int at = random.nextInt(damaged.length);
                System.arraycopy(token, 0, damaged, at, Math.min(token.length, damaged.length - at));
            }

            holdsTogether(damaged, seed);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "de", "tr", "ar"})
    void theLanguageOfTheMachineChangesNothing(String language) throws IOException, URISyntaxException {
        Locale before = Locale.getDefault();
        for (Path table : tables().toList()) {
            TableReading reading = PartsTable.read(Files.readAllBytes(table));
            Locale.setDefault(Locale.forLanguageTag(language));
            try {
                assertThat(PartsTable.read(Files.readAllBytes(table))).isEqualTo(reading);
            } finally {
                Locale.setDefault(before);
            }
        }
    }

    private static boolean holdsTogether(byte[] bytes, long seed) {
        TableReading reading = PartsTable.read(bytes);
        AtomicInteger ids = new AtomicInteger();
        if (reading.isUsable()) {
            Build build = TableImport.APPEND.into(Builds.small(), reading, () -> "N" + ids.incrementAndGet());

            assertThat(build.lines())
                    .as("seed %s", seed)
                    .hasSize(3 + reading.parts().size());
            assertThat(PartsTable.write(build)).isNotEmpty();
        }
        assertThat(reading.refusal().isPresent() && !reading.parts().isEmpty())
                .as("seed %s", seed)
                .isFalse();
        return reading.isUsable();
    }
}
