package dev.ledgerwing.web.outputs;

import dev.ledgerwing.web.airframe.AirframePage;
import dev.ledgerwing.web.forms.RecordForm;

/** A form that belongs to the outputs page. */
interface OutputsForm extends RecordForm {

    @Override
    default AirframePage page() {
        return AirframePage.OUTPUTS;
    }
}
