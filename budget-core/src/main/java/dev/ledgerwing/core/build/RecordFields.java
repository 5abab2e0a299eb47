package dev.ledgerwing.core.build;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Reads and rebuilds records component by component, so that differences and merges are written once for all of them. */
final class RecordFields {

    private RecordFields() {}

    static RecordComponent[] of(Record value) {
        return value.getClass().getRecordComponents();
    }

    static @Nullable Object read(RecordComponent component, Record value) {
        try {
            return component.getAccessor().invoke(value);
        } catch (ReflectiveOperationException unreachable) {
            throw new IllegalStateException("cannot read " + component, unreachable);
        }
    }

    /** @throws IllegalArgumentException as the record's own constructor throws it */
    static Record rebuild(Record pattern, @Nullable Object[] values) {
        Class<?>[] types =
                Arrays.stream(of(pattern)).map(RecordComponent::getType).toArray(Class<?>[]::new);
        try {
            return pattern.getClass().getDeclaredConstructor(types).newInstance(values);
        } catch (InvocationTargetException refused) {
            if (refused.getCause() instanceof IllegalArgumentException reason) {
                throw reason;
            }
            throw new IllegalStateException("cannot rebuild " + pattern.getClass(), refused);
        } catch (ReflectiveOperationException unreachable) {
            throw new IllegalStateException("cannot rebuild " + pattern.getClass(), unreachable);
        }
    }

    /** The fields in which two records of one type differ, group by group. */
    static List<FieldDifference> differences(Record before, Record after) {
        List<FieldDifference> differences = new ArrayList<>();
        for (RecordComponent component : of(before)) {
            Object was = read(component, before);
            Object is = read(component, after);
            if (was instanceof FieldGroup && is instanceof FieldGroup) {
                differences.addAll(differences((Record) was, (Record) is));
            } else if (!Objects.equals(was, is)) {
                differences.add(new FieldDifference(component.getName(), was, is));
            }
        }
        return differences;
    }
}
