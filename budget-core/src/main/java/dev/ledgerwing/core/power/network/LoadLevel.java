package dev.ledgerwing.core.power.network;

/** How much of its loads a network is asked to carry. */
public enum LoadLevel {
    /** Nothing draws anything. */
    NONE,
    /** Typical currents times the share of the phase that they run: what a pack is emptied by. */
    ENERGY,
    /** Full typical currents of everything that runs in the phase at all: what continuous ratings are held against. */
    CONTINUOUS,
    /** Peaks of everything that runs in the phase; of loads that exclude each other, the largest of each rail alone. */
    PEAK
}
