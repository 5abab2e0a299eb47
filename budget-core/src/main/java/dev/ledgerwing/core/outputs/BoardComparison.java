package dev.ledgerwing.core.outputs;

import dev.ledgerwing.core.build.Board;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.ElectricalLoad;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.outputs.bank.BankPlan;
import dev.ledgerwing.core.outputs.bank.BankPlanner;
import dev.ledgerwing.core.outputs.bank.Device;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * One candidate held against what the parts need.
 *
 * @param aboard whether it is the one that was chosen
 * @param plan of all outputs on its banks, also of those that nobody has recorded yet
 * @param massDifference against the part that it would replace; null = not known
 * @param typicalDifferenceA and {@code peakDifferenceA} the same of its current; null = not known
 */
public record BoardComparison(
        Board board,
        boolean aboard,
        List<PortRow> ports,
        List<AddressClash> clashes,
        BankPlan plan,
        @Nullable Mass massDifference,
        @Nullable Double typicalDifferenceA,
        @Nullable Double peakDifferenceA) {

    public BoardComparison {
        ports = List.copyOf(ports);
        clashes = List.copyOf(clashes);
    }

    static BoardComparison of(Build build, PortTally need, List<Device> devices, Board board) {
        Integer buses = board.i2cBuses();
        Optional<PartLine> part =
                Optional.ofNullable(build.outputs().fitted().part()).flatMap(build::line);
        return new BoardComparison(
                board,
                board.code().equals(build.outputs().fitted().board()),
                Arrays.stream(PortKind.values())
                        .map(kind -> PortRow.of(kind, need, board))
                        .toList(),
                buses == null ? List.of() : AddressClash.of(need, buses),
                BankPlanner.plan(board.banks(), devices),
                part.map(line -> difference(board.unitMass(), line.mass().unitMass()))
                        .orElse(null),
                part.map(line -> difference(
                                board.typicalA(), sum(line.electrical().stream().map(ElectricalLoad::typicalA))))
                        .orElse(null),
                part.map(line -> difference(
                                board.peakA(), sum(line.electrical().stream().map(ElectricalLoad::peakA))))
                        .orElse(null));
    }

    public PortRow port(PortKind kind) {
        return ports.stream().filter(port -> port.kind() == kind).findFirst().orElseThrow();
    }

    /** How many connections of all kinds are missing. */
    public int shortage() {
        return ports.stream().mapToInt(PortRow::shortage).sum();
    }

    /** Outputs that find no bank however they are planned, though there are enough of them by number. */
    public int withoutBank() {
        return Math.max(0, plan.leftAtLeast() - port(PortKind.OUTPUT).shortage());
    }

    public Verdict verdict() {
        Verdict each = Verdict.worst(ports.stream().map(PortRow::verdict).toList());
        Verdict addresses = clashes.isEmpty() ? Verdict.HOLDS : Verdict.BREAKS;
        return Verdict.worst(List.of(each, addresses, banks()));
    }

    /** Whether every output finds a bank of its kind at the rate it wants; a rate or a kind that is not known is never fine. */
    public Verdict banks() {
        if (board.banks().isEmpty()) {
            return port(PortKind.OUTPUT).need() == 0 ? Verdict.HOLDS : Verdict.UNKNOWN;
        }
        if (plan.leftAtLeast() > 0) {
            return Verdict.BREAKS;
        }
        boolean known = plan.isDecided()
                && plan.settings().stream()
                        .noneMatch(setting -> setting.rateHz() == null
                                || setting.bank().pulses().isEmpty());
        return known ? plan.belowWish() > 0 ? Verdict.TIGHT : Verdict.HOLDS : Verdict.UNKNOWN;
    }

    private static @Nullable Mass difference(@Nullable Mass one, @Nullable Mass other) {
        return one == null || other == null ? null : one.minus(other);
    }

    private static @Nullable Double difference(@Nullable Double one, @Nullable Double other) {
        return one == null || other == null ? null : (Double) (one - other);
    }

    private static @Nullable Double sum(Stream<@Nullable Double> currents) {
        List<@Nullable Double> all = currents.toList();
        if (all.isEmpty() || all.contains(null)) {
            return null;
        }
        return all.stream().mapToDouble(each -> each == null ? 0 : each).sum();
    }
}
