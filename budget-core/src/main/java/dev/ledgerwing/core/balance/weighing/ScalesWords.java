package dev.ledgerwing.core.balance.weighing;

import dev.ledgerwing.core.balance.Axis;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import java.util.ArrayList;
import java.util.List;

/** Says what the scales say. */
record ScalesWords(Figures figures) {

    List<String> of(ScalesAnswer answer) {
        List<String> said = new ArrayList<>();
        said.add("The scales say " + figures.mass(answer.mass()) + ", standard uncertainty "
                + uncertainty(answer.joint().massUncertaintyG()) + ".");
        for (Axis axis : Axis.values()) {
            answer.joint().centre(axis).ifPresent(at -> said.add("It balances at " + coordinate(axis, at) + "."));
        }
        answer.notKnown().forEach((axis, why) -> said.add(axis.letter() + " is not known. " + why));
        return said;
    }

    /** {@code x = 360.9 mm, standard uncertainty 0.3 mm}. */
    String coordinate(Axis axis, Coordinate at) {
        return axis.letter() + " = " + figures.length(at.length()) + ", standard uncertainty "
                + figures.length(at.uncertainty());
    }

    String uncertainty(double grams) {
        return figures.roughMass(Mass.ofGrams(grams));
    }
}
