package dev.ledgerwing.web.balance;

import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.LoadCase;
import dev.ledgerwing.core.build.LoadCase.Purpose;
import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.web.desk.Deed;
import dev.ledgerwing.web.forms.Elements;
import dev.ledgerwing.web.forms.Entries;
import dev.ledgerwing.web.forms.ExtraFields;
import dev.ledgerwing.web.forms.PartChoice;
import dev.ledgerwing.web.forms.Shown;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A load case: what stays at home, what is stowed or sits elsewhere, what is carried besides.
 *
 * @param code of the case; null = a new one
 */
record LoadCaseForm(@Nullable String code) implements BalanceForm {

    private static final List<String> OF_A_MOVED = List.of("line", "x", "y", "z");

    @Override
    public String view() {
        return "balance/case";
    }

    @Override
    public void show(Build build, Shown fields) {
        LoadCase shown = Elements.find(build.loadCases(), code);
        fields.text("name", shown == null ? "" : shown.name())
                .text("purpose", (shown == null ? Purpose.FLIGHT : shown.purpose()).name())
                .tick("design", shown != null && shown.design());
        if (shown != null) {
            fields.ticks("absent", shown.absent()).ticks("stowed", shown.stowed());
        }
        Map<String, Station> moved = shown == null ? Map.of() : shown.moved();
        int row = 0;
        for (Map.Entry<String, Station> each : moved.entrySet()) {
            fields.text("moved." + row + ".line", each.getKey()).station("moved." + row, each.getValue());
            row++;
        }
        ExtraFields.show(shown == null ? List.of() : shown.extra(), fields);
    }

    @Override
    public Map<String, Object> surroundings(Build build, Entries entries) {
        LoadCase shown = Elements.find(build.loadCases(), code);
        Map<String, Object> around = new LinkedHashMap<>();
        around.put("isNew", shown == null);
        around.put("heading", shown == null ? "New load case" : "Load case " + shown.name());
        around.put("wasDesign", shown != null && shown.design());
        around.put("design", build.designCase().name());
        around.put("parts", PartChoice.groups(build, line -> true));
        around.put("stowable", PartChoice.groups(build, line -> line.place().stowedStation() != null));
        around.put("lines", PartChoice.list(build));
        around.put("purposes", Map.of("FLIGHT", "flown", "GROUND", "only on the ground"));
        around.put("bases", ExtraFields.bases());
        return around;
    }

    @Override
    public Optional<Deed> deed(Entries entries, Build seen) {
        String name = entries.name("name", "Please name the load case.");
        Purpose purpose = entries.choice("purpose", Purpose.values());
        boolean design = entries.typed().isTicked("design");
        checkDesign(design, purpose, seen, entries);
        Map<String, Station> moved = moved(entries);
        List<LoadCase.ExtraItem> extra = ExtraFields.items(entries, Basis.GUESSED);
        if (!entries.areFine()) {
            return Optional.empty();
        }
        String id = code == null ? Elements.freshCode(name, "case", seen.loadCases()) : code;
        LoadCase wanted = new LoadCase(
                id,
                name,
                purpose,
                design,
                entries.typed().all("absent"),
                moved,
                entries.typed().all("stowed"),
                extra);
        String title = "Load case " + name
                + (Elements.find(seen.loadCases(), id) == null ? " added" : " edited")
                + (design && !seen.designCase().code().equals(id) ? ", the design case now" : "");
        return Optional.of(Deed.fitting(title, build -> put(build, wanted)));
    }

    private void checkDesign(boolean design, Purpose purpose, Build seen, Entries entries) {
        if (design && purpose == Purpose.GROUND) {
            entries.trouble("purpose", "The design case is one that is flown.");
        }
        if (!design && seen.designCase().code().equals(code)) {
            entries.trouble("design", "One case is the design case. To make another one it, mark that one.");
        }
    }

    private static Map<String, Station> moved(Entries entries) {
        Map<String, Station> moved = new TreeMap<>();
        for (int i = 0; i < entries.typed().rows("moved"); i++) {
            String row = "moved." + i;
            if (!entries.typed().isBlank(row, OF_A_MOVED)) {
                String line = entries.name(row + ".line", "Please choose the part that sits elsewhere.");
                Station there = entries.needed(
                        row + ".x", entries.station(row), Station.atX(Length.ZERO), "Please give where it sits.");
                if (moved.put(line, there) != null) {
                    entries.trouble(row + ".line", "This part is in the list twice.");
                }
            }
        }
        return moved;
    }

    /** The design mark moves from the case that had it, in the same change. */
    private static Build put(Build build, LoadCase wanted) {
        List<LoadCase> others = build.loadCases().stream()
                .map(each -> wanted.design() && !each.code().equals(wanted.code()) ? unmarked(each) : each)
                .toList();
        return build.withLoadCases(Elements.with(others, wanted));
    }

    private static LoadCase unmarked(LoadCase each) {
        return new LoadCase(
                each.code(),
                each.name(),
                each.purpose(),
                false,
                each.absent(),
                each.moved(),
                each.stowed(),
                each.extra());
    }

    /** Takes the case out of the record; refuses while something needs it. */
    static Deed removal(LoadCase removed) {
        return Deed.fitting("Load case " + removed.name() + " removed", build -> {
            String obstacle = obstacle(build, removed);
            if (!obstacle.isEmpty()) {
                throw new IllegalArgumentException(obstacle);
            }
            return build.withLoadCases(Elements.without(build.loadCases(), removed.code()));
        });
    }

    private static String obstacle(Build build, LoadCase removed) {
        if (build.designCase().code().equals(removed.code())) {
            return "“" + removed.name() + "” is the design case, in which targets are judged: mark another case first";
        }
        String phases = build.phases().stream()
                .filter(phase -> removed.code().equals(phase.loadCase()))
                .map(Phase::name)
                .collect(Collectors.joining(", "));
        return phases.isEmpty()
                ? ""
                : "“" + removed.name() + "” is what is aboard in " + phases + ": change that phase first";
    }
}
