package dev.ledgerwing.web.balance;

import dev.ledgerwing.web.airframe.AirframePage;
import dev.ledgerwing.web.forms.RecordForm;

/** A form that belongs to the balance page. */
interface BalanceForm extends RecordForm {

    @Override
    default AirframePage page() {
        return AirframePage.BALANCE;
    }
}
