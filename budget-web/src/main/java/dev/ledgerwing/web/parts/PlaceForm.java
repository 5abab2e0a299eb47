package dev.ledgerwing.web.parts;

import dev.ledgerwing.core.build.LinePlace;
import dev.ledgerwing.core.build.LinePlace.Size;
import dev.ledgerwing.core.build.LinePlace.Travel;
import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Length;
import org.jspecify.annotations.Nullable;

/** What was typed of a part's place beside its station; text until {@link PlaceEntry} reads it. */
record PlaceForm(
        String uncertainty,
        String stowedX,
        String stowedY,
        String stowedZ,
        String travelFrom,
        String travelTo,
        String length,
        String width,
        String height,
        String mirroredAt) {

    static final PlaceForm EMPTY = new PlaceForm("", "", "", "", "", "", "", "", "", "");

    PlaceForm {
        uncertainty = text(uncertainty);
        stowedX = text(stowedX);
        stowedY = text(stowedY);
        stowedZ = text(stowedZ);
        travelFrom = text(travelFrom);
        travelTo = text(travelTo);
        length = text(length);
        width = text(width);
        height = text(height);
        mirroredAt = text(mirroredAt);
    }

    private static String text(@Nullable String typed) {
        return typed == null ? "" : typed.strip();
    }

    static PlaceForm of(LinePlace place, Figures figures) {
        Station stowed = place.stowedStation();
        Travel travel = place.travel();
        Size size = place.size();
        return new PlaceForm(
                shown(place.stationUncertainty(), figures),
                shown(stowed == null ? null : stowed.x(), figures),
                shown(stowed == null ? null : stowed.y(), figures),
                shown(stowed == null ? null : stowed.z(), figures),
                shown(travel == null ? null : travel.fromX(), figures),
                shown(travel == null ? null : travel.toX(), figures),
                shown(size == null ? null : size.length(), figures),
                shown(size == null ? null : size.width(), figures),
                shown(size == null ? null : size.height(), figures),
                shown(place.mirroredAtY(), figures));
    }

    private static String shown(@Nullable Length length, Figures figures) {
        return length == null ? "" : figures.exactLength(length);
    }

    /** As {@link PartForm#onTopOf}. */
    PlaceForm onTopOf(PlaceForm base, PlaceForm head) {
        return new PlaceForm(
                PartForm.pick(uncertainty, base.uncertainty, head.uncertainty),
                PartForm.pick(stowedX, base.stowedX, head.stowedX),
                PartForm.pick(stowedY, base.stowedY, head.stowedY),
                PartForm.pick(stowedZ, base.stowedZ, head.stowedZ),
                PartForm.pick(travelFrom, base.travelFrom, head.travelFrom),
                PartForm.pick(travelTo, base.travelTo, head.travelTo),
                PartForm.pick(length, base.length, head.length),
                PartForm.pick(width, base.width, head.width),
                PartForm.pick(height, base.height, head.height),
                PartForm.pick(mirroredAt, base.mirroredAt, head.mirroredAt));
    }
}
