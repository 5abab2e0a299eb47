package dev.ledgerwing.web.desk;

/** Another airframe has this code. */
public final class AirframeCodeTaken extends RuntimeException {

    private static final long serialVersionUID = 1;

    AirframeCodeTaken(String code) {
        super("there is an airframe “" + code + "” already");
    }
}
