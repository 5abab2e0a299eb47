package dev.ledgerwing.web.desk;

import dev.ledgerwing.web.support.Refusal;
import org.springframework.http.HttpStatus;

/** A record that could be written but not kept or read again. */
final class RecordTooLarge extends Refusal {

    private static final long serialVersionUID = 1;

    RecordTooLarge() {
        super(
                HttpStatus.UNPROCESSABLE_CONTENT,
                "The record would grow beyond what one airframe can hold, so nothing was stored.");
    }
}
