package dev.ledgerwing.core.build;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Merges two records that grew out of one base, field by field. Changes in different fields go together whichever came first;
 * a field set differently on both sides, or an element removed on one and edited on the other, is a conflict.
 */
public final class BuildMerge {

    private final List<Conflict> conflicts = new ArrayList<>();

    private BuildMerge() {}

    /** What a merge gives: the merged record, or the conflicts that stand in its way. */
    public record Result(@Nullable Build merged, List<Conflict> conflicts) {

        public Optional<Build> build() {
            return Optional.ofNullable(merged);
        }
    }

    /**
     * Merges {@code mine} into {@code theirs}.
     *
     * @param base the record both were made from
     */
    public static Result merge(Build base, Build theirs, Build mine) {
        if (base.equals(theirs)) {
            return new Result(mine, List.of());
        }
        BuildMerge merge = new BuildMerge();
        BuildParts parts = BuildParts.of(theirs);
        for (SectionKind section : SectionKind.values()) {
            parts.put(section, merge.whole(section.word(), section.in(base), section.in(theirs), section.in(mine)));
        }
        for (ElementKind kind : ElementKind.values()) {
            parts.put(kind, merge.elements(kind, kind.in(base), kind.in(theirs), kind.in(mine)));
        }
        if (!merge.conflicts.isEmpty()) {
            return new Result(null, List.copyOf(merge.conflicts));
        }
        return assemble(parts);
    }

    private static Result assemble(BuildParts parts) {
        try {
            return new Result(parts.assemble(), List.of());
        } catch (InvalidBuild refused) {
            return new Result(
                    null,
                    refused.problems().stream()
                            .map(problem -> new Conflict("the record", problem.place(), problem.sentence()))
                            .toList());
        }
    }

    private List<Element> elements(
            ElementKind kind,
            List<? extends Element> base,
            List<? extends Element> theirs,
            List<? extends Element> mine) {
        Map<String, Element> was = ElementKind.byId(base);
        Map<String, Element> their = ElementKind.byId(theirs);
        Map<String, Element> my = ElementKind.byId(mine);
        Map<String, Element> merged = new HashMap<>();
        for (String id : union(their.keySet(), my.keySet())) {
            String subject = kind.word() + " “" + name(id, their, my) + "”";
            Element one = (Element) whole(subject, (Record) was.get(id), (Record) their.get(id), (Record) my.get(id));
            if (one != null) {
                merged.put(id, one);
            }
        }
        List<String> order = MergedOrder.of(ids(base), ids(theirs), ids(mine));
        return new ArrayList<>(
                order.stream().map(merged::get).filter(Objects::nonNull).toList());
    }

    /** Merges something that may be absent on any side. */
    private @Nullable Record whole(
            String subject, @Nullable Record base, @Nullable Record theirs, @Nullable Record mine) {
        if (Objects.equals(theirs, mine) || Objects.equals(base, mine)) {
            return theirs;
        }
        if (Objects.equals(base, theirs)) {
            return mine;
        }
        if (theirs == null || mine == null) {
            conflicts.add(new Conflict(subject, "", "removed on one side and changed on the other"));
            return null;
        }
        if (base == null) {
            conflicts.add(new Conflict(subject, "", "added differently on both sides"));
            return null;
        }
        return fields(subject, base, theirs, mine);
    }

    private @Nullable Record fields(String subject, Record base, Record theirs, Record mine) {
        RecordComponent[] components = RecordFields.of(base);
        @Nullable Object[] merged = new @Nullable Object[components.length];
        int before = conflicts.size();
        for (int i = 0; i < components.length; i++) {
            merged[i] = field(
                    subject,
                    components[i].getName(),
                    RecordFields.read(components[i], base),
                    RecordFields.read(components[i], theirs),
                    RecordFields.read(components[i], mine));
        }
        if (conflicts.size() > before) {
            return null;
        }
        try {
            return RecordFields.rebuild(base, merged);
        } catch (IllegalArgumentException refused) {
            conflicts.add(new Conflict(subject, "", String.valueOf(refused.getMessage())));
            return null;
        }
    }

    private @Nullable Object field(
            String subject, String name, @Nullable Object base, @Nullable Object theirs, @Nullable Object mine) {
        if (Objects.equals(theirs, mine) || Objects.equals(base, mine)) {
            return theirs;
        }
        if (Objects.equals(base, theirs)) {
            return mine;
        }
        if (base instanceof FieldGroup && theirs instanceof FieldGroup && mine instanceof FieldGroup) {
            return fields(subject, (Record) base, (Record) theirs, (Record) mine);
        }
        conflicts.add(new Conflict(subject, name, "set differently on both sides"));
        return null;
    }

    private static String name(String id, Map<String, Element> theirs, Map<String, Element> mine) {
        Element named = theirs.containsKey(id) ? theirs.get(id) : mine.get(id);
        return Objects.requireNonNull(named).name();
    }

    private static List<String> ids(List<? extends Element> elements) {
        return elements.stream().map(Element::id).toList();
    }

    private static Set<String> union(Set<String> first, Set<String> second) {
        Set<String> all = new HashSet<>(first);
        all.addAll(second);
        return all.stream().sorted().collect(Collectors.toCollection(LinkedHashSet::new));
    }
}
