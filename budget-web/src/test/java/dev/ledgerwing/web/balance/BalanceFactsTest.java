package dev.ledgerwing.web.balance;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.LinePlace;
import dev.ledgerwing.core.build.Panel;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.build.Surface;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.web.balance.BalanceFacts.Fact;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class BalanceFactsTest {

    /** A chord of 200 mm from 450 mm on, no tail: neutral point at 20 %, CG of 500 mm at 25 %. */
    private static Build winged() {
        Build build = BalanceAirframes.withWingAndPack("facts");
        Panel panel = new Panel(Length.ofMm(800), Length.ofMm(200), Length.ofMm(200), Length.ofMm(0), 0);
        return build.withGeometry(
                build.geometry().withWing(new Surface(Station.atX(Length.ofMm(450)), true, List.of(panel))));
    }

    private static Build withoutStationOfPack() {
        Build build = winged();
        return build.withLines(build.lines().stream()
                .map(line -> line.id().equals("L2") ? nowhere(line) : line)
                .toList());
    }

    private static PartLine nowhere(PartLine line) {
        return line.withPlace(new LinePlace(null, null, null, null, null, null));
    }

    private static Fact fact(Build build, String label) {
        return BalanceFacts.of(BuildReview.of(build)).stream()
                .filter(fact -> fact.label().equals(label))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void tellsTheStaticMarginWhereEverythingIsPlaced() {
        assertThat(fact(winged(), "Static margin").figure()).startsWith("−5");
    }

    @Test
    void knowsNoStaticMarginWhileAPartIsNowhere() {
        assertThat(fact(withoutStationOfPack(), "Static margin").figure()).isEqualTo("not known");
    }

    @Test
    void saysOfEachCgThatSomethingIsNotInIt() {
        Build build = withoutStationOfPack();
        assertThat(Stream.of("CG", "at predicted mass")
                        .map(label -> fact(build, label).note()))
                .allMatch(note -> note.startsWith("of what is placed"));
    }
}
