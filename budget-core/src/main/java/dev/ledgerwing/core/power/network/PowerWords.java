package dev.ledgerwing.core.power.network;

import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.quantity.Figures;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;

/** How electrical figures and names are written for people. */
public final class PowerWords {

    private static final char THIN_SPACE = '\u2009';
    private static final int MOST_NAMED = 3;
    private static final double LARGE = 10;

    private PowerWords() {}

    /** {@code 4.25 A}, {@code 62.5 A}, {@code 0.012 A}. */
    public static String amperes(double amperes) {
        return number(amperes) + THIN_SPACE + "A";
    }

    /** {@code 4.92 V}. */
    public static String volts(double volts) {
        return Figures.number(volts, 2) + THIN_SPACE + "V";
    }

    /** {@code 4.5 W}. */
    public static String watts(double watts) {
        return number(watts) + THIN_SPACE + "W";
    }

    private static String number(double value) {
        double size = Math.abs(value);
        return Figures.number(value, size >= LARGE ? 1 : size >= 0.1 ? 2 : 3);
    }

    /** What a builder calls it: wire, plug, fuse, … */
    public static String word(FeedElement.Kind kind) {
        return switch (kind) {
            case WIRE -> "wire";
            case CONNECTOR -> "plug";
            case FUSE -> "fuse";
            case BREAKER -> "breaker";
            case SWITCH -> "switch";
            case SENSOR -> "current sensor";
            case DIODE -> "diode";
            case REGULATOR -> "regulator";
            case MOTOR_CONTROLLER -> "motor controller";
        };
    }

    /** {@code “A”, “B” and 4 more}, in a steady order. */
    public static String names(Collection<String> names) {
        List<String> quoted =
                names.stream().distinct().sorted().map(PowerWords::quoted).toList();
        int more = quoted.size() - MOST_NAMED;
        return more <= 1
                ? joined(quoted)
                : quoted.stream().limit(MOST_NAMED).collect(Collectors.joining(", ")) + " and " + more + " more";
    }

    public static String quoted(String name) {
        return "“" + name + "”";
    }

    private static String joined(List<String> names) {
        int last = names.size() - 1;
        return last <= 0
                ? String.join("", names)
                : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
    }
}
