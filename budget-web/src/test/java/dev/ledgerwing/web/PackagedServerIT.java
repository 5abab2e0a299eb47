package dev.ledgerwing.web;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.deskprocess.DeskProcess;
import dev.ledgerwing.deskprocess.StoreCheck;
import dev.ledgerwing.web.support.Browser;
import dev.ledgerwing.web.support.Browser.Page;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Kills the packaged server three times while four members add parts, each time on the same data. */
class PackagedServerIT {

    private static final Pattern PORT = Pattern.compile("Tomcat started on port (\\d+)");
    private static final int KILLS = 3;
    private static final int ENOUGH = 6;

    /** What the pages acknowledged: the revision's number and the part's name. */
    private final Map<Integer, String> acknowledged = new ConcurrentHashMap<>();

    @Test
    void whatAPageSaidWasStoredIsThereAfterAKill(@TempDir Path data) throws Exception {
        for (int round = 1; round <= KILLS; round++) {
            workUntilKilled(data, round);
            try (StoreCheck check = new StoreCheck(DeskProcess.url(data))) {
                check.holdsEverything(Map.of());
                Map<Integer, String> titles = check.titles("dunlin");
                acknowledged.forEach((number, name) ->
                        assertThat(titles.get(number)).as("revision %s", number).startsWith(name));
            }
        }
        assertThat(acknowledged).hasSizeGreaterThanOrEqualTo(KILLS * ENOUGH);
    }

    private void workUntilKilled(Path data, int round) throws Exception {
        Process server = start(data);
        AtomicBoolean killed = new AtomicBoolean();
        CountDownLatch enough = new CountDownLatch(ENOUGH);
        try {
            int port = port(server).get(120, TimeUnit.SECONDS);
            List<Thread> members = IntStream.range(0, 4)
                    .mapToObj(member ->
                            new Thread(() -> addParts(port, "Rib " + round + "-" + member + "-", enough, killed)))
                    .toList();
            members.forEach(Thread::start);
            assertThat(enough.await(120, TimeUnit.SECONDS)).isTrue();
            killed.set(true);
            ProcessHandle.of(server.pid()).orElseThrow().destroyForcibly();
            for (Thread member : members) {
                member.join();
            }
        } finally {
            server.destroyForcibly().waitFor();
        }
    }

    private void addParts(int port, String prefix, CountDownLatch enough, AtomicBoolean killed) {
        try {
            Browser browser = new Browser(port);
            browser.send(
                    browser.open("/sign-in"), "/sign-in", Map.of("name", "Mara", "passphrase", "a quiet bog at dawn"));
            for (int i = 0; ; i++) {
                String name = prefix + i + " ";
                Page done = browser.send(
                        browser.open("/airframes/dunlin/parts/new"),
                        "/airframes/dunlin/parts",
                        Map.of("name", name + "plywood", "mass", "3", "category", "STRUCTURE"));
                int number = Integer.parseInt(
                        done.document().expectFirst(".impact [name=number]").val());
                acknowledged.put(number, name);
                enough.countDown();
            }
        } catch (UncheckedIOException cutOff) {
            assertThat(killed).as("the server answered until it was killed").isTrue();
        }
    }

    private static Process start(Path data) throws IOException {
        ProcessBuilder java = new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-jar",
                jar().toString(),
                "--server.port=0",
                "--ledgerwing.data=" + data);
        java.environment().put("LEDGERWING_FIRST_MEMBER", "Mara");
        java.environment().put("LEDGERWING_FIRST_PASSPHRASE", "a quiet bog at dawn");
        return java.redirectErrorStream(true).start();
    }

    private static Path jar() throws IOException {
        try (Stream<Path> built = Files.list(Path.of("target"))) {
            return built.filter(file -> file.getFileName().toString().matches("budget-web-.*\\.jar"))
                    .findFirst()
                    .orElseThrow();
        }
    }

    /** Reads on after the port is known, since a full pipe would stop the server. */
    private static CompletableFuture<Integer> port(Process server) {
        CompletableFuture<Integer> port = new CompletableFuture<>();
        new Thread(() -> {
                    try (BufferedReader lines = server.inputReader(UTF_8)) {
                        for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                            Matcher started = PORT.matcher(line);
                            if (started.find()) {
                                port.complete(Integer.valueOf(started.group(1)));
                            }
                        }
                    } catch (IOException closed) {
                        port.completeExceptionally(closed);
                    }
                })
                .start();
        return port;
    }
}
