package dev.ledgerwing.web.balance;

import dev.ledgerwing.core.build.Airframe;
import dev.ledgerwing.core.build.Assembly;
import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.LineMass;
import dev.ledgerwing.core.build.LinePlace;
import dev.ledgerwing.core.build.MassBudget;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Stage;
import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.Mass;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Small airframes whose balance is worked out in the head. */
final class BalanceAirframes {

    private BalanceAirframes() {}

    static Build blank(String code) {
        return Build.blank(
                new Airframe(code, "Airframe " + code, null, Stage.DESIGN, "nose tip"),
                new MassBudget(Mass.ofGrams(2000), null, null, null));
    }

    /** A wing of 1000 g at 600 mm and a pack of 500 g at 300 mm that may move: CG at 500 mm. */
    static Build withWingAndPack(String code) {
        return blank(code)
                .withAssemblies(List.of(
                        new Assembly("wing", "Wing", Assembly.MovesWith.WING),
                        new Assembly("nose", "Nose", Assembly.MovesWith.NOSE)))
                .withLines(List.of(
                        line("L1", "wing", "Panels", 1000, 600, null),
                        line(
                                "L2",
                                "nose",
                                "Flight pack",
                                500,
                                300,
                                new LinePlace.Travel(Length.ofMm(100), Length.ofMm(400)))));
    }

    static PartLine line(
            String id, String assembly, String name, double massG, double xMm, LinePlace.@Nullable Travel travel) {
        Category category = name.contains("pack") ? Category.BATTERY : Category.STRUCTURE;
        return PartLine.named(id, assembly, name, category, 1, LineMass.of(Mass.ofGrams(massG), Basis.WEIGHED))
                .withPlace(new LinePlace(Station.atX(Length.ofMm(xMm)), null, null, travel, null, null));
    }
}
