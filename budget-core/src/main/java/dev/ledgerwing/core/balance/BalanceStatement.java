package dev.ledgerwing.core.balance;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.mass.MassStatement;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The balance statement of a build: CG = sum(m r) / sum(m) in three axes for every load case, at basic and at predicted mass.
 *
 * @param shape wing, neutral point and limits; balance is worked out in millimetres without them
 * @param cases every load case in the record's order, the design case among them
 */
public record BalanceStatement(MassStatement mass, BalanceShape shape, List<CaseBalance> cases) {

    public BalanceStatement {
        cases = List.copyOf(cases);
    }

    public static BalanceStatement of(Build build) {
        return of(MassStatement.of(build));
    }

    public static BalanceStatement of(MassStatement mass) {
        Build build = mass.build();
        Stations stations = new Stations(build);
        return new BalanceStatement(
                mass,
                BalanceShape.of(build.geometry()),
                mass.cases().stream()
                        .map(each -> CaseBalance.of(build, each, stations))
                        .toList());
    }

    public Build build() {
        return mass.build();
    }

    public CaseBalance design() {
        return cases.stream()
                .filter(each -> each.loadCase().design())
                .findFirst()
                .orElseThrow();
    }

    public Optional<CaseBalance> loadCase(String code) {
        return cases.stream()
                .filter(each -> each.loadCase().code().equals(code))
                .findFirst();
    }

    /** The cases that somebody means to fly in; ground cases have no flight band. */
    public List<CaseBalance> flight() {
        return cases.stream().filter(CaseBalance::isFlight).toList();
    }

    /**
     * The case by groups: every assembly in the record's order, empty ones too; then the extra items and the booking of the whole
     * airframe where there are any.
     */
    public List<BalanceGroup> byAssembly(CaseBalance aboard) {
        Map<@Nullable String, List<PlacedRow>> rows = new LinkedHashMap<>();
        aboard.rows()
                .forEach(row -> rows.computeIfAbsent(row.row().assembly(), code -> new ArrayList<>())
                        .add(row));
        List<BalanceGroup> groups = new ArrayList<>();
        build().assemblies()
                .forEach(assembly -> groups.add(BalanceGroup.of(
                        assembly.code(),
                        assembly.name(),
                        rows.getOrDefault(assembly.code(), List.of()),
                        bookedOn(assembly.code(), aboard))));
        if (rows.containsKey(null)) {
            String title = "Carried: " + aboard.loadCase().name();
            groups.add(BalanceGroup.of(null, title, rows.getOrDefault(null, List.of()), List.of()));
        }
        List<BookedMass> whole = bookedOn(null, aboard);
        if (!whole.isEmpty()) {
            groups.add(BalanceGroup.of(null, "Booked on the whole airframe", List.of(), whole));
        }
        return List.copyOf(groups);
    }

    private static List<BookedMass> bookedOn(@Nullable String assembly, CaseBalance aboard) {
        return aboard.booked().stream()
                .filter(each -> Objects.equals(each.assembly(), assembly))
                .toList();
    }
}
