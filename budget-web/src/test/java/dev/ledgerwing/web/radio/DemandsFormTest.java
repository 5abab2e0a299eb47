package dev.ledgerwing.web.radio;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Demand;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.web.balance.FormWalk;
import dev.ledgerwing.web.forms.Entries;
import dev.ledgerwing.web.forms.Shown;
import dev.ledgerwing.web.forms.Typed;
import dev.ledgerwing.web.support.Browser.Page;
import java.util.List;
import java.util.Map;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What each phase asks of each switched function. */
class DemandsFormTest extends RadioFormWalk {

    private static final String DEMANDS = "/demands";

    private Page open(String query) {
        return browser.open(radio + DEMANDS + query);
    }

    private static void tick(Page page, String field, String state) {
        box(page, field, state).attr("checked", "checked");
    }

    private static void clear(Page page, String field, String state) {
        box(page, field, state).removeAttr("checked");
    }

    private static Element box(Page page, String field, String state) {
        return page.document().expectFirst("input[name=" + field + "][value=" + state + "]");
    }

    private Page save(Page page) {
        return browser.send(page, radio + DEMANDS, Map.of());
    }

    private RadioFunction function(String code) {
        return build().radio().functions().stream()
                .filter(each -> each.code().equals(code))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void cellsAreTickedAndOnlyWhatChangedChanges() {
        others(RadioFormWalk::equipped);
        Build before = build();
        Page grid = open("");
        assertThat(FormWalk.ticked(grid, "must-gear.cruise")).containsExactly("down", "up");
        assertThat(FormWalk.ticked(grid, "may-gear.power-on")).containsExactly("down");
        save(grid);
        assertThat(build()).isEqualTo(before);

        clear(grid, "must-gear.cruise", "down");
        tick(grid, "must-pump.cruise", "on");
        tick(grid, "may-pump.power-on", "off");
        Page after = save(grid);

        assertThat(after.path()).isEqualTo(radio);
        assertThat(title()).isEqualTo("Demands on Gear, Pump");
        assertThat(function("gear").demandByPhase())
                .isEqualTo(Map.of("power-on", new Demand(List.of(), List.of("down")), "cruise", Demand.select("up")));
        assertThat(function("pump").demandByPhase())
                .isEqualTo(Map.of("power-on", new Demand(List.of(), List.of("off")), "cruise", Demand.select("on")));
        assertThat(function("throttle")).isEqualTo(before.radio().functions().get(0));
    }

    @Test
    void theGridOfThePageLeadsToEveryPhase() {
        others(RadioFormWalk::equipped);
        assertThat(browser.open(radio)
                        .document()
                        .select("section[aria-labelledby=grid] .phases a")
                        .eachAttr("href"))
                .containsExactly(radio + DEMANDS + "?phase=power-on", radio + DEMANDS + "?phase=cruise");
    }

    @Test
    void anEmptiedCellAsksNothing() {
        others(RadioFormWalk::equipped);
        Page grid = open("");
        clear(grid, "may-gear.power-on", "down");
        save(grid);
        assertThat(function("gear").demandByPhase()).containsOnlyKeys("cruise");
    }

    @Test
    void onePhaseIsShownAndSavedAloneAndSaysNothingOfTheOthers() {
        others(RadioFormWalk::equipped);
        Page one = open("?phase=cruise");
        assertThat(one.document().select("[name=must-gear.power-on]")).isEmpty();
        assertThat(one.document().select(".phases [aria-current]").text()).isEqualTo("Cruise");
        assertThat(one.document().select("[id=demand-gear.cruise]")).hasSize(1);
        clear(one, "must-gear.cruise", "up");
        save(one);
        assertThat(function("gear").demandByPhase())
                .isEqualTo(Map.of("power-on", new Demand(List.of(), List.of("down")), "cruise", Demand.select("down")));
        assertThat(open("?phase=never").document().select("[name=phase]")).hasSize(2);
    }

    @Test
    void theFirstPhaseAsksForSafeStates() {
        others(RadioFormWalk::equipped);
        Page grid = open("");
        assertThat(grid.document().select("thead").text()).contains("Power on which states are safe?");
        assertThat(grid.document().select("[id=demand-pump.power-on] > .hint").text())
                .isEqualTo("Not said yet.");
        assertThat(grid.document().select("[id=demand-gear.power-on] > .hint")).isEmpty();
        assertThat(grid.document().select("[id=demand-pump.cruise] > .hint")).isEmpty();
    }

    @Test
    void aStateThatMustBeSelectableDoesNoHarmOrTheCellSaysSo() {
        others(RadioFormWalk::equipped);
        int before = number();
        Page grid = open("?phase=power-on");
        tick(grid, "must-gear.power-on", "up");
        Page again = save(grid);
        assertThat(again.status()).isEqualTo(422);
        assertThat(FormWalk.error(again, "may-gear.power-on")).contains("“up” must be selectable");
        assertThat(FormWalk.ticked(again, "must-gear.power-on")).containsExactly("up");
        assertThat(box(again, "may-gear.power-on", "up").attr("aria-invalid")).isEqualTo("true");
        assertThat(box(again, "may-gear.power-on", "up").attr("aria-describedby"))
                .isEqualTo("may-gear.power-on-error");
        assertThat(number()).isEqualTo(before);
    }

    @ParameterizedTest
    @CsvSource({"must-gear.cruise, sideways", "may-gear.cruise, ''", "must-pump.power-on, DOWN"})
    void aDemandForAStateThatDoesNotExistIsRefusedAtItsCell(String field, String state) {
        Build build = equipped(airframe("godwit"));
        Entries entries = new Entries(
                new Typed(Map.of("phase", List.of("power-on", "cruise"), field, List.of(state))),
                new Shown(Figures.METRIC));
        assertThat(new DemandsForm(null).deed(entries, build)).isEmpty();
        assertThat(entries.troubles()).containsOnlyKeys(field);
        assertThat(entries.troubles().get(field)).singleElement().asString().contains("There is no state “" + state);
    }

    @Test
    void othersMayChangeAnotherFunctionMeanwhileAndTheSameOneClashes() {
        others(RadioFormWalk::equipped);
        Page mine = open("");
        Page theirs = open("");
        tick(theirs, "must-pump.cruise", "on");
        save(theirs);
        tick(mine, "may-gear.cruise", "up");
        tick(mine, "may-gear.cruise", "down");
        save(mine);
        assertThat(function("pump").demandByPhase()).isEqualTo(Map.of("cruise", Demand.select("on")));
        assertThat(function("gear").demandIn("cruise").mayHave()).containsExactly("down", "up");

        tick(theirs, "must-pump.cruise", "off");
        Page again = save(theirs);
        assertThat(again.status()).isEqualTo(422);
        assertThat(FormWalk.ticked(again, "must-pump.cruise")).containsExactly("off", "on");
        assertThat(FormWalk.ticked(again, "may-gear.cruise")).containsExactly("down", "up");
        save(again);
        assertThat(function("pump").demandByPhase()).isEqualTo(Map.of("cruise", Demand.select("off", "on")));
    }

    @Test
    void withoutPhasesOrFunctionsThePageSaysWhereToBegin() {
        Page form = open("");
        assertThat(form.document().select(".notice a[href$=/power/phases]")).hasSize(1);
        assertThat(form.document().select(".notice a[href=" + radio + "/functions]"))
                .hasSize(1);
    }
}
