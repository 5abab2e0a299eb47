package dev.ledgerwing.core.build;

import java.util.Locale;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** The parts of the record that are there once, without an identity of their own. */
public enum SectionKind {
    AIRFRAME(Airframe.class, Build::airframe),
    BUDGET(MassBudget.class, Build::budget),
    JUDGED_BY(JudgedBy.class, Build::judgedBy),
    BOOKING(Booking.class, Build::booking);

    private final Class<? extends Record> type;
    private final Function<Build, @Nullable Record> reader;

    SectionKind(Class<? extends Record> type, Function<Build, @Nullable Record> reader) {
        this.type = type;
        this.reader = reader;
    }

    public Class<? extends Record> type() {
        return type;
    }

    public @Nullable Record in(Build build) {
        return reader.apply(build);
    }

    /** The word people use for it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
