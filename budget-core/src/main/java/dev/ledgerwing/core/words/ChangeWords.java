package dev.ledgerwing.core.words;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.BuildChange;
import dev.ledgerwing.core.build.Edit;
import dev.ledgerwing.core.build.Edit.PutElement;
import dev.ledgerwing.core.build.Edit.PutSection;
import dev.ledgerwing.core.build.Element;
import dev.ledgerwing.core.build.ElementKind;
import dev.ledgerwing.core.build.FieldDifference;
import dev.ledgerwing.core.build.GrowthTable;
import dev.ledgerwing.core.build.LineMass;
import dev.ledgerwing.core.build.MassUncertainty;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.PortNeeds;
import dev.ledgerwing.core.build.Reserves;
import dev.ledgerwing.core.quantity.Figures;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Says what a change did, edit by edit and field by field, in a member's units. */
public final class ChangeWords {

    /** Records that are told field by field, since as a whole they would be too much to read. */
    private static final Set<Class<?>> TOLD_FIELD_BY_FIELD =
            Set.of(LineMass.class, PortNeeds.class, GrowthTable.class, MassUncertainty.class, Reserves.class);

    private static final String NOTHING = "–";

    private final ValueWords values;

    /** @param before the record before the change and {@code after} the one after it: elements are called as they are there */
    public ChangeWords(Build before, Build after, Figures figures) {
        this.values = new ValueWords(figures, new ElementNames(before, after));
    }

    /** Every edit of the change in its order. */
    public List<EditText> of(BuildChange change) {
        return of(change.edits());
    }

    /** The same for some of its edits. */
    public List<EditText> of(List<Edit> edits) {
        return edits.stream().map(this::edit).toList();
    }

    private EditText edit(Edit edit) {
        if (edit instanceof PutSection section) {
            return section(section);
        }
        return element((PutElement) edit);
    }

    private EditText section(PutSection put) {
        return text(new Subject(put.section().word(), "", null), put.before(), put.after());
    }

    private EditText element(PutElement put) {
        Element subject = put.subject();
        String line = put.kind() == ElementKind.LINE ? put.id() : null;
        return text(new Subject(put.kind().word(), subject.name(), line), (Record) put.before(), (Record) put.after());
    }

    /** What an edit is about. */
    private record Subject(
            String what, String name, @Nullable String line) {

        EditText text(EditText.Kind kind, String summary, List<FieldText> fields) {
            return new EditText(kind, what, name, line, summary, fields);
        }
    }

    private EditText text(Subject subject, @Nullable Record before, @Nullable Record after) {
        if (before == null || after == null) {
            Record there = Objects.requireNonNull(before == null ? after : before, "an edit has a before or an after");
            EditText.Kind kind = before == null ? EditText.Kind.ADDED : EditText.Kind.REMOVED;
            return subject.text(kind, summary(there), List.of());
        }
        return before.equals(after)
                ? subject.text(EditText.Kind.REORDERED, "", List.of())
                : subject.text(EditText.Kind.CHANGED, "", fields(before, after).toList());
    }

    private String summary(Record there) {
        if (there instanceof PartLine line) {
            String assembly = values.text(FieldWord.ASSEMBLY, line.assembly());
            return line.quantity() + " × " + values.mass(line.mass()) + ", " + assembly;
        }
        return values.described(there);
    }

    private Stream<FieldText> fields(Record before, Record after) {
        return FieldDifference.between(before, after).stream().flatMap(this::field);
    }

    private Stream<FieldText> field(FieldDifference difference) {
        Object before = difference.before();
        Object after = difference.after();
        if (before instanceof Record was
                && after instanceof Record is
                && TOLD_FIELD_BY_FIELD.contains(was.getClass())) {
            return fields(was, is);
        }
        FieldWord field = ValueWords.word(difference.field());
        if (before instanceof Collection<?> was && after instanceof Collection<?> is) {
            return Stream.of(members(field, was, is));
        }
        if (before instanceof Map<?, ?> was && after instanceof Map<?, ?> is) {
            return Stream.of(entries(field, was, is));
        }
        return Stream.of(new FieldText(field.word(), values.text(field, before), values.text(field, after)));
    }

    /** Of long lists only what went and what came. */
    private FieldText members(FieldWord field, Collection<?> before, Collection<?> after) {
        List<Object> gone = new ArrayList<>(before);
        gone.removeAll(after);
        List<Object> come = new ArrayList<>(after);
        come.removeAll(before);
        return gone.isEmpty() && come.isEmpty()
                ? new FieldText(field.word(), values.text(field, before), values.text(field, after))
                : new FieldText(field.word(), some(field, gone.isEmpty(), gone), some(field, come.isEmpty(), come));
    }

    private FieldText entries(FieldWord field, Map<?, ?> before, Map<?, ?> after) {
        Map<Object, Object> gone = new LinkedHashMap<>(before);
        gone.entrySet().removeAll(after.entrySet());
        Map<Object, Object> come = new LinkedHashMap<>(after);
        come.entrySet().removeAll(before.entrySet());
        return new FieldText(field.word(), some(field, gone.isEmpty(), gone), some(field, come.isEmpty(), come));
    }

    private String some(FieldWord field, boolean isNone, Object part) {
        return isNone ? NOTHING : values.text(field, part);
    }
}
