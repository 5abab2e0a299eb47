package dev.ledgerwing.core.build;

/** How far an airframe has come. */
public enum Stage {
    CONCEPT("Concept"),
    DESIGN("Design"),
    BUILD("Build"),
    FLIGHT_TEST("Flight test"),
    IN_SERVICE("In service");

    private final String title;

    Stage(String title) {
        this.title = title;
    }

    public String title() {
        return title;
    }

    public boolean isAtLeast(Stage other) {
        return compareTo(other) >= 0;
    }
}
