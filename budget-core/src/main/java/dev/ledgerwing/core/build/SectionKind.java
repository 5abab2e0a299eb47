package dev.ledgerwing.core.build;

import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** The parts of the record that are there once, without an identity of their own. */
public enum SectionKind {
    AIRFRAME("airframe", Airframe.class, Build::airframe),
    BUDGET("mass budget", MassBudget.class, Build::budget),
    JUDGED_BY("rules it is judged by", JudgedBy.class, Build::judgedBy),
    GEOMETRY("geometry and limits", Geometry.class, Build::geometry),
    POWER_RULES("rules of the supply", PowerRules.class, build -> build.power().rules()),
    SOLAR_DAY("day in the sun", SolarDay.class, build -> build.power().day()),
    RADIO_LINK("radio link", RadioLink.class, build -> build.radio().link()),
    FITTED_BOARD(
            "flight controller aboard",
            FittedBoard.class,
            build -> build.outputs().fitted()),
    BOOKING("booking", Booking.class, Build::booking);

    private final String word;
    private final Class<? extends Record> type;
    private final Function<Build, @Nullable Record> reader;

    SectionKind(String word, Class<? extends Record> type, Function<Build, @Nullable Record> reader) {
        this.word = word;
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
        return word;
    }
}
