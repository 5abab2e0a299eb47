package dev.ledgerwing.web.radio;

import dev.ledgerwing.web.airframe.AirframePage;
import dev.ledgerwing.web.forms.RecordForm;

/** A form that belongs to the radio page. */
interface RadioForm extends RecordForm {

    @Override
    default AirframePage page() {
        return AirframePage.RADIO;
    }
}
