package dev.ledgerwing.core.balance.correction;

import dev.ledgerwing.core.build.Assembly;
import dev.ledgerwing.core.build.Assembly.MovesWith;
import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.LineMass;
import dev.ledgerwing.core.build.LinePlace;
import dev.ledgerwing.core.build.PartDeeds;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.Mass;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Lengthens the nose on the drawing: all that moves with it goes forward, and structure is added from the joint forward with its centroid
 * in the middle of what is new.
 *
 * @param by how much longer
 * @param joint where it is cut
 * @param structure mass of what is added
 */
public record LengthenNose(Length by, Length joint, Mass structure) implements CorrectionStep {

    @Override
    public CorrectionKind kind() {
        return CorrectionKind.LENGTHEN_NOSE;
    }

    @Override
    public Build on(Build build, Supplier<String> newIds) {
        Build shifted = new GroupShift(MovesWith.NOSE, new Length(-by.um())).on(build);
        String assembly = build.assemblies().stream()
                .filter(each -> each.movesWith() == MovesWith.NOSE)
                .map(Assembly::code)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("nothing moves with the nose"));
        PartLine added = PartLine.named(
                newIds.get(), assembly, "Longer nose", Category.STRUCTURE, 1, LineMass.of(structure, Basis.CALCULATED));
        Station middle = Station.atX(new Length(joint.um() - by.um() / 2));
        return PartDeeds.added(shifted, added.withPlace(LinePlace.at(middle)));
    }

    @Override
    public String sentence(Figures figures) {
        return "Lengthen the nose by " + figures.length(by) + ": " + figures.mass(structure)
                + " of structure ahead of the joint at station " + figures.length(joint) + ".";
    }

    @Override
    public Mass cost() {
        return structure;
    }

    @Override
    public double movementMm() {
        return by.mm();
    }

    @Override
    public String subject() {
        return "nose";
    }

    @Override
    public @Nullable String line() {
        return null;
    }

    @Override
    public String key() {
        return "nose." + by.um();
    }

    @Override
    public List<String> declareAgain() {
        return List.of("A longer nose moves the neutral point forward: set the shift by the body again.");
    }
}
