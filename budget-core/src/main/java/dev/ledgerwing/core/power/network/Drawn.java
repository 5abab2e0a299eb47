package dev.ledgerwing.core.power.network;

/** What a network is solved for; {@code demandA} of each of its loads, at nominal voltage. */
@SuppressWarnings("ArrayRecordComponent") // never compared
record Drawn(Charge charge, LoadLevel level, double[] demandA) {

    /**
     * With nothing drawn a diode loses next to nothing: the highest voltage is the one ahead of it. With anything drawn it is taken to lose
     * what it loses at full current.
     */
    boolean losesInDiodes() {
        return level != LoadLevel.NONE;
    }
}
