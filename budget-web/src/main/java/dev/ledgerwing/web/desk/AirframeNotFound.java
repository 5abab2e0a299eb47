package dev.ledgerwing.web.desk;

/** There is no such airframe, or it has no such revision. */
public final class AirframeNotFound extends RuntimeException {

    private static final long serialVersionUID = 1;

    AirframeNotFound(String what) {
        super(what);
    }
}
