package dev.ledgerwing.web.power;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.SolarDay;
import dev.ledgerwing.web.desk.Deed;
import dev.ledgerwing.web.forms.Bounds;
import dev.ledgerwing.web.forms.Choices;
import dev.ledgerwing.web.forms.Entries;
import dev.ledgerwing.web.forms.Shown;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The day in the sun that is looked at. */
record DayForm(LocalDate today) implements PowerForm {

    private static final int LONGEST_PLACE = 200;
    private static final SolarDay NOWHERE_YET =
            new SolarDay(null, 0, 0, LocalDate.EPOCH, 0, 0, 15, 100, 90, null, 6, 100, null);

    @Override
    public String view() {
        return "power/day";
    }

    @Override
    public void show(Build build, Shown fields) {
        SolarDay recorded = build.power().day();
        SolarDay day = recorded == null ? NOWHERE_YET : recorded;
        fields.text("place", day.place())
                .amount("latitude", recorded == null ? null : (Double) recorded.latitudeDeg())
                .amount("longitude", recorded == null ? null : (Double) recorded.longitudeDeg())
                .text("date", (recorded == null ? today : day.date()).toString())
                .hours("ahead", recorded == null ? null : (Double) recorded.utcOffsetHours())
                .amount("elevation", day.elevationM())
                .amount("air", day.airC())
                .amount("sky", day.skyPercent())
                .amount("chain", day.chainPercent())
                .amount("heading", day.headingDeg())
                .hours("start", day.startHour())
                .amount("charge", day.startPercent())
                .text("phase", day.phase());
    }

    @Override
    public Map<String, Object> surroundings(Build build, Entries entries) {
        return Map.of(
                "isNew",
                build.power().day() == null,
                "phases",
                Choices.optional("the one that stretches", Choices.names(build.phases())));
    }

    @Override
    public Optional<Deed> deed(Entries entries, Build seen) {
        String place = entries.line("place", LONGEST_PLACE);
        Where where = Where.of(entries);
        LocalDate date = entries.needed("date", entries.day("date"), LocalDate.EPOCH, "Please give the day.");
        Double start = entries.needed("start", entries.hour("start"), 0.0, "Please give when it begins.");
        Double air = needed("air", PowerBounds.AIR, entries);
        Double sky = needed("sky", PowerBounds.SKY, entries);
        Double chain = needed("chain", PowerBounds.SHARE, entries);
        Double charge = needed("charge", PowerBounds.CHARGE, entries);
        Double heading = entries.amount("heading", PowerBounds.HEADING);
        String phase = entries.code("phase", Choices.names(seen.phases()).keySet());
        if (!entries.areFine()) {
            return Optional.empty();
        }
        SolarDay wanted = new SolarDay(
                place.isEmpty() ? null : place,
                where.latitude(),
                where.longitude(),
                date,
                where.ahead(),
                where.elevation(),
                air,
                sky,
                chain,
                heading,
                start,
                charge,
                phase);
        return Optional.of(Deed.fitting(
                "Day in the sun" + (seen.power().day() == null ? " entered" : " edited"),
                build -> build.withSolarDay(wanted)));
    }

    /** Where on the earth, how high, and by which clock. */
    private record Where(double latitude, double longitude, double elevation, double ahead) {

        static Where of(Entries entries) {
            Double latitude = needed("latitude", PowerBounds.LATITUDE, entries);
            Double longitude = needed("longitude", PowerBounds.LONGITUDE, entries);
            Double elevation = needed("elevation", PowerBounds.ELEVATION, entries);
            Double ahead = entries.needed(
                    "ahead", entries.hoursAhead("ahead"), 0.0, "Please give how far the clock is ahead.");
            return new Where(latitude, longitude, elevation, ahead);
        }
    }

    /** The figure typed, or in the range of it and a sentence that it is missing. */
    private static Double needed(String field, Bounds bounds, Entries entries) {
        @Nullable Double read = entries.amount(field, bounds);
        return entries.needed(field, read, bounds.least(), "Please give this figure.");
    }

    static Deed removal() {
        return Deed.fitting("Day in the sun removed", build -> build.withSolarDay(null));
    }
}
