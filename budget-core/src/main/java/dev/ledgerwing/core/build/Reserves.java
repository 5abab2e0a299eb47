package dev.ledgerwing.core.build;

/** The margin wanted at each stage, in per cent of the target. */
public record Reserves(
        double conceptPercent,
        double designPercent,
        double buildPercent,
        double flightTestPercent,
        double inServicePercent) {

    /** The project's own choice; from no publication. */
    public static final Reserves OWN_CHOICE = new Reserves(15, 10, 5, 2, 0);

    public Reserves {
        Check.within("conceptPercent", conceptPercent, 0, 90, " %");
        Check.within("designPercent", designPercent, 0, 90, " %");
        Check.within("buildPercent", buildPercent, 0, 90, " %");
        Check.within("flightTestPercent", flightTestPercent, 0, 90, " %");
        Check.within("inServicePercent", inServicePercent, 0, 90, " %");
    }

    public double percent(Stage stage) {
        return switch (stage) {
            case CONCEPT -> conceptPercent;
            case DESIGN -> designPercent;
            case BUILD -> buildPercent;
            case FLIGHT_TEST -> flightTestPercent;
            case IN_SERVICE -> inServicePercent;
        };
    }
}
