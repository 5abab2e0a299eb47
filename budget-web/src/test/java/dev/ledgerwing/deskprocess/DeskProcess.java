package dev.ledgerwing.deskprocess;

import dev.ledgerwing.core.build.Airframe;
import dev.ledgerwing.core.build.Assembly;
import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.LineMass;
import dev.ledgerwing.core.build.MassBudget;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Stage;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.web.desk.Deed;
import dev.ledgerwing.web.desk.Desk;
import dev.ledgerwing.web.desk.Outcome;
import dev.ledgerwing.web.desk.Readings;
import dev.ledgerwing.web.desk.Seen;
import dev.ledgerwing.web.desk.Signature;
import dev.ledgerwing.web.desk.Snapshot;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.springframework.boot.WebApplicationType;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;

/** Four writers that change two airframes as fast as they can and print every acknowledged revision, until killed. */
public final class DeskProcess {

    private static final List<String> AIRFRAMES = List.of("curlew", "godwit");
    private static final int WRITERS = 4;

    private final Desk desk;
    private final Readings readings;

    private DeskProcess(Desk desk, Readings readings) {
        this.desk = desk;
        this.readings = readings;
    }

    /** The address of the database under a folder, as the server has it. */
    public static String url(Path folder) {
        return "jdbc:h2:file:" + folder.toAbsolutePath().resolve("ledgerwing")
                + ";WRITE_DELAY=0;DB_CLOSE_ON_EXIT=FALSE";
    }

    /** Runs until killed.
     *
     * @param arguments the folder of the database */
    public static void main(String[] arguments) {
        ConfigurableApplicationContext context = new SpringApplicationBuilder(DeskApplication.class)
                .web(WebApplicationType.NONE)
                .run(
                        "--spring.datasource.url=" + url(Path.of(arguments[0])),
                        "--spring.datasource.username=sa",
                        "--spring.jpa.open-in-view=false",
                        "--spring.jpa.hibernate.ddl-auto=validate",
                        "--logging.level.root=warn",
                        "--spring.main.banner-mode=off");
        DeskProcess process = new DeskProcess(context.getBean(Desk.class), context.getBean(Readings.class));
        process.openAirframes();
        say("READY");
        for (int writer = 0; writer < WRITERS; writer++) {
            int number = writer;
            new Thread(() -> process.write(number)).start();
        }
    }

    private void openAirframes() {
        List<String> there =
                readings.fleet().stream().map(headline -> headline.code()).toList();
        for (String code : AIRFRAMES) {
            if (!there.contains(code)) {
                Airframe airframe = new Airframe(code, code, null, Stage.DESIGN, "nose tip");
                Build build = Build.blank(airframe, new MassBudget(Mass.ofGrams(5000), null, null, null))
                        .withAssemblies(List.of(new Assembly("wing", "Wing", Assembly.MovesWith.WING)));
                acknowledge(code, desk.open(build, new Signature("Mara", "")));
            }
        }
    }

    private void write(int writer) {
        Random random = new Random(writer);
        for (int turn = 0; ; turn++) {
            String code = AIRFRAMES.get((writer + turn) % AIRFRAMES.size());
            int seen = readings.head(code).revision().number();
            String id = "W" + writer + "-" + random.nextInt(40);
            Mass mass = new Mass(1 + random.nextInt(90_000));
            Outcome outcome = desk.change(
                    new Seen(code, seen),
                    Deed.fitting("part " + id, build -> with(build, id, mass)),
                    new Signature("Mara", ""));
            if (outcome instanceof Outcome.Landed landed) {
                acknowledge(code, landed.head());
            } else if (!(outcome instanceof Outcome.NothingChanged)) {
                say("UNEXPECTED " + outcome);
            }
        }
    }

    private static Build with(Build build, String id, Mass mass) {
        List<PartLine> lines = new ArrayList<>(build.lines());
        boolean removed = lines.removeIf(line -> line.id().equals(id));
        if (!removed || mass.mg() % 3 != 0) {
            lines.add(PartLine.named(
                    id, "wing", "Part " + id, Category.STRUCTURE, 1, LineMass.of(mass, Basis.CALCULATED)));
        }
        return build.withLines(lines);
    }

    private static void acknowledge(String code, Snapshot landed) {
        say("ACK " + code + " " + landed.revision().number() + " " + landed.fingerprint());
    }

    private static void say(String line) {
        synchronized (System.out) {
            System.out.println(line);
            System.out.flush();
        }
    }
}
