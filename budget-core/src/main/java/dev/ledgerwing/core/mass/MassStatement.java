package dev.ledgerwing.core.mass;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.GrowthTable;
import dev.ledgerwing.core.build.LoadCase;
import dev.ledgerwing.core.quantity.Mass;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The mass statement of a build. Basic mass: the lines aboard in the design load case and its extra items; predicted mass:
 * basic mass, growth allowance and bookings (terms of ANSI/AIAA S-120A and SAWE RP A-3). Sums of whole milligrams: subtotals
 * add up to the total exactly, whatever the order of the lines.
 *
 * @param build the record it was made from
 * @param ledger every line of the record in its order, aboard or not
 * @param cases every load case in the record's order, the design case among them
 */
public record MassStatement(Build build, List<MassRow> ledger, List<CaseMass> cases) {

    public MassStatement {
        ledger = List.copyOf(ledger);
        cases = List.copyOf(cases);
    }

    public static MassStatement of(Build build) {
        GrowthTable growth = build.judgedBy().growth();
        Set<String> weighed = WholeWeighing.of(build).map(WholeWeighing::lines).orElse(Set.of());
        List<MassRow> ledger = build.lines().stream()
                .map(line -> MassRow.of(line, growth))
                .map(row -> weighed.contains(row.line()) ? row.weighedAboard() : row)
                .toList();
        List<CaseMass> cases = build.loadCases().stream()
                .map(loadCase -> CaseMass.of(build, loadCase, ledger))
                .toList();
        return new MassStatement(build, ledger, cases);
    }

    /** The load case that the target is judged in. */
    public CaseMass design() {
        return cases.stream()
                .filter(each -> each.loadCase().design())
                .findFirst()
                .orElseThrow();
    }

    /** The lines aboard in the design load case in the ledger's order, then its extra items. */
    public List<MassRow> rows() {
        return design().rows();
    }

    /** The lines that stay at home in the design load case. */
    public List<MassRow> notAboard() {
        Set<String> absent = new HashSet<>(design().loadCase().absent());
        return ledger.stream().filter(row -> absent.contains(row.line())).toList();
    }

    /** The row of a line, aboard or not. */
    public Optional<MassRow> row(String line) {
        return ledger.stream().filter(row -> line.equals(row.line())).findFirst();
    }

    public MassTotal total() {
        return design().total();
    }

    public Mass basic() {
        return design().basic();
    }

    public Mass growth() {
        return total().growth();
    }

    public Mass booking() {
        return design().booking();
    }

    public Mass predicted() {
        return design().predicted();
    }

    /** The margin to the target; empty while no target is set. */
    public Optional<MassMargin> margin() {
        Mass target = build.budget().targetMass();
        return target == null
                ? Optional.empty()
                : Optional.of(new MassMargin(target, basic(), predicted(), reservePercent()));
    }

    /** The margin wanted, in per cent of the target: the airframe's own, else the default of its stage. */
    public double reservePercent() {
        Double own = build.budget().reservePercent();
        return own == null
                ? build.judgedBy().reserves().percent(build.airframe().stage())
                : own;
    }

    /** The lines of unknown mass in the whole ledger, aboard or not. They are in no sum. */
    public List<MassRow> unknown() {
        return ledger.stream().filter(row -> !row.isKnown()).toList();
    }

    /** How many masses are not known: of lines of the ledger, and of extra items in any load case. */
    public int unknownCount() {
        long extra = cases.stream()
                .flatMap(each -> each.unknown().stream())
                .filter(MassRow::isExtra)
                .count();
        return unknown().size() + (int) extra;
    }

    /** One group for every assembly in the record's order, empty ones too; extra items follow in a group without a code. */
    public List<MassGroup> byAssembly() {
        Map<@Nullable String, List<MassRow>> rows = new LinkedHashMap<>();
        rows().forEach(row ->
                rows.computeIfAbsent(row.assembly(), code -> new ArrayList<>()).add(row));
        List<MassGroup> groups = new ArrayList<>();
        build.assemblies()
                .forEach(assembly -> groups.add(
                        MassGroup.of(assembly.code(), assembly.name(), rows.getOrDefault(assembly.code(), List.of()))));
        if (rows.containsKey(null)) {
            groups.add(
                    MassGroup.of(null, "Carried: " + design().loadCase().name(), rows.getOrDefault(null, List.of())));
        }
        return List.copyOf(groups);
    }

    /** One group for every category that has a row aboard, extra items under {@link Category#PAYLOAD}. */
    public List<MassGroup> byCategory() {
        Map<Category, List<MassRow>> rows = new EnumMap<>(Category.class);
        rows().forEach(row -> rows.computeIfAbsent(row.category(), category -> new ArrayList<>())
                .add(row));
        return rows.entrySet().stream()
                .map(entry -> MassGroup.of(
                        entry.getKey().name().toLowerCase(Locale.ROOT),
                        entry.getKey().title(),
                        entry.getValue()))
                .toList();
    }

    /** The {@link LoadCase.Purpose#FLIGHT} case of the greatest predicted mass. */
    public CaseMass heaviestFlight() {
        return cases.stream()
                .filter(CaseMass::isFlight)
                .max(Comparator.comparing(CaseMass::predicted))
                .orElseThrow();
    }
}
