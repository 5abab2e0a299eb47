package dev.ledgerwing.core.balance.correction;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** One thing to do to a record: what it does, what it costs, and how it reads. */
public sealed interface CorrectionStep
        permits MovePart, AddBallast, TakeOutBallast, ShiftWing, LengthenNose, LeaveAtHome, OtherMass {

    CorrectionKind kind();

    /**
     * The record with it done.
     *
     * @param newIds ids for the lines it adds, none of them taken
     * @throws IllegalArgumentException when the record cannot take it
     */
    Build on(Build build, Supplier<String> newIds);

    /** One plain sentence, in the reader's units. */
    String sentence(Figures figures);

    /** What it adds to the ledger; negative saves. */
    Mass cost();

    /** How far something moves, in millimetres; 0 where nothing does. */
    double movementMm();

    /** What it is about, for a steady order. */
    String subject();

    /** The line it changes; null where it changes none or many. */
    @Nullable
    String line();

    /** Short and the same for the same step on the same record: what a form sends back. */
    String key();

    /** What has to be declared or looked at again after it, in sentences. */
    default List<String> declareAgain() {
        return List.of();
    }
}
