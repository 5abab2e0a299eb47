package dev.ledgerwing.web.desk;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Airframe;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.MassBudget;
import dev.ledgerwing.core.build.Stage;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class ElementIdsTest {

    private static final Build BLANK = Build.blank(
            new Airframe("dunlin", "Dunlin", null, Stage.DESIGN, "nose tip"), new MassBudget(null, null, null, null));

    private final ElementIds ids = new ElementIds();

    @Test
    void neverGiveAnIdTwiceToTheLinesOfOneBuild() {
        assertThat(Stream.generate(ids.freshLines(BLANK)).limit(100_000))
                .doesNotHaveDuplicates()
                .allMatch(id -> id.matches("L[A-Z2-9]{6}"));
    }
}
