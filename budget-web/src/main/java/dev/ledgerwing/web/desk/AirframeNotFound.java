package dev.ledgerwing.web.desk;

import dev.ledgerwing.web.support.Refusal;
import org.springframework.http.HttpStatus;

/** There is no such airframe, or it has no such revision. */
public final class AirframeNotFound extends Refusal {

    private static final long serialVersionUID = 1;

    AirframeNotFound(String what) {
        super(HttpStatus.NOT_FOUND, what);
    }
}
