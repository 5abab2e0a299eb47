package dev.ledgerwing.core.build;

/**
 * A group of parts that is built, weighed and carried together.
 *
 * @param movesWith which part of the airframe carries it along when the design shifts
 */
public record Assembly(String code, String name, MovesWith movesWith) implements Element {

    /** The parts of an airframe that can shift against each other on the drawing. */
    public enum MovesWith {
        FUSELAGE,
        WING,
        NOSE,
        TAIL
    }

    public Assembly {
        Check.slug("code", code);
        Check.name("name", name);
    }

    @Override
    public String id() {
        return code;
    }
}
