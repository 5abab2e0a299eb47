package dev.ledgerwing.deskprocess;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Kills the desk in the middle of its work, again and again on the same database. 20 times, or as often as
 * {@code -Dkill.rounds} says.
 */
class KillIT {

    private static final int ROUNDS = Integer.getInteger("kill.rounds", 20);

    private final Map<String, Map<Integer, String>> acknowledged = new HashMap<>();
    private final List<String> unexpected = new ArrayList<>();

    @Test
    void everyAcknowledgedRevisionSurvivesEveryKill(@TempDir Path folder) throws Exception {
        Random random = new Random(20);
        int revisions = 0;
        for (int round = 1; round <= ROUNDS; round++) {
            runAndKill(folder, 300 + random.nextInt(1500));
            try (StoreCheck check = new StoreCheck(DeskProcess.url(folder))) {
                revisions = check.holdsEverything(acknowledged);
            }
        }
        int said = acknowledged.values().stream().mapToInt(Map::size).sum();
        System.out.println(ROUNDS + " kills, " + said + " acknowledged, " + revisions + " revisions stored");
        assertThat(said).isGreaterThan(ROUNDS);
        assertThat(revisions).isGreaterThanOrEqualTo(said);
    }

    private void runAndKill(Path folder, int workMs) throws Exception {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-Xshare:auto",
                        "-cp",
                        System.getProperty("java.class.path"),
                        DeskProcess.class.getName(),
                        folder.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        CountDownLatch ready = new CountDownLatch(1);
        Thread listener = new Thread(() -> listen(process, ready));
        listener.start();
        assertThat(ready.await(120, TimeUnit.SECONDS)).as("the process came up").isTrue();
        Thread.sleep(workMs);
        // through the handle: killing through the process object would drop acknowledgements still in the pipe
        assertThat(ProcessHandle.of(process.pid()).orElseThrow().destroyForcibly())
                .isTrue();
        process.waitFor();
        listener.join();
    }

    private void listen(Process process, CountDownLatch ready) {
        try (BufferedReader lines = process.inputReader(UTF_8)) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                if (line.equals("READY")) {
                    ready.countDown();
                } else {
                    hear(line);
                }
            }
        } catch (IOException closed) {
            throw new UncheckedIOException(closed);
        }
    }

    /** A line cut off by the kill acknowledges nothing. */
    private void hear(String line) {
        String[] words = line.split(" ", -1);
        if (words[0].equals("UNEXPECTED")) {
            unexpected.add(line);
        } else if (words[0].equals("ACK") && words.length == 4 && words[3].length() == 64) {
            acknowledged.computeIfAbsent(words[1], code -> new TreeMap<>()).put(Integer.valueOf(words[2]), words[3]);
        }
    }
}
