package dev.ledgerwing.core.balance.weighing;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.balance.weighing.SupportPlan.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Scanner;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SupportPlanTest {

    @ParameterizedTest
    @CsvSource({
        "'0 0', false, false",
        "'0 0, 600 0', true, false",
        "'0 0, 300 0.4, 600 0', true, false",
        "'0 -150, 0 150', false, true",
        "'0 0, 600 300', false, false",
        "'0 0, 300 150, 600 300', false, false",
        "'0 0, 600 -150, 600 150', true, true",
        "'0 0, 0 300, 600 0, 600 300, 300 100', true, true"
    })
    void tellsAlongALineAndOverAnArea(String points, boolean x, boolean y) {
        SupportPlan plan = plan(points);
        assertThat(plan.tellsX()).isEqualTo(x);
        assertThat(plan.tellsY()).isEqualTo(y);
    }

    @ParameterizedTest
    @CsvSource({
        "'0 0, 600 -150, 600 150', 300, 70, true",
        "'0 0, 600 -150, 600 150', 300, 80, false",
        "'0 0, 600 -150, 600 150', 603, 0, false",
        "'600 150, 600 -150, 0 0, 500 0', 590, 140, true",
        "'0 0, 600 0', 300, 900, true",
        "'0 0, 600 0', -3, 0, false",
        "'0 -150, 0 150', 900, 155, false",
        "'0 0, 600 300', 900, 900, true"
    })
    void knowsWhatItCanCarry(String points, double xMm, double yMm, boolean carries) {
        assertThat(plan(points).carries(new Point(xMm, yMm), 0)).isEqualTo(carries);
    }

    @Test
    void allowsForWhatIsUncertain() {
        assertThat(plan("0 0, 600 -150, 600 150").carries(new Point(603, 0), 4)).isTrue();
    }

    private static SupportPlan plan(String points) {
        List<Point> all = new ArrayList<>();
        Scanner numbers = new Scanner(points.replace(',', ' '));
        while (numbers.hasNext()) {
            all.add(new Point(Double.parseDouble(numbers.next()), Double.parseDouble(numbers.next())));
        }
        return new SupportPlan(all);
    }
}
