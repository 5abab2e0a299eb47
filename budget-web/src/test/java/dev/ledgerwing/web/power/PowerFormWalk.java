package dev.ledgerwing.web.power;

import dev.ledgerwing.web.forms.RecordFormWalk;

/** An airframe, and a browser to fill in forms on its supply. */
abstract class PowerFormWalk extends RecordFormWalk {

    final String power = page;

    PowerFormWalk() {
        super("power");
    }
}
