package dev.ledgerwing.core.build;

import org.jspecify.annotations.Nullable;

/**
 * Which airframe the record is about.
 *
 * @param code lower-case slug, unique in the team
 * @param datum the point of the drawing that stations are measured from, in words
 */
public record Airframe(String code, String name, @Nullable String purpose, Stage stage, String datum)
        implements FieldGroup {

    public Airframe {
        Check.slug("code", code);
        Check.name("name", name);
        Check.text("purpose", purpose, 2000);
        Check.name("datum", datum);
    }
}
