package dev.ledgerwing.web.radio;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.Control;
import dev.ledgerwing.core.build.RadioDeeds;
import dev.ledgerwing.web.desk.Deed;
import dev.ledgerwing.web.forms.Choices;
import dev.ledgerwing.web.forms.CodedRows;
import dev.ledgerwing.web.forms.Entries;
import dev.ledgerwing.web.forms.Shown;
import dev.ledgerwing.web.forms.Typed;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What the pilot moves on the transmitter. */
final class ControlsForm implements RadioForm {

    static final String LIST = "control";

    @Override
    public String view() {
        return "radio/controls";
    }

    @Override
    public void show(Build build, Shown fields) {
        List<Control> controls = build.radio().controls();
        for (int i = 0; i < controls.size(); i++) {
            Control control = controls.get(i);
            String row = LIST + "." + i;
            Integer positions = control.kind() == Control.Kind.SWITCH ? control.positions() : null;
            fields.text(row + ".code", control.code())
                    .text(row + ".name", control.name())
                    .text(row + ".kind", control.kind().name())
                    .text(row + ".positions", positions == null ? "" : positions.toString());
            if (control.kind() == Control.Kind.MIXED) {
                fields.text(row + ".coarse", control.mixes().get(0))
                        .text(row + ".fine", control.mixes().get(1));
            }
        }
    }

    private static CodedRows<Control> rows(Typed typed, Build build) {
        return new CodedRows<>(LIST, typed, build.radio().controls());
    }

    @Override
    public Map<String, Object> surroundings(Build build, Entries entries) {
        CodedRows<Control> rows = rows(entries.typed(), build);
        Map<String, String> uses = new LinkedHashMap<>();
        build.radio().controls().forEach(control -> uses.put(control.code(), uses(control, build)));
        return Map.of(
                "codes", rows.codes(),
                "gone", rows.goneCodes(),
                "going", rows.gone().stream().map(each -> going(each, build)).toList(),
                "uses", uses,
                "kinds", RadioChoices.controlKinds(),
                "switches", Choices.optional("please choose", ControlRows.switches(rows)));
    }

    /** Which channels it moves, as a hint that their states hang on its positions. */
    private static String uses(Control control, Build build) {
        String channels = channels(control, build);
        return channels.isEmpty() ? "" : "It moves " + channels + ": other positions ask for other states there.";
    }

    private static String channels(Control control, Build build) {
        return build.radio().channels().stream()
                .filter(channel -> control.code().equals(channel.control()))
                .map(Channel::name)
                .collect(Collectors.joining(", "));
    }

    /** What goes with a control, in words. */
    private static String going(Control control, Build build) {
        String channels = channels(control, build);
        return "“" + control.name() + "” goes when you save"
                + (channels.isEmpty() ? "." : ", and with it what moves " + channels + ".");
    }

    @Override
    public Optional<Deed> deed(Entries entries, Build seen) {
        CodedRows<Control> rows = rows(entries.typed(), seen);
        List<Control> wanted = new ControlRows(rows, entries).controls();
        if (!entries.areFine()) {
            return Optional.empty();
        }
        List<Control> all = rows.withOthers(wanted);
        String names = String.join(", ", rows.gone().stream().map(Control::name).toList());
        return Optional.of(Deed.fitting(
                names.isEmpty() ? "Controls edited" : "Controls edited, removed: " + names,
                build -> without(build, rows.goneCodes()).withControls(all)));
    }

    private static Build without(Build build, List<String> controls) {
        Build cut = build;
        for (String control : controls) {
            cut = RadioDeeds.withoutControl(cut, control);
        }
        return cut;
    }
}
