package dev.ledgerwing.core.build;

import java.util.ArrayList;
import java.util.List;

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
     * scales is booked, the booking takes the opposite in mass and moments: what is aboard has not changed, so the total stays.
     * Where another mass is {@link Nature#FITTED}, the part is no longer the one that stood on the scales.
     *
     * @throws IllegalArgumentException when the part is no longer there
     */
    public static Build changed(Build build, PartLine after, Nature nature) {
        PartLine before = build.line(after.id())
                .orElseThrow(() -> new IllegalArgumentException("“" + after.name() + "” is no longer there"));
        Build changed = build.withLines(build.lines().stream()
                .map(line -> line.id().equals(after.id()) ? after : line)
                .toList());
        if (nature == Nature.CORRECTED) {
            return Bookings.correctedFor(build, before, after).in(changed);
        }
        boolean samePart = before.mass().equals(after.mass()) && before.quantity() == after.quantity();
        return samePart ? changed : changed.withWeighIns(without(changed.weighIns(), after.id()));
    }

    private static List<WeighIn> without(List<WeighIn> weighIns, String line) {
        return weighIns.stream()
                .map(weighIn -> weighIn.withAboard(weighIn.aboard().stream()
                        .filter(each -> !each.equals(line))
                        .toList()))
                .toList();
    }

    /** Removes a part, and the mention of it in every load case, bay, rule, source, output and weigh-in. */
    public static Build removed(Build build, String id) {
        BuildParts parts = BuildParts.of(build);
        parts.put(
                ElementKind.LINE,
                build.lines().stream().filter(line -> !line.id().equals(id)).toList());
        parts.put(
                ElementKind.LOAD_CASE,
                build.loadCases().stream().map(loadCase -> loadCase.without(id)).toList());
        parts.put(
                ElementKind.BAY,
                build.bays().stream().map(bay -> without(bay, id)).toList());
        parts.put(
                ElementKind.KEEP_APART,
                build.keepApart().stream()
                        .filter(rule ->
                                !rule.first().equals(id) && !rule.second().equals(id))
                        .toList());
        parts.put(
                ElementKind.SOURCE,
                build.power().sources().stream()
                        .map(source -> id.equals(source.part()) ? source.withPart(null) : source)
                        .toList());
        parts.put(
                ElementKind.OUTPUT,
                build.outputs().assignments().stream()
                        .map(output -> output.withDrives(output.drives().stream()
                                .filter(driven -> !driven.line().equals(id))
                                .toList()))
                        .toList());
        FittedBoard fitted = build.outputs().fitted();
        if (id.equals(fitted.part())) {
            parts.put(SectionKind.FITTED_BOARD, new FittedBoard(fitted.board(), null));
        }
        parts.put(ElementKind.WEIGH_IN, without(build.weighIns(), id));
        return parts.assemble();
    }

    private static Bay without(Bay bay, String id) {
        return bay.withHolds(
                bay.holds().stream().filter(each -> !each.equals(id)).toList());
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
     * Removes an assembly that holds nothing any more, and what was booked for it.
     *
     * @throws IllegalArgumentException while parts belong to it
     */
    public static Build removedAssembly(Build build, String code) {
        long parts = build.lines().stream()
                .filter(line -> line.assembly().equals(code))
                .count();
        Check.require(parts == 0, "the assembly still holds " + parts + (parts == 1 ? " part" : " parts"));
        BuildParts left = BuildParts.of(build);
        left.put(
                ElementKind.ASSEMBLY,
                build.assemblies().stream()
                        .filter(assembly -> !assembly.code().equals(code))
                        .toList());
        left.put(
                ElementKind.ASSEMBLY_BOOKING,
                build.assemblyBookings().stream()
                        .filter(booked -> !booked.assembly().equals(code))
                        .toList());
        return left.assemble();
    }
}
