package dev.ledgerwing.core.power;

import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.FeedElement.Kind;
import dev.ledgerwing.core.build.Regulator;

/** What the ready-made supplies are made of: nothing is known of it but what it is. */
final class StartElements {

    private StartElements() {}

    static FeedElement plug() {
        return FeedElement.rated("Plug", Kind.CONNECTOR, null);
    }

    static FeedElement fuse() {
        return FeedElement.rated("Fuse", Kind.FUSE, null);
    }

    static FeedElement mainSwitch() {
        return FeedElement.rated("Main switch", Kind.SWITCH, null);
    }

    static FeedElement chargingSwitch() {
        return FeedElement.rated("Charging switch", Kind.SWITCH, null);
    }

    static FeedElement diode() {
        return FeedElement.diode("Diode", null, null);
    }

    /** A switching one: what most are; its efficiency and its limits are not known. */
    static FeedElement regulator(double outputV) {
        return FeedElement.regulator(
                "Regulator",
                null,
                null,
                new Regulator(Regulator.Type.SWITCHING, outputV, null, null, null, null, null));
    }
}
