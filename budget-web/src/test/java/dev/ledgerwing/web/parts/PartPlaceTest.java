package dev.ledgerwing.web.parts;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.LinePlace;
import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.UnitSystem;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.MutablePropertyValues;
import org.springframework.validation.BindingResult;
import org.springframework.validation.MapBindingResult;

/** Where a part may sit, how large it is, where it is stowed. */
class PartPlaceTest {

    private static final LinePlace WHOLE = new LinePlace(
            Station.atX(Length.ofMm(300)),
            Length.ofMm(2),
            new Station(Length.ofMm(310), Length.ZERO, Length.ofMm(-20)),
            new LinePlace.Travel(Length.ofMm(160), Length.ofMm(340)),
            new LinePlace.Size(Length.ofMm(160), Length.ofMm(70), Length.ofMm(60)),
            Length.ofMm(400));

    private final BindingResult problems = new MapBindingResult(Map.of(), "form");

    private LinePlace read(PlaceForm form, LinePlace old, Figures figures) {
        return new PlaceEntry(form, old, figures, problems).at(old.station(), 2);
    }

    @Test
    void whatIsShownIsReadBackExactlyInAnyUnits() {
        for (UnitSystem units : UnitSystem.values()) {
            Figures figures = new Figures(units);
            assertThat(read(PlaceForm.of(WHOLE, figures), WHOLE, figures)).isEqualTo(WHOLE);
        }
        assertThat(problems.hasErrors()).isFalse();
    }

    @Test
    void anEmptyFormIsAnUnknownPlace() {
        assertThat(read(PlaceForm.EMPTY, LinePlace.UNKNOWN, Figures.METRIC)).isEqualTo(LinePlace.UNKNOWN);
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
                    travelFrom; 400; The front end is the smaller number
                    travelTo; ''; Please give both ends
                    width; ''; Please give length, width and height
                    height; -3; This is from 0 mm to 100 m
                    uncertainty; 2 kg; is not a length
                    stowedX; ''; how far aft of the datum
                    mirroredAt; 900 m; at most 100 m
                    """)
    void whatCannotBeIsSaidAtItsField(String field, String typed, String sentence) {
        read(typed(field, typed), WHOLE, Figures.METRIC);
        assertThat(problems.getFieldError("place." + field))
                .isNotNull()
                .satisfies(error -> assertThat(error.getDefaultMessage()).contains(sentence));
    }

    private static PlaceForm typed(String field, String text) {
        PlaceForm whole = PlaceForm.of(WHOLE, Figures.METRIC);
        MutablePropertyValues typed = new MutablePropertyValues(Map.of(field, text));
        return new PlaceForm(
                over(typed, "uncertainty", whole.uncertainty()),
                over(typed, "stowedX", whole.stowedX()),
                over(typed, "stowedY", whole.stowedY()),
                over(typed, "stowedZ", whole.stowedZ()),
                over(typed, "travelFrom", whole.travelFrom()),
                over(typed, "travelTo", whole.travelTo()),
                over(typed, "length", whole.length()),
                over(typed, "width", whole.width()),
                over(typed, "height", whole.height()),
                over(typed, "mirroredAt", whole.mirroredAt()));
    }

    private static String over(MutablePropertyValues typed, String field, String shown) {
        Object text = typed.get(field);
        return text == null ? shown : text.toString();
    }

    @Test
    void aPairNeedsAnEvenQuantity() {
        new PlaceEntry(PlaceForm.of(WHOLE, Figures.METRIC), WHOLE, Figures.METRIC, problems).at(WHOLE.station(), 3);
        assertThat(problems.getFieldError("place.mirroredAt")).isNotNull();
    }
}
