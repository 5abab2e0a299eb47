package dev.ledgerwing.core.build;

/** What kind of thing a part is; growth allowances and correlations go by it. */
public enum Category {
    STRUCTURE("Structure"),
    FASTENING("Fastening, glue and covering"),
    PROPULSION("Propulsion"),
    BATTERY("Battery"),
    SOLAR("Solar"),
    AVIONICS("Avionics"),
    RADIO("Radio"),
    SERVO("Servo"),
    WIRING("Wiring"),
    LANDING_GEAR("Landing gear"),
    PAYLOAD("Payload"),
    BALLAST("Ballast");

    private final String title;

    Category(String title) {
        this.title = title;
    }

    public String title() {
        return title;
    }
}
