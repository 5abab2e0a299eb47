package dev.ledgerwing.core.build;

import dev.ledgerwing.core.quantity.Mass;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** What builders do to the parts of a record, each as the record after it. */
public final class PartDeeds {

    private PartDeeds() {}

    /** Adds a part behind the last one of its assembly. */
    public static Build added(Build build, PartLine line) {
        List<PartLine> lines = new ArrayList<>(build.lines());
        int at = lines.size();
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).assembly().equals(line.assembly())) {
                at = i + 1;
            }
        }
        lines.add(at, line);
        return build.withLines(lines);
    }

    /**
     * Puts a part in the place of the one with its id. Where the ledger is {@link Nature#CORRECTED} and a difference to the
     * scales is booked, the booking takes the opposite: what is aboard has not changed, so the total stays.
     *
     * @throws IllegalArgumentException when the part is no longer there
     */
    public static Build changed(Build build, PartLine after, Nature nature) {
        PartLine before = build.line(after.id())
                .orElseThrow(() -> new IllegalArgumentException("“" + after.name() + "” is no longer there"));
        Build changed = build.withLines(build.lines().stream()
                .map(line -> line.id().equals(after.id()) ? after : line)
                .toList());
        return nature == Nature.CORRECTED
                ? changed.withBooking(compensated(build, after.totalMass().minus(before.totalMass()), after.id()))
                : changed;
    }

    private static @Nullable Booking compensated(Build build, Mass difference, String line) {
        Booking booking = build.booking();
        if (booking == null || build.designCase().absent().contains(line)) {
            return booking;
        }
        Mass left = booking.mass().minus(difference);
        return left.equals(Mass.ZERO) ? null : new Booking(left, booking.reason());
    }

    /** Removes a part, and the mention of it in every load case. */
    public static Build removed(Build build, String id) {
        List<PartLine> lines =
                build.lines().stream().filter(line -> !line.id().equals(id)).toList();
        List<LoadCase> loadCases = build.loadCases().stream()
                .map(loadCase -> without(loadCase, id))
                .toList();
        return new Build(
                build.airframe(),
                build.budget(),
                build.judgedBy(),
                build.assemblies(),
                lines,
                loadCases,
                build.phases(),
                build.power(),
                build.radio(),
                build.booking());
    }

    private static LoadCase without(LoadCase loadCase, String id) {
        Map<String, Station> moved = new TreeMap<>(loadCase.moved());
        moved.remove(id);
        return new LoadCase(
                loadCase.code(),
                loadCase.name(),
                loadCase.purpose(),
                loadCase.design(),
                loadCase.absent().stream().filter(each -> !each.equals(id)).toList(),
                moved,
                loadCase.stowed().stream().filter(each -> !each.equals(id)).toList(),
                loadCase.extra());
    }

    /** Adds an assembly behind the others. */
    public static Build added(Build build, Assembly assembly) {
        List<Assembly> assemblies = new ArrayList<>(build.assemblies());
        assemblies.add(assembly);
        return build.withAssemblies(assemblies);
    }

    /** Puts an assembly in the place of the one with its code. */
    public static Build changed(Build build, Assembly after) {
        return build.withAssemblies(build.assemblies().stream()
                .map(assembly -> assembly.code().equals(after.code()) ? after : assembly)
                .toList());
    }

    /**
     * Removes an assembly that holds nothing any more.
     *
     * @throws IllegalArgumentException while parts belong to it
     */
    public static Build removedAssembly(Build build, String code) {
        long parts = build.lines().stream()
                .filter(line -> line.assembly().equals(code))
                .count();
        Check.require(parts == 0, "the assembly still holds " + parts + (parts == 1 ? " part" : " parts"));
        return build.withAssemblies(build.assemblies().stream()
                .filter(assembly -> !assembly.code().equals(code))
                .toList());
    }
}
