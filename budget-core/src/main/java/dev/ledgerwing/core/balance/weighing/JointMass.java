package dev.ledgerwing.core.balance.weighing;

import dev.ledgerwing.core.balance.Axis;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * A mass and its first moments about the datum with their joint covariance, which is the sum over the independent errors of v v^T with v
 * the error (JCGM 100:2008, eq. 10 and 16, H.2).
 *
 * @param massG in grams; a difference of masses may be negative
 * @param momentsGMm in gram-millimetres, of the axes along which they are known
 */
public record JointMass(double massG, Map<Axis, Double> momentsGMm, List<JointError> errors) {

    public JointMass {
        momentsGMm = Collections.unmodifiableMap(
                momentsGMm.isEmpty() ? new EnumMap<>(Axis.class) : new EnumMap<>(momentsGMm));
        errors = List.copyOf(errors);
    }

    /** u of the mass in grams. */
    public double massUncertaintyG() {
        return Math.sqrt(squares(JointError::massG));
    }

    public boolean isKnown(Axis axis) {
        return momentsGMm.containsKey(axis);
    }

    /**
     * Where its centre of mass lies: x = S/M with u^2(x) = sum of ((v_S - x v_M)/M)^2 over the errors v. Empty where the moment is not
     * known, or without a mass.
     */
    public Optional<Coordinate> centre(Axis axis) {
        Double moment = momentsGMm.get(axis);
        if (moment == null || massG == 0) {
            return Optional.empty();
        }
        double mm = moment / massG;
        double uncertaintyMm = Math.sqrt(squares(error -> error.of(axis) - mm * error.massG())) / Math.abs(massG);
        return Optional.of(new Coordinate(mm, uncertaintyMm));
    }

    private double squares(ToDoubleFunction<JointError> part) {
        return errors.stream().mapToDouble(part).map(each -> each * each).sum();
    }

    /** The difference to one that errs independently, along the axes that both know. */
    JointMass minus(JointMass other) {
        Map<Axis, Double> left = new EnumMap<>(Axis.class);
        momentsGMm.forEach((axis, moment) -> {
            Double taken = other.momentsGMm.get(axis);
            if (taken != null) {
                left.put(axis, moment - taken);
            }
        });
        return new JointMass(
                massG - other.massG,
                left,
                Stream.concat(errors.stream(), other.errors.stream()).toList());
    }
}
