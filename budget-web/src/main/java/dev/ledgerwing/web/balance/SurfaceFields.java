package dev.ledgerwing.web.balance;

import dev.ledgerwing.core.build.Panel;
import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.build.Surface;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.web.forms.Entries;
import dev.ledgerwing.web.forms.Shown;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The fields of a wing or tail: its apex, and a row for each panel.
 *
 * @param group {@code wing} or {@code tail}, before the name of each field
 */
record SurfaceFields(String group) {

    private static final List<String> OF_A_PANEL = List.of("span", "root", "tip", "offset", "dihedral");

    private String panels() {
        return group + ".panel";
    }

    void show(@Nullable Surface surface, Shown fields) {
        fields.station(group, surface == null ? null : surface.apex())
                .tick(group + ".mirrored", surface == null || surface.mirrored());
        List<Panel> panels = surface == null ? List.of() : surface.panels();
        for (int i = 0; i < Math.max(1, panels.size()); i++) {
            show(i < panels.size() ? panels.get(i) : null, panels() + "." + i, fields);
        }
    }

    private static void show(@Nullable Panel panel, String row, Shown fields) {
        fields.length(row + ".span", panel == null ? null : panel.span())
                .length(row + ".root", panel == null ? null : panel.rootChord())
                .length(row + ".tip", panel == null ? null : panel.tipChord())
                .length(row + ".offset", panel == null ? null : panel.tipOffset())
                .number(row + ".dihedral", panel == null ? null : panel.dihedralDeg());
    }

    /** The surface as typed; nothing where no panel and no apex is given, or where something is wrong. */
    @Nullable
    Surface surface(Entries entries) {
        Station apex = entries.station(group);
        List<Panel> panels = panels(entries);
        if (panels.isEmpty() && apex == null) {
            return null;
        }
        if (panels.isEmpty() && entries.areFine()) {
            entries.trouble(panels() + ".0.span", "Please give one panel at least, or leave out the apex too.");
        }
        if (apex == null && entries.isFine(group + ".x")) {
            entries.trouble(group + ".x", "Please give where the leading edge of the root is.");
        }
        return apex == null || panels.isEmpty() || !entries.areFine()
                ? null
                : new Surface(apex, entries.typed().isTicked(group + ".mirrored"), panels);
    }

    private List<Panel> panels(Entries entries) {
        List<Panel> panels = new ArrayList<>();
        Length before = null;
        for (int i = 0; i < entries.typed().rows(panels()); i++) {
            String row = panels() + "." + i;
            if (!entries.typed().isBlank(row, OF_A_PANEL)) {
                Panel panel = panel(row, before, entries);
                before = panel == null ? null : panel.tipChord();
                if (panel != null) {
                    panels.add(panel);
                }
            }
        }
        return panels;
    }

    /** @param before tip chord of the panel inboard of it, which an empty root chord goes on from */
    private static @Nullable Panel panel(String row, @Nullable Length before, Entries entries) {
        Length span = entries.needed(
                row + ".span", entries.extent(row + ".span"), Length.ZERO, "Please give the span of this panel.");
        if (span.um() == 0 && entries.isFine(row + ".span")) {
            entries.trouble(row + ".span", "A panel without span has no area.");
        }
        Length typedRoot = entries.extent(row + ".root");
        boolean goesOn =
                typedRoot == null && entries.typed().text(row + ".root").isEmpty();
        Length root = entries.needed(
                row + ".root", goesOn ? before : typedRoot, Length.ZERO, "Please give the chord at its root.");
        Length tip = entries.needed(
                row + ".tip", entries.extent(row + ".tip"), Length.ZERO, "Please give the chord at its tip.");
        if (root.um() == 0 && tip.um() == 0 && entries.isFine(row + ".root") && entries.isFine(row + ".tip")) {
            entries.trouble(row + ".root", "A panel needs a chord above 0 at its root or at its tip.");
        }
        Length offset = entries.coordinate(row + ".offset");
        Double dihedral = entries.number(row + ".dihedral", -90, 90);
        return entries.areFine()
                ? new Panel(span, root, tip, offset == null ? Length.ZERO : offset, dihedral == null ? 0 : dihedral)
                : null;
    }
}
