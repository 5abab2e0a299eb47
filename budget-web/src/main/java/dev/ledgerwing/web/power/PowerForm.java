package dev.ledgerwing.web.power;

import dev.ledgerwing.web.airframe.AirframePage;
import dev.ledgerwing.web.forms.RecordForm;

/** A form that belongs to the power page. */
interface PowerForm extends RecordForm {

    @Override
    default AirframePage page() {
        return AirframePage.POWER;
    }
}
