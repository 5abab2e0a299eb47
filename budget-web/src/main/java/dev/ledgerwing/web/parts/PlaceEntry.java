package dev.ledgerwing.web.parts;

import dev.ledgerwing.core.build.LinePlace;
import dev.ledgerwing.core.build.LinePlace.Size;
import dev.ledgerwing.core.build.LinePlace.Travel;
import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.QuantityText;
import dev.ledgerwing.core.quantity.Reading;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.BindingResult;

/** Reads what was typed of a part's place, with a sentence at every field that is wrong; as {@link PartEntry} does. */
final class PlaceEntry {

    private static final double LARGEST_LENGTH_MM = 100_000;

    private final PlaceForm form;
    private final LinePlace old;
    private final Figures figures;
    private final BindingResult problems;

    PlaceEntry(PlaceForm form, LinePlace old, Figures figures, BindingResult problems) {
        this.form = form;
        this.old = old;
        this.figures = figures;
        this.problems = problems;
    }

    /** The place with {@code station}; what is wrong in it reads as not known. */
    LinePlace at(@Nullable Station station, int quantity) {
        Length uncertainty = extent("uncertainty", form.uncertainty(), old.stationUncertainty());
        Length mirroredAt = coordinate("mirroredAt", form.mirroredAt(), old.mirroredAtY());
        if (mirroredAt != null && quantity % 2 != 0) {
            wrong("mirroredAt", "Half of the pieces sit on each side, so the quantity must be even.");
        }
        LinePlace read = new LinePlace(station, uncertainty, stowed(), travel(), size(), mirroredAt);
        return problems.hasErrors() ? LinePlace.UNKNOWN : read;
    }

    private @Nullable Station stowed() {
        Station was = old.stowedStation();
        Length x = coordinate("stowedX", form.stowedX(), was == null ? null : was.x());
        Length y = coordinate("stowedY", form.stowedY(), was == null ? null : was.y());
        Length z = coordinate("stowedZ", form.stowedZ(), was == null ? null : was.z());
        if (x == null && y == null && z == null) {
            return null;
        }
        if (x == null) {
            missing("stowedX", "Please give how far aft of the datum it is when stowed, too.");
            return null;
        }
        return new Station(x, y == null ? Length.ZERO : y, z == null ? Length.ZERO : z);
    }

    private @Nullable Travel travel() {
        Travel was = old.travel();
        Length from = coordinate("travelFrom", form.travelFrom(), was == null ? null : was.fromX());
        Length to = coordinate("travelTo", form.travelTo(), was == null ? null : was.toX());
        if (from == null && to == null) {
            return null;
        }
        if (from == null || to == null) {
            missing(from == null ? "travelFrom" : "travelTo", "Please give both ends of where it may sit.");
            return null;
        }
        if (from.compareTo(to) > 0) {
            wrong("travelFrom", "The front end is the smaller number of the two.");
            return null;
        }
        return new Travel(from, to);
    }

    private @Nullable Size size() {
        Length length = extent("length", form.length(), of(old.size(), Size::length));
        Length width = extent("width", form.width(), of(old.size(), Size::width));
        Length height = extent("height", form.height(), of(old.size(), Size::height));
        if (length == null && width == null && height == null) {
            return null;
        }
        if (length == null || width == null || height == null) {
            String field = length == null ? "length" : width == null ? "width" : "height";
            missing(field, "Please give length, width and height of its box, or none of them.");
            return null;
        }
        return new Size(length, width, height);
    }

    private static @Nullable Length of(@Nullable Size size, Function<Size, Length> side) {
        return size == null ? null : side.apply(size);
    }

    private @Nullable Length extent(String field, String typed, @Nullable Length stored) {
        Length length = coordinate(field, typed, stored);
        if (length != null && length.um() < 0) {
            wrong(field, "This is from 0 mm to 100 m.");
            return null;
        }
        return length;
    }

    private @Nullable Length coordinate(String field, String typed, @Nullable Length stored) {
        if (stored != null && typed.equals(figures.exactLength(stored))) {
            return stored;
        }
        Reading<Length> reading = QuantityText.length(typed, figures.units().lengthUnit());
        reading.problem().ifPresent(problem -> wrong(field, "This " + problem + "."));
        Length length = reading.found();
        if (length != null && Math.abs(length.mm()) > LARGEST_LENGTH_MM) {
            wrong(field, "This is at most 100 m, either way.");
            return null;
        }
        return length;
    }

    private void wrong(String field, String sentence) {
        problems.rejectValue("place." + field, "wrong", sentence);
    }

    /** Says what is missing, once: not where the field is wrong in itself. */
    private void missing(String field, String sentence) {
        if (!problems.hasFieldErrors("place." + field)) {
            wrong(field, sentence);
        }
    }
}
