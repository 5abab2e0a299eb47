package dev.ledgerwing.core.review;

import dev.ledgerwing.core.radio.FrameTiming;
import dev.ledgerwing.core.radio.RadioStatement;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The figures of the radio budget under their names; what is not known is left out. */
final class RadioFigures {

    static final String CHANNELS_NEEDED = "radio.channelsNeeded";
    static final String CHANNELS_AVAILABLE = "radio.channelsAvailable";

    private final Map<String, Double> figures = new LinkedHashMap<>();

    private RadioFigures() {}

    /** What is shared is told of the plan in force, where there is one. */
    static Map<String, Double> of(RadioStatement statement) {
        RadioFigures radio = new RadioFigures();
        radio.put(CHANNELS_NEEDED, statement.channelsNeeded());
        radio.put(CHANNELS_AVAILABLE, statement.channelsAvailable());
        if (!statement.inForce().isEmpty()) {
            radio.put("radio.sharedPairs", statement.sharedPairs());
            radio.put("radio.sharedWeight", statement.sharedWeight());
        }
        FrameTiming frame = statement.frame();
        radio.put("radio.frameGapUs", frame == null ? null : frame.gapUs());
        return radio.figures;
    }

    private void put(String name, @Nullable Number value) {
        if (value != null) {
            figures.put(name, value.doubleValue());
        }
    }
}
