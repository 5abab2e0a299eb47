package dev.ledgerwing.web.mass;

import dev.ledgerwing.core.mass.MassBand;
import dev.ledgerwing.core.mass.MassForecast;
import dev.ledgerwing.core.mass.WeighNext;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How far the final mass may lie from the predicted one, and what to weigh to know it better.
 *
 * @param weighNext the rows that take most off the band, the best first
 * @param others how many more there are that would hardly narrow it
 */
record ForecastView(List<Term> terms, List<Candidate> weighNext, int others) {

    static final int MOST = 10;

    /**
     * A row worth weighing.
     *
     * @param part id of its line; null for something a load case carries besides
     * @param before half the width of the band now and {@code after} once it has been weighed
     */
    record Candidate(String name, @Nullable String part, String basis, String mass, String before, String after) {

        /** Whether the difference can be read at all. */
        boolean isWorthIt() {
            return !before.equals(after);
        }
    }

    static ForecastView of(MassForecast forecast, Figures figures) {
        List<Candidate> next = forecast.weighNext().stream()
                .limit(MOST)
                .map(each -> candidate(each, figures))
                .filter(Candidate::isWorthIt)
                .toList();
        int others = forecast.weighNext().size() - next.size();
        return new ForecastView(
                List.of(uncertainty(forecast, figures), band(forecast, figures), probability(forecast, figures)),
                next,
                others);
    }

    private static Candidate candidate(WeighNext next, Figures figures) {
        Mass basic = next.row().basic();
        return new Candidate(
                next.row().name(),
                next.row().line(),
                next.row().basis().word(),
                basic == null ? "" : figures.mass(basic),
                "±" + figures.roughMass(next.before()),
                "±" + figures.roughMass(next.after()));
    }

    private static Term uncertainty(MassForecast forecast, Figures figures) {
        return Term.plain(
                "Standard uncertainty",
                figures.roughMass(forecast.standardUncertainty()),
                forecast.isComplete() ? "of the predicted mass" : "of the parts that have a mass");
    }

    private static Term band(MassForecast forecast, Figures figures) {
        if (!forecast.isComplete()) {
            return Term.notKnown("95 % band", missing(forecast));
        }
        MassBand band = forecast.band95();
        return Term.plain(
                "95 % band",
                figures.roughMass(band.low()) + " to " + figures.roughMass(band.high()),
                "the predicted mass ±" + figures.roughMass(band.halfWidth()));
    }

    private static String missing(MassForecast forecast) {
        int unknown = forecast.statement().total().unknown();
        return switch (unknown) {
            case 0 -> "Nothing is aboard yet.";
            case 1 -> "One part has no mass yet; it comes on top.";
            default -> unknown + " parts have no mass yet; they come on top.";
        };
    }

    private static Term probability(MassForecast forecast, Figures figures) {
        String label = "Stays within the target";
        Mass target = forecast.statement().build().budget().targetMass();
        Double probability = forecast.probabilityWithinTarget();
        if (target == null) {
            return Term.notKnown(label, "No target set yet.");
        }
        return probability == null
                ? Term.notKnown(label, missing(forecast))
                : Term.plain(
                        label,
                        chance(probability),
                        "probability that the final mass is at most " + figures.mass(target));
    }

    /** Never 100 per cent and never 0: a forecast is no promise. */
    private static String chance(double probability) {
        if (probability > 0.999) {
            return "above " + Figures.percent(99.9);
        }
        return probability < 0.001 ? "below " + Figures.percent(0.1) : Figures.percent(100 * probability);
    }
}
