package dev.ledgerwing.core.build;

import dev.ledgerwing.core.build.Edit.Placement;
import dev.ledgerwing.core.build.Edit.PutElement;
import dev.ledgerwing.core.build.Edit.PutSection;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A change of one record, as the edits that lead from the record before it to the record after it.
 *
 * @param title what was done, in one line
 */
public record BuildChange(String title, Nature nature, List<Edit> edits) {

    public BuildChange {
        edits = List.copyOf(edits);
        Check.name("title", title);
    }

    public boolean isEmpty() {
        return edits.isEmpty();
    }

    /** The change that leads from one record to the other. Applied to {@code before} it gives {@code after} exactly. */
    public static BuildChange between(String title, Nature nature, Build before, Build after) {
        List<Edit> edits = new ArrayList<>();
        for (SectionKind section : SectionKind.values()) {
            Record was = section.in(before);
            Record is = section.in(after);
            if (!Objects.equals(was, is)) {
                edits.add(new PutSection(section, was, is));
            }
        }
        for (ElementKind kind : ElementKind.values()) {
            edits.addAll(elementEdits(kind, kind.in(before), kind.in(after)));
        }
        return new BuildChange(title, nature, edits);
    }

    private static List<Edit> elementEdits(
            ElementKind kind, List<? extends Element> before, List<? extends Element> after) {
        Map<String, Element> was = ElementKind.byId(before);
        Map<String, Element> is = ElementKind.byId(after);
        List<Edit> edits = new ArrayList<>();
        List<String> order = new ArrayList<>();
        for (Element element : before) {
            if (is.containsKey(element.id())) {
                order.add(element.id());
            } else {
                edits.add(new PutElement(kind, element.id(), element, null, null));
            }
        }
        String previous = null;
        int at = 0;
        for (Element element : after) {
            boolean inPlace = at < order.size() && order.get(at).equals(element.id());
            Element old = was.get(element.id());
            if (!inPlace) {
                if (old != null) {
                    order.remove(element.id());
                }
                order.add(at, element.id());
                edits.add(new PutElement(kind, element.id(), old, element, new Placement(previous)));
            } else if (!element.equals(old)) {
                edits.add(new PutElement(kind, element.id(), old, element, null));
            }
            previous = element.id();
            at++;
        }
        return edits;
    }

    /**
     * The record after this change.
     *
     * @throws IllegalStateException when the record is not the one this change was made against
     * @throws InvalidBuild when the record after it does not fit together
     */
    public Build applyTo(Build build) {
        BuildParts parts = BuildParts.of(build);
        for (Edit edit : edits) {
            if (edit instanceof PutSection put) {
                requireSame(put.section().word(), put.before(), put.section().in(build));
                parts.put(put.section(), put.after());
            } else if (edit instanceof PutElement put) {
                apply(put, parts.elements(put.kind()));
            }
        }
        return parts.assemble();
    }

    private static void apply(PutElement put, List<Element> elements) {
        int at = put.before() == null ? -1 : indexOf(elements, put.id());
        requireSame(put.kind().word() + " " + put.id(), put.before(), at < 0 ? null : elements.get(at));
        Element after = put.after();
        Placement placement = put.placement();
        if (after != null && placement == null) {
            elements.set(at, after);
            return;
        }
        if (at >= 0) {
            elements.remove(at);
        }
        if (after != null && placement != null) {
            elements.add(placeIn(elements, placement), after);
        }
    }

    private static int placeIn(List<Element> elements, Placement placement) {
        String anchor = placement.after();
        if (anchor == null) {
            return 0;
        }
        int at = indexOf(elements, anchor);
        return at < 0 ? elements.size() : at + 1;
    }

    private static int indexOf(List<Element> elements, String id) {
        for (int i = elements.size() - 1; i >= 0; i--) {
            if (elements.get(i).id().equals(id)) {
                return i;
            }
        }
        return -1;
    }

    private static void requireSame(String what, @Nullable Object expected, @Nullable Object found) {
        if (!Objects.equals(expected, found)) {
            throw new IllegalStateException(what + " is not what this change was made against");
        }
    }
}
