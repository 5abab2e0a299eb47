package dev.ledgerwing.web.radio;

import dev.ledgerwing.core.radio.Coupling;
import java.util.List;

/** What cannot be had together because functions share a channel. */
record CouplingRow(int channel, String sentence) {

    static List<CouplingRow> of(List<Coupling> couplings) {
        return couplings.stream()
                .map(coupling -> new CouplingRow(coupling.channel(), coupling.sentence()))
                .toList();
    }
}
