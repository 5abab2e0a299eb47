package dev.ledgerwing.core.file.table;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Assembly;
import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Builds;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.FitState;
import dev.ledgerwing.core.build.LineMass;
import dev.ledgerwing.core.build.LinePlace;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.PortNeeds;
import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.build.Supply;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.Mass;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class TableRoundTripTest {

    private static final String[] TEXTS = {
        "=SUM(A1:A3)",
        "+cmd",
        "-2 clip",
        "@x",
        "'=1",
        "''-x",
        "'00012",
        "Spar, main",
        "3/4\" tube",
        "\"Old\"",
        "two\nlines",
        "a;b\tc",
        "Total",
        "Subtotal wing",
        "Total wing",
        "Part",
        "Rib",
        "<script>alert(1)</script>",
        "Bügel µ ½ Ω Ż",
        "-",
        "?",
        "Übertrag",
        "1,234",
        "Note",
        "shop",
        "quantity"
    };

    @Test
    void theLinesOfABuildReadBackExactly() {
        for (long seed = 1; seed <= 300; seed++) {
            Build build = build(new Random(seed));
            TableReading reading = PartsTable.read(PartsTable.write(build));
            Iterator<String> ids = build.lines().stream().map(PartLine::id).iterator();

            assertThat(reading.problems()).as("seed %s", seed).isEmpty();
            assertThat(TableImport.REPLACE.into(build, reading, ids::next))
                    .as("seed %s", seed)
                    .isEqualTo(build);
        }
    }

    @Test
    void nothingInTheTableRunsAsAFormula() {
        for (long seed = 1; seed <= 50; seed++) {
            String text = new String(PartsTable.write(build(new Random(seed))), StandardCharsets.UTF_8);

            assertThat(text.lines().toList())
                    .as("seed %s", seed)
                    .noneMatch(line -> line.matches("[\"\ufeff]*[=+@-].*"));
            assertThat(text).doesNotContain(",=", ",\"=", ",+", ",@");
        }
    }

    @Test
    void writesHeadingsAndExactNumbers() {
        PartLine line = line("L1", "Spar", new Mass(1_234_567), Station.atX(new Length(-85_125)), null);
        Build build = Builds.small().withLines(List.of(line));

        assertThat(new String(PartsTable.write(build), StandardCharsets.UTF_8))
                .isEqualTo("\ufeffPart,Quantity,Mass each [g],Basis,Category,Assembly,Station x [mm],Station y [mm],"
                        + "Station z [mm],State,Part code,Supplier,Cost each,Note\r\n"
                        + "Spar,3,1234.567,catalogue,landing gear,Wing,-85.125,0,0,on order,,,,\r\n");
    }

    @Test
    void aMassThatIsNotKnownStaysNotKnown() {
        Build build = Builds.small().withLines(List.of(line("L1", "Spar", null, null, null)));
        TableReading reading = PartsTable.read(PartsTable.write(build));

        assertThat(reading.parts()).singleElement().matches(part -> part.unitMass() == null);
        assertThat(Tables.places(reading.notices())).containsExactly("2:3");
    }

    private static Build build(Random random) {
        List<PartLine> lines = new ArrayList<>();
        for (int i = 0; i < 1 + random.nextInt(12); i++) {
            lines.add(line(random, "L" + i));
        }
        return Build.blank(Builds.airframe("Dunlin"), Builds.target(2000))
                .withAssemblies(List.of(
                        new Assembly("wing", "Wing", Assembly.MovesWith.WING),
                        new Assembly("a1", "=Wing", Assembly.MovesWith.TAIL),
                        new Assembly("a2", "Nose, \"old\"\nand new", Assembly.MovesWith.NOSE)))
                .withLines(lines);
    }

    private static PartLine line(Random random, String id) {
        Supply supply = new Supply(
                text(random), List.of(), text(random), random.nextBoolean() ? random.nextInt(90_000) / 100.0 : null);
        return new PartLine(
                id,
                Builds.pick(random, new String[] {"wing", "a1", "a2"}),
                Builds.pick(random, TEXTS),
                Builds.pick(random, Category.values()),
                1 + random.nextInt(random.nextInt(5) == 0 ? 100_000 : 9),
                new LineMass(
                        random.nextInt(8) == 0
                                ? null
                                : new Mass(random.nextInt(random.nextBoolean() ? 9_000 : 900_000_000)),
                        Builds.pick(random, Basis.values()),
                        null,
                        null,
                        null),
                random.nextInt(3) == 0 ? LinePlace.UNKNOWN : LinePlace.at(station(random)),
                Builds.pick(random, FitState.values()),
                supply.equals(Supply.NONE) ? Supply.NONE : supply,
                text(random),
                List.of(),
                List.of(),
                PortNeeds.NONE);
    }

    private static PartLine line(
            String id, String name, @Nullable Mass mass, @Nullable Station station, @Nullable String note) {
        return new PartLine(
                id,
                "wing",
                name,
                Category.LANDING_GEAR,
                3,
                new LineMass(mass, Basis.CATALOGUE, null, null, null),
                station == null ? LinePlace.UNKNOWN : LinePlace.at(station),
                FitState.ON_ORDER,
                Supply.NONE,
                note,
                List.of(),
                List.of(),
                PortNeeds.NONE);
    }

    private static @Nullable String text(Random random) {
        return random.nextInt(3) == 0 ? null : Builds.pick(random, TEXTS);
    }

    private static Station station(Random random) {
        return new Station(coordinate(random), coordinate(random), coordinate(random));
    }

    private static Length coordinate(Random random) {
        return new Length(random.nextInt(200_000_000) - 100_000_000);
    }
}
