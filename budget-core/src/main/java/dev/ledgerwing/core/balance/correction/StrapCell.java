package dev.ledgerwing.core.balance.correction;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * Where to strap one pack in one load case, the others staying where they are: either a range of stations, or what stands in the way.
 *
 * @param loadCase code of the case, {@code caseName} what people call it
 * @param range null = it cannot be done
 * @param obstacle null = it can be done
 * @param beyondMm how much farther the pack would have to go than it can; 0 where that is not the obstacle
 */
public record StrapCell(
        String loadCase,
        String caseName,
        @Nullable StrapRange range,
        @Nullable Obstacle obstacle,
        double beyondMm) {

    /**
     * Stations of the pack that land the case, and all between them do, in whole millimetres as read with a ruler.
     *
     * @param bestXMm the one that leaves as much to either limit as can be
     */
    public record StrapRange(double foremostXMm, double aftmostXMm, double bestXMm) {}

    /** Why a pack cannot be strapped anywhere. */
    public enum Obstacle {
        AT_HOME("It stays at home."),
        NO_MASS("Its mass is not known."),
        NO_STATION("Nobody has said where it sits."),
        NO_LIMITS("There are no limits to balance it by."),
        INCOMPLETE("Not every mass and station aboard is known: enter what is missing first."),
        NO_ROOM("Travel, bay and the rules to keep apart leave no place for it."),
        TOO_FAR_FORWARD("forward"),
        TOO_FAR_AFT("aft"),
        NOWHERE("No place of this pack alone brings the case inside its limits.");

        private final String words;

        Obstacle(String words) {
            this.words = words;
        }
    }

    static StrapCell at(CasePlaces places, StrapRange range) {
        return new StrapCell(places.loadCase().code(), places.loadCase().name(), range, null, 0);
    }

    static StrapCell cannot(CasePlaces places, Obstacle obstacle, double beyondMm) {
        return new StrapCell(places.loadCase().code(), places.loadCase().name(), null, obstacle, beyondMm);
    }

    public boolean isPossible() {
        return range != null;
    }

    /** Why it cannot be done, in a sentence; empty where it can. */
    public String reason(Figures figures) {
        if (obstacle == null) {
            return "";
        }
        return switch (obstacle) {
            case TOO_FAR_FORWARD, TOO_FAR_AFT ->
                "It would have to go " + figures.length(Length.ofMm(Math.ceil(beyondMm))) + " farther " + obstacle.words
                        + " than it can.";
            default -> obstacle.words;
        };
    }
}
