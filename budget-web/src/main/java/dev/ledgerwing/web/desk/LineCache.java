package dev.ledgerwing.web.desk;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.BuildChange;
import dev.ledgerwing.core.build.Edit.PutElement;
import dev.ledgerwing.core.build.ElementKind;
import dev.ledgerwing.core.build.Nature;
import dev.ledgerwing.core.build.PartLine;
import jakarta.persistence.EntityManager;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.springframework.stereotype.Component;

/** Keeps the line rows of an airframe equal to its newest record, touching only those that differ. */
@Component
class LineCache {

    private static final int AT_ONCE = 500;

    private final EntityManager entityManager;
    private final LineRows rows;

    LineCache(EntityManager entityManager, LineRows rows) {
        this.entityManager = entityManager;
        this.rows = rows;
    }

    void follow(long airframeId, Build before, Build after) {
        List<PutElement> edits = BuildChange.between("lines", Nature.FITTED, before, after).edits().stream()
                .filter(PutElement.class::isInstance)
                .map(PutElement.class::cast)
                .filter(put -> put.kind() == ElementKind.LINE)
                .toList();
        for (int from = 0; from < edits.size(); from += AT_ONCE) {
            followSome(airframeId, edits.subList(from, Math.min(edits.size(), from + AT_ONCE)));
        }
    }

    private void followSome(long airframeId, List<PutElement> edits) {
        List<String> removed = edits.stream()
                .filter(put -> put.after() == null)
                .map(PutElement::id)
                .toList();
        if (!removed.isEmpty()) {
            rows.remove(airframeId, removed);
        }
        Map<String, LineRow> there = new HashMap<>();
        List<String> changed = edits.stream()
                .filter(put -> put.before() != null && put.after() != null)
                .map(PutElement::id)
                .toList();
        if (!changed.isEmpty()) {
            rows.findByAirframeIdAndLineIdIn(airframeId, changed).forEach(row -> there.put(row.lineId, row));
        }
        for (PutElement put : edits) {
            if (put.after() instanceof PartLine line && put.before() == null) {
                entityManager.persist(new LineRow(airframeId, line));
            } else if (put.after() instanceof PartLine line) {
                Objects.requireNonNull(there.get(line.id()), "a line row is missing")
                        .show(line);
            }
        }
    }

    void rebuild(long airframeId, Build build) {
        rows.removeAll(airframeId);
        build.lines().forEach(line -> entityManager.persist(new LineRow(airframeId, line)));
    }
}
