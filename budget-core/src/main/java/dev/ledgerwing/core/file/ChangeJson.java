package dev.ledgerwing.core.file;

import dev.ledgerwing.core.build.BuildChange;
import dev.ledgerwing.core.build.Edit;
import dev.ledgerwing.core.build.Edit.Placement;
import dev.ledgerwing.core.build.Edit.PutElement;
import dev.ledgerwing.core.build.Edit.PutSection;
import dev.ledgerwing.core.build.ElementKind;
import dev.ledgerwing.core.build.Nature;
import dev.ledgerwing.core.build.SectionKind;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** A change as JSON, as it is kept with every revision. Only what this project wrote itself is ever read. */
public final class ChangeJson {

    private ChangeJson() {}

    /** UTF-8, on one line. */
    public static byte[] write(BuildChange change) {
        ObjectNode tree = RecordJson.MAPPER.createObjectNode();
        tree.put("title", change.title());
        tree.put("nature", change.nature().name());
        ArrayNode edits = tree.putArray("edits");
        change.edits().forEach(edit -> edits.add(tree(edit)));
        return RecordJson.MAPPER.writeValueAsBytes(tree);
    }

    private static ObjectNode tree(Edit edit) {
        ObjectNode tree = RecordJson.MAPPER.createObjectNode();
        if (edit instanceof PutSection put) {
            tree.put("section", put.section().name());
            set(tree, "before", put.before());
            set(tree, "after", put.after());
        } else if (edit instanceof PutElement put) {
            tree.put("kind", put.kind().name());
            tree.put("id", put.id());
            set(tree, "before", (Record) put.before());
            set(tree, "after", (Record) put.after());
            set(tree, "placement", put.placement());
        }
        return tree;
    }

    private static void set(ObjectNode tree, String name, @Nullable Record value) {
        if (value != null) {
            tree.set(name, RecordJson.MAPPER.valueToTree(value));
        }
    }

    public static BuildChange read(byte[] bytes) {
        JsonNode tree = RecordJson.MAPPER.readTree(bytes);
        List<Edit> edits = new ArrayList<>();
        for (JsonNode edit : tree.path("edits")) {
            edits.add(edit.has("section") ? section(edit) : element(edit));
        }
        return new BuildChange(
                tree.path("title").stringValue(),
                Nature.valueOf(tree.path("nature").stringValue()),
                edits);
    }

    private static Edit section(JsonNode edit) {
        SectionKind section = SectionKind.valueOf(edit.path("section").stringValue());
        return new PutSection(section, value(edit, "before", section.type()), value(edit, "after", section.type()));
    }

    private static Edit element(JsonNode edit) {
        ElementKind kind = ElementKind.valueOf(edit.path("kind").stringValue());
        return new PutElement(
                kind,
                edit.path("id").stringValue(),
                value(edit, "before", kind.type()),
                value(edit, "after", kind.type()),
                value(edit, "placement", Placement.class));
    }

    private static <T> @Nullable T value(JsonNode edit, String name, Class<? extends T> type) {
        return edit.has(name) ? RecordJson.MAPPER.treeToValue(edit.path(name), type) : null;
    }
}
