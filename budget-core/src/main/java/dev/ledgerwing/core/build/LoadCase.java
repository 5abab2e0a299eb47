package dev.ledgerwing.core.build;

import dev.ledgerwing.core.quantity.Mass;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What is aboard on one occasion, told as the difference from the ledger.
 *
 * @param design the case that targets are judged in; exactly one of a build
 * @param absent ids of lines that stay at home
 * @param moved lines that sit elsewhere
 * @param stowed ids of lines in their stowed station
 * @param extra things aboard that are no part of the build
 */
public record LoadCase(
        String code,
        String name,
        Purpose purpose,
        boolean design,
        List<String> absent,
        Map<String, Station> moved,
        List<String> stowed,
        List<ExtraItem> extra)
        implements Element {

    /** Whether anybody means to fly like this. */
    public enum Purpose {
        FLIGHT,
        GROUND
    }

    /** Something aboard that the ledger has no line for. {@code mass} null = not known. */
    public record ExtraItem(
            String name,
            @Nullable Mass mass,
            Basis basis,
            @Nullable Station station) {

        public ExtraItem {
            Check.name("name", name);
            Check.mass("massG", mass);
        }
    }

    public LoadCase {
        absent = List.copyOf(absent);
        moved = Collections.unmodifiableMap(new TreeMap<>(moved)); // a fixed order
        stowed = List.copyOf(stowed);
        extra = List.copyOf(extra);
        Check.slug("code", code);
        Check.name("name", name);
        Check.require(
                !design || purpose == Purpose.FLIGHT, "the design load case must be a FLIGHT case, was " + purpose);
    }

    /** Everything aboard: what a new airframe starts with. */
    public static LoadCase everythingAboard() {
        return new LoadCase("all-up", "All up", Purpose.FLIGHT, true, List.of(), Map.of(), List.of(), List.of());
    }

    /** The same case without any mention of a line. */
    LoadCase without(String line) {
        return about(line, others(absent, line));
    }

    /** The same case with a line left at home. */
    public LoadCase leavingAtHome(String line) {
        return about(
                line,
                absent.contains(line)
                        ? absent
                        : Stream.concat(absent.stream(), Stream.of(line)).toList());
    }

    /** What is not aboard is neither moved nor stowed. */
    private LoadCase about(String line, List<String> nowAbsent) {
        Map<String, Station> nowMoved = new TreeMap<>(moved);
        nowMoved.remove(line);
        return new LoadCase(code, name, purpose, design, nowAbsent, nowMoved, others(stowed, line), extra);
    }

    private static List<String> others(List<String> lines, String line) {
        return lines.stream().filter(each -> !each.equals(line)).toList();
    }

    @Override
    public String id() {
        return code;
    }
}
