package dev.ledgerwing.web.desk;

import dev.ledgerwing.core.build.Build;
import java.security.SecureRandom;
import java.util.random.RandomGenerator;
import org.springframework.stereotype.Component;

/** Gives ids to new parts: short and random, so that no two members and no two revisions give the same. */
@Component
public class ElementIds {

    /** Without letters and digits that are mistaken for each other on paper. */
    private static final String LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ23456789";

    private static final int LENGTH = 6;

    private final RandomGenerator random = new SecureRandom();

    /** An id that no line of the build has. */
    public String freshLine(Build build) {
        String id;
        do {
            id = next();
        } while (build.line(id).isPresent());
        return id;
    }

    /** An id out of a thousand million, for many lines at once. */
    public String next() {
        StringBuilder id = new StringBuilder("L");
        for (int i = 0; i < LENGTH; i++) {
            id.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
        }
        return id.toString();
    }
}
