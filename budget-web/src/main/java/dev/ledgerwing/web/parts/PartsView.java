package dev.ledgerwing.web.parts;

import dev.ledgerwing.core.build.Assembly;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.mass.MassGroup;
import dev.ledgerwing.core.mass.MassRow;
import dev.ledgerwing.core.mass.MassStatement;
import dev.ledgerwing.core.mass.MassTotal;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.web.desk.Snapshot;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The parts table of one airframe, ready to be shown.
 *
 * @param summary {@code 62 lines, 71 % of the mass weighed}
 * @param shownFrom number of the first line shown, counted from 1; shownTo of the last; found how many lines match
 */
record PartsView(
        List<Group> groups,
        String summary,
        String find,
        int shownFrom,
        int shownTo,
        int found,
        @Nullable Integer previous,
        @Nullable Integer next,
        Total total) {

    static final int PAGE = 500;

    /** An assembly with its lines on this page; its subtotal is of the whole assembly. */
    record Group(String code, String name, int lines, Total total, List<Row> rows) {}

    /** @param unknown how many lines have no known mass, so that the sum is only a lower bound */
    record Total(String basic, String growth, int unknown) {

        static Total of(MassTotal total, Figures figures) {
            return new Total(figures.smallMass(total.basic()), figures.smallMass(total.growth()), total.unknown());
        }
    }

    /** @param aside that the part stays at home in the design case; null = it is aboard */
    record Row(
            String id,
            String name,
            int quantity,
            @Nullable String each,
            String basis,
            @Nullable String total,
            @Nullable String growth,
            @Nullable String station,
            String state,
            @Nullable String aside) {}

    static PartsView of(Snapshot shown, String find, int from, Figures figures) {
        List<PartLine> lines = inOrder(shown, find);
        int first = Math.max(0, Math.min(from, Math.max(0, lines.size() - 1)) / PAGE * PAGE);
        int end = Math.min(lines.size(), first + PAGE);
        MassStatement mass = shown.review().mass();
        return new PartsView(
                groups(shown, lines.subList(first, end), find, figures),
                summary(mass),
                find,
                lines.isEmpty() ? 0 : first + 1,
                end,
                lines.size(),
                first == 0 ? null : first - PAGE,
                end == lines.size() ? null : end,
                Total.of(mass.total(), figures));
    }

    /** Where a part stands in the whole table, counted from 0. */
    static int placeOf(Snapshot shown, String id) {
        List<PartLine> lines = inOrder(shown, "");
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).id().equals(id)) {
                return i;
            }
        }
        return 0;
    }

    private static String summary(MassStatement mass) {
        int lines = mass.build().lines().size();
        Double weighed = mass.total().weighedPercent();
        return (lines == 1 ? "1 line" : lines + " lines")
                + (weighed == null ? "" : ", " + Figures.percent(weighed) + " of the mass weighed");
    }

    /** The matching lines, assembly by assembly. */
    private static List<PartLine> inOrder(Snapshot shown, String find) {
        String wanted = find.toLowerCase(Locale.ROOT);
        Map<String, List<PartLine>> byAssembly = shown.build().lines().stream()
                .filter(line -> wanted.isEmpty() || matches(line, wanted))
                .collect(Collectors.groupingBy(PartLine::assembly));
        List<PartLine> ordered = new ArrayList<>();
        shown.build()
                .assemblies()
                .forEach(assembly -> ordered.addAll(byAssembly.getOrDefault(assembly.code(), List.of())));
        return ordered;
    }

    private static boolean matches(PartLine line, String wanted) {
        String partCode = line.supply().partCode();
        return line.name().toLowerCase(Locale.ROOT).contains(wanted)
                || (partCode != null && partCode.toLowerCase(Locale.ROOT).contains(wanted))
                || line.id().toLowerCase(Locale.ROOT).equals(wanted);
    }

    private static List<Group> groups(Snapshot shown, List<PartLine> page, String find, Figures figures) {
        MassStatement mass = shown.review().mass();
        Map<String, MassRow> rows = ledgerRows(mass);
        Set<String> absent = new HashSet<>(mass.design().loadCase().absent());
        String aside = "stays at home in " + mass.design().loadCase().name();
        Map<String, List<Row>> byAssembly = page.stream()
                .collect(Collectors.groupingBy(
                        PartLine::assembly,
                        Collectors.mapping(
                                line -> row(
                                        line,
                                        Objects.requireNonNull(rows.get(line.id())),
                                        absent.contains(line.id()) ? aside : null,
                                        figures),
                                Collectors.toList())));
        Map<String, MassGroup> totals = mass.byAssembly().stream()
                .filter(group -> group.code() != null)
                .collect(Collectors.toMap(group -> String.valueOf(group.code()), Function.identity()));
        Set<String> inUse =
                shown.build().lines().stream().map(PartLine::assembly).collect(Collectors.toSet());
        List<Group> groups = new ArrayList<>();
        for (Assembly assembly : shown.build().assemblies()) {
            List<Row> its = byAssembly.getOrDefault(assembly.code(), List.of());
            MassTotal total =
                    Objects.requireNonNull(totals.get(assembly.code())).total();
            if (!its.isEmpty() || (!inUse.contains(assembly.code()) && find.isEmpty())) {
                groups.add(new Group(assembly.code(), assembly.name(), total.rows(), Total.of(total, figures), its));
            }
        }
        return groups;
    }

    private static Map<String, MassRow> ledgerRows(MassStatement mass) {
        return mass.ledger().stream().collect(Collectors.toMap(row -> String.valueOf(row.line()), Function.identity()));
    }

    private static Row row(PartLine line, MassRow mass, @Nullable String aside, Figures figures) {
        Station station = line.place().station();
        return new Row(
                line.id(),
                line.name(),
                line.quantity(),
                small(line.mass().unitMass(), figures),
                line.mass().basis().word(),
                small(mass.basic(), figures),
                small(mass.growth(), figures),
                station == null ? null : figures.lengthNumber(station.x()),
                line.state().word(),
                aside);
    }

    private static @Nullable String small(@Nullable Mass mass, Figures figures) {
        return mass == null ? null : figures.smallMass(mass);
    }
}
