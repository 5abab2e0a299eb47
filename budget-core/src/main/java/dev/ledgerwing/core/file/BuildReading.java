package dev.ledgerwing.core.file;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Problem;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What came of reading a build file: the record, or everything that is wrong with the file and where. */
public record BuildReading(@Nullable Build found, List<Problem> problems) {

    public BuildReading {
        problems = List.copyOf(problems);
    }

    static BuildReading of(Build build) {
        return new BuildReading(build, List.of());
    }

    static BuildReading refused(List<Problem> problems) {
        return new BuildReading(null, problems);
    }

    static BuildReading refused(String place, String sentence) {
        return refused(List.of(new Problem(place, sentence)));
    }

    public Optional<Build> build() {
        return Optional.ofNullable(found);
    }
}
