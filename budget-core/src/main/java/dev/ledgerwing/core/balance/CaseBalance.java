package dev.ledgerwing.core.balance;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.LoadCase;
import dev.ledgerwing.core.build.MassUncertainty;
import dev.ledgerwing.core.mass.BookingsAboard;
import dev.ledgerwing.core.mass.CaseMass;
import dev.ledgerwing.core.mass.MassRow;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Where one load case balances. Basic: the lines aboard and the extra items; predicted: with growth at each line's own station, and
 * with what is booked. Rows without a mass or a station are in no sum.
 *
 * @param rows the lines aboard in the ledger's order, then the extra items, each where it sits in this case
 * @param booked what the scales said and no line explains, of the airframe and of every assembly that is aboard
 * @param basic the sum of the rows at basic mass
 * @param predicted the sum of the rows at predicted mass and of what is booked
 * @param rules how far masses may be off
 */
public record CaseBalance(
        LoadCase loadCase,
        List<PlacedRow> rows,
        List<BookedMass> booked,
        BalanceSum basic,
        BalanceSum predicted,
        MassUncertainty rules) {

    public CaseBalance {
        rows = List.copyOf(rows);
        booked = List.copyOf(booked);
    }

    static CaseBalance of(Build build, CaseMass aboard, Stations stations) {
        List<PlacedRow> rows = stations.of(aboard);
        List<BookedMass> booked = new BookedMasses(rows).of(BookingsAboard.of(build, aboard.loadCase()));
        return new CaseBalance(
                aboard.loadCase(),
                rows,
                booked,
                BalanceGroup.sum(rows, MassState.BASIC),
                BalanceGroup.sum(rows, MassState.PREDICTED).plus(BalanceGroup.sum(booked)),
                build.judgedBy().massUncertainty());
    }

    public boolean isFlight() {
        return loadCase.purpose() == LoadCase.Purpose.FLIGHT;
    }

    public BalanceSum sum(MassState state) {
        return state == MassState.BASIC ? basic : predicted;
    }

    /** The CG of what is placed; empty where that weighs nothing. */
    public Optional<Cg> cg(MassState state) {
        return sum(state).cg();
    }

    /** Standard uncertainty of {@link #cg}; worked out anew at each call. */
    public Optional<CgUncertainty> uncertainty(MassState state) {
        return cg(state).map(cg -> new CgErrors(this, state, cg, rules).all());
    }

    /** The first of {@link #uncertainty}, for whoever asks often. */
    public OptionalDouble uncertaintyXMm(MassState state) {
        return cg(state)
                .map(cg -> OptionalDouble.of(new CgErrors(this, state, cg, rules).along(Axis.X)))
                .orElse(OptionalDouble.empty());
    }

    /** Moments of inertia about the CG at basic mass; empty where nothing is placed. */
    public Optional<Inertia> inertia() {
        return cg(MassState.BASIC).map(cg -> Inertia.of(this, cg));
    }

    /** The rows whose mass is not known. */
    public List<PlacedRow> withoutMass() {
        return rows.stream().filter(row -> !row.row().isKnown()).toList();
    }

    /** The rows that have a mass, but nobody has said where. */
    public List<PlacedRow> withoutStation() {
        return rows.stream().filter(PlacedRow::lacksStation).toList();
    }

    /** Whether each row has a mass and a station, and there is something to balance at either mass. */
    public boolean isKnown() {
        return withoutMass().isEmpty()
                && withoutStation().isEmpty()
                && cg(MassState.BASIC).isPresent()
                && cg(MassState.PREDICTED).isPresent();
    }

    /** Whether a line is stowed in this case and not moved elsewhere. */
    boolean isStowed(MassRow row) {
        return row.line() != null
                && loadCase.stowed().contains(row.line())
                && !loadCase.moved().containsKey(row.line());
    }
}
