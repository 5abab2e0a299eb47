package dev.ledgerwing.core.review;

import static dev.ledgerwing.core.radio.Radios.build;
import static dev.ledgerwing.core.radio.Radios.charging;
import static dev.ledgerwing.core.radio.Radios.gear;
import static dev.ledgerwing.core.radio.Radios.presets;
import static dev.ledgerwing.core.radio.Radios.radio;
import static dev.ledgerwing.core.radio.Radios.throttle;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import dev.ledgerwing.core.Ledgers;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.PulseTrain;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioLink;
import dev.ledgerwing.core.radio.RadioStatement;
import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class RadioReviewTest {

    /** A throttle and a gear, each needing a channel of its own. */
    private static Build with(RadioLink link, RadioFunction... more) {
        List<RadioFunction> functions = new ArrayList<>(List.of(throttle("low end"), gear("down", "down,up", "")));
        functions.addAll(List.of(more));
        return build(radio(link, functions));
    }

    private static final RadioFunction CHARGING = charging("off", "off,on", "");

    private static Map<String, Double> figures(Build build) {
        Map<String, Double> radio = new LinkedHashMap<>(BuildReview.of(build).figures());
        radio.keySet().removeIf(name -> !name.startsWith("radio."));
        return radio;
    }

    private static List<ImpactPart> impact(Build before, Build after) {
        return ReviewDelta.between(BuildReview.of(before), BuildReview.of(after))
                .impact();
    }

    @Test
    void namesItsFigures() {
        RadioLink train = new RadioLink(8, null, null, null, new PulseTrain(22_500.0, 2000, 2500));
        assertThat(figures(with(train, CHARGING)))
                .containsExactly(
                        Map.entry("radio.channelsNeeded", 3.0),
                        Map.entry("radio.channelsAvailable", 8.0),
                        Map.entry("radio.sharedPairs", 0.0),
                        Map.entry("radio.sharedWeight", 0.0),
                        Map.entry("radio.frameGapUs", 6500.0));
    }

    /** Two functions of the errand on one channel weigh 3 + 3. */
    @Test
    void weighsWhatIsShared() {
        Build build = with(presets(2), charging("off", "", ""));
        assertThat(figures(build)).containsEntry("radio.sharedPairs", 1.0).containsEntry("radio.sharedWeight", 6.0);
        RadioStatement statement = BuildReview.of(build).radio();
        assertThat(statement.sharedPairs()).isEqualTo(statement.proposed().sharedPairs());
        assertThat(statement.sharedWeight()).isEqualTo(statement.proposed().sharedWeight());
    }

    @Test
    void hasNoFiguresOfWhatIsNotKnown() {
        assertThat(figures(with(presets(2), CHARGING)))
                .containsExactly(Map.entry("radio.channelsNeeded", 3.0), Map.entry("radio.channelsAvailable", 2.0));
    }

    @Test
    void aBuildWithoutARadioIsNotKnown() {
        BuildReview review = BuildReview.of(Ledgers.with());
        assertThat(review.verdict(Budget.RADIO)).isEqualTo(Verdict.UNKNOWN);
        assertThat(review.findings(Budget.RADIO)).hasSize(1);
        assertThat(review.figures()).doesNotContainKey("radio.channelsAvailable");
    }

    @Test
    void tellsHowManyChannelsAreNeededWhereThatMoves() {
        assertThat(impact(with(presets(2)), with(presets(2), CHARGING)))
                .extracting(ImpactPart::text, ImpactPart::verdict)
                .contains(tuple("Radio: 3 of 2 channels needed.", Verdict.BREAKS));
        assertThat(impact(with(presets(2)), with(presets(2), CHARGING)))
                .extracting(ImpactPart::text)
                .noneMatch(text -> text.contains("with the controls there are"));
        assertThat(impact(with(presets(2)), with(presets(3))))
                .extracting(ImpactPart::text)
                .contains("Radio: 2 of 3 channels needed.");
        assertThat(impact(with(presets(3)), with(presets(3))))
                .extracting(ImpactPart::text)
                .noneMatch(text -> text.startsWith("Radio"));
    }
}
