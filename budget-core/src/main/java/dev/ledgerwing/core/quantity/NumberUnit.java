package dev.ledgerwing.core.quantity;

import java.util.Map;
import java.util.Optional;

/** What plain numbers count in, and the units that people may write behind them: each with how many of the first one it is. */
public enum NumberUnit {
    AMPERE("A", "a current such as 5, 2.5 A or 800 mA", Map.of("a", 1.0, "amp", 1.0, "amps", 1.0, "ma", 0.001)),
    VOLT("V", "a voltage such as 5, 3.7 V or 250 mV", Map.of("v", 1.0, "volt", 1.0, "volts", 1.0, "mv", 0.001)),
    WATT("W", "a power such as 40, 12.5 W or 1.2 kW", Map.of("w", 1.0, "watt", 1.0, "watts", 1.0, "kw", 1000.0)),
    MILLIAMPERE_HOUR("mAh", "a capacity such as 5000, 3200 mAh or 10 Ah", Map.of("mah", 1.0, "ah", 1000.0)),
    MILLIOHM(
            "mΩ",
            "a resistance such as 2, 1.5 mΩ or 0.02 Ω",
            Map.of("mω", 1.0, "mohm", 1.0, "milliohm", 1.0, "ω", 1000.0, "ohm", 1000.0)),
    C_RATE("C", "a multiple of the capacity such as 25 or 1.5 C", Map.of("c", 1.0)),
    CELSIUS("°C", "a temperature such as 40 or −10 °C", Map.of("°c", 1.0, "c", 1.0, "°", 1.0)),
    PERCENT("%", "a share such as 20 or 7.5 %", Map.of("%", 1.0)),
    PERCENT_PER_CELSIUS("%", "a change such as −0.35 or −0.3 %", Map.of("%", 1.0, "%/°c", 1.0, "%/c", 1.0, "%/k", 1.0)),
    MINUTE(
            "min",
            "a time such as 12, 2.5 min or 1.5 h",
            Map.of("min", 1.0, "minute", 1.0, "minutes", 1.0, "h", 60.0, "hour", 60.0, "hours", 60.0, "s", 1.0 / 60)),
    HERTZ("Hz", "a rate such as 50, 333 Hz or 1.2 kHz", Map.of("hz", 1.0, "khz", 1000.0)),
    DEGREE("°", "an angle such as 20 or 7.5°", Map.of("°", 1.0, "deg", 1.0, "degrees", 1.0)),
    LATITUDE(
            "°",
            "a latitude such as 53.2, 53.2° N or −33.9",
            Map.of("°", 1.0, "n", 1.0, "°n", 1.0, "° n", 1.0, "s", -1.0, "°s", -1.0, "° s", -1.0)),
    LONGITUDE(
            "°",
            "a longitude such as 7.5, 7.5° E or −70.6",
            Map.of("°", 1.0, "e", 1.0, "°e", 1.0, "° e", 1.0, "w", -1.0, "°w", -1.0, "° w", -1.0)),
    METRE("m", "a height such as 120, 800 m or 1.2 km", Map.of("m", 1.0, "metres", 1.0, "km", 1000.0, "ft", 0.3048)),
    /** Spelt with the micro sign or the Greek letter. */
    MICROSECOND(
            "µs",
            "a time such as 1500, 900 µs or 2.2 ms",
            Map.of("\u00b5s", 1.0, "\u03bcs", 1.0, "us", 1.0, "ms", 1000.0));

    private final String symbol;
    private final String expected;
    private final Map<String, Double> spellings;

    NumberUnit(String symbol, String expected, Map<String, Double> spellings) {
        this.symbol = symbol;
        this.expected = expected;
        this.spellings = spellings;
    }

    public String symbol() {
        return symbol;
    }

    /** What may be typed, with examples: {@code a current such as 5, 2.5 A or 800 mA}. */
    String expected() {
        return expected;
    }

    /** How much one of what is spelt {@code text} is; a megohm is not taken for a milliohm. */
    Optional<Double> spelt(String text) {
        if (text.isEmpty()) {
            return Optional.of(1.0);
        }
        return this == MILLIOHM && text.startsWith("M")
                ? Optional.empty()
                : Optional.ofNullable(spellings.get(Spelling.plain(text)));
    }
}
