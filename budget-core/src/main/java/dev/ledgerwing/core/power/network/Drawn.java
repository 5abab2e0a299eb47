package dev.ledgerwing.core.power.network;

/** What a network is solved for; {@code demandA} of each of its loads, at nominal voltage. */
@SuppressWarnings("ArrayRecordComponent") // never compared
record Drawn(Charge charge, LoadLevel level, double[] demandA) {}
