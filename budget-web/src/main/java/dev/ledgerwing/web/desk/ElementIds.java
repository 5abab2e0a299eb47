package dev.ledgerwing.web.desk;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.PartLine;
import java.security.SecureRandom;
import java.util.HashSet;
import java.util.Set;
import java.util.function.Supplier;
import java.util.random.RandomGenerator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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
        return freshLines(build).get();
    }

    /** Ids for many new lines of one build: none that it has, and none twice. */
    public Supplier<String> freshLines(Build build) {
        Set<String> taken = build.lines().stream().map(PartLine::id).collect(Collectors.toCollection(HashSet::new));
        return () -> Stream.generate(this::next).filter(taken::add).findFirst().orElseThrow();
    }

    /** An id out of nearly a thousand million: among ten thousand of them two may well be the same. */
    public String next() {
        StringBuilder id = new StringBuilder("L");
        for (int i = 0; i < LENGTH; i++) {
            id.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
        }
        return id.toString();
    }
}
