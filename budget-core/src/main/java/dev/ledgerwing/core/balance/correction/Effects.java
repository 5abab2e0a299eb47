package dev.ledgerwing.core.balance.correction;

import dev.ledgerwing.core.balance.BalanceStatement;
import dev.ledgerwing.core.balance.BookedMass;
import dev.ledgerwing.core.balance.CaseBalance;
import dev.ledgerwing.core.balance.MassState;
import dev.ledgerwing.core.balance.PlacedRow;
import dev.ledgerwing.core.balance.correction.LinearWay.Effect;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.quantity.Mass;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleBiFunction;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What a millimetre or a gram does to each flight case of a statement, in the order of the aims. */
record Effects(BalanceStatement statement, List<Aim> aims) {

    /** One millimetre aft of a line: its mass, in the cases that do not put it elsewhere. */
    List<Effect> ofMoving(PartLine line) {
        return each((aboard, state) -> aboard.loadCase().moved().containsKey(line.id())
                        ? 0
                        : grams(rows(aboard, Set.of(line.id())), state))
                .map(grams -> new Effect(grams, 0))
                .toList();
    }

    /** One millimetre aft of a line in each case it is aboard of, wherever that case has it. */
    List<Effect> ofStrapping(PartLine line) {
        return each((aboard, state) -> grams(rows(aboard, Set.of(line.id())), state))
                .map(grams -> new Effect(grams, 0))
                .toList();
    }

    /** One gram more at a station, aboard in every case. */
    List<Effect> ofBallast(Station station) {
        return aims.stream().map(aim -> new Effect(station.x().mm(), 1)).toList();
    }

    /** One gram more of each piece of a line, with the growth of the line at predicted mass. */
    List<Effect> ofMass(PartLine line) {
        return aims.stream()
                .map(aim -> rows(aboard(aim), Set.of(line.id()))
                        .map(row -> ofMass(row, aim.point().state()))
                        .findFirst()
                        .orElse(Effect.NONE))
                .toList();
    }

    private static Effect ofMass(PlacedRow row, MassState state) {
        Station station = row.station();
        double grown = state == MassState.BASIC ? 1 : 1 + row.row().growthPercent() / 100;
        double grams = row.row().quantity() * grown;
        return station == null ? Effect.NONE : new Effect(grams * station.x().mm(), grams);
    }

    /** Grams of what moves with some assemblies, in each case. */
    List<Double> massOf(Set<String> assemblies) {
        return each((aboard, state) -> {
                    double booked = state == MassState.BASIC ? 0 : booked(aboard, assemblies);
                    return booked
                            + grams(
                                    aboard.rows().stream()
                                            .filter(row -> row.row().assembly() != null
                                                    && assemblies.contains(
                                                            row.row().assembly())),
                                    state);
                })
                .toList();
    }

    private static double booked(CaseBalance aboard, Set<String> assemblies) {
        return aboard.booked().stream()
                .filter(each -> each.assembly() != null && assemblies.contains(each.assembly()))
                .map(BookedMass::sum)
                .mapToDouble(sum -> sum.mass().grams())
                .sum();
    }

    private static double grams(Stream<PlacedRow> rows, MassState state) {
        return rows.filter(PlacedRow::isPlaced)
                .mapToDouble(row -> grams(row.mass(state)))
                .sum();
    }

    private static double grams(@Nullable Mass mass) {
        return mass == null ? 0 : mass.grams();
    }

    private static Stream<PlacedRow> rows(CaseBalance aboard, Set<String> lines) {
        return aboard.rows().stream()
                .filter(row ->
                        row.row().line() != null && lines.contains(row.row().line()));
    }

    private Stream<Double> each(ToDoubleBiFunction<CaseBalance, MassState> grams) {
        return aims.stream()
                .map(aim -> grams.applyAsDouble(aboard(aim), aim.point().state()));
    }

    private CaseBalance aboard(Aim aim) {
        return statement.loadCase(aim.point().loadCase()).orElseThrow();
    }
}
