package dev.ledgerwing.core.balance.correction;

import dev.ledgerwing.core.build.LinePlace;
import dev.ledgerwing.core.build.LinePlace.Travel;
import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Length;
import org.jspecify.annotations.Nullable;

/** A shift aft along x; negative is forward. */
record AlongX(Length by) {

    Station of(Station station) {
        return new Station(station.x().plus(by), station.y(), station.z());
    }

    private @Nullable Station ofKnown(@Nullable Station station) {
        return station == null ? null : of(station);
    }

    /** The part moved where its fixing lets it: where it is stowed goes along, how far it may travel stays. */
    LinePlace of(LinePlace place) {
        return new LinePlace(
                ofKnown(place.station()),
                place.stationUncertainty(),
                ofKnown(place.stowedStation()),
                place.travel(),
                place.size(),
                place.mirroredAtY());
    }

    /** The part moved with what it sits in: its travel goes along. */
    LinePlace ofSurroundings(LinePlace place) {
        LinePlace moved = of(place);
        Travel travel = place.travel();
        return new LinePlace(
                moved.station(),
                moved.stationUncertainty(),
                moved.stowedStation(),
                travel == null
                        ? null
                        : new Travel(travel.fromX().plus(by), travel.toX().plus(by)),
                moved.size(),
                moved.mirroredAtY());
    }

    /** {@code 42 mm forward}. */
    String words(Figures figures) {
        return figures.length(new Length(Math.abs(by.um()))) + (by.um() < 0 ? " forward" : " aft");
    }
}
