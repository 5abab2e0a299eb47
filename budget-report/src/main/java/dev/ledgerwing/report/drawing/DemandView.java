package dev.ledgerwing.report.drawing;

import java.util.List;

/**
 * What a grid of functions and phases shows: texts are ready, nothing in it needs computing.
 *
 * @param phases their names in order
 * @param groups functions that share a channel stand together
 * @param notes what cannot be drawn, a sentence each
 */
public record DemandView(String airframe, List<String> phases, List<Group> groups, List<String> notes) {

    /** What a phase asks of one state. */
    public enum Asked {
        /** The pilot must be able to choose it then. */
        MUST,
        /** It is named among what does no harm. */
        MAY,
        /** It would do harm. */
        NEVER,
        /** Nothing is said of it, so it does no harm. */
        OPEN
    }

    /** Functions on one channel, or on none. */
    public record Group(String heading, boolean quiet, List<Row> rows) {

        public Group {
            rows = List.copyOf(rows);
        }
    }

    /**
     * A switched function.
     *
     * @param cells what each phase asks
     */
    public record Row(String name, List<String> states, List<Cell> cells) {

        public Row {
            states = List.copyOf(states);
            cells = List.copyOf(cells);
        }
    }

    /**
     * What one phase asks of one function.
     *
     * @param asked of each of its states, in their order
     */
    public record Cell(List<Asked> asked) {

        public Cell {
            asked = List.copyOf(asked);
        }

        /** Whether nothing is asked and nothing forbidden. */
        public boolean isOpen() {
            return asked.stream().allMatch(each -> each == Asked.OPEN);
        }

        /** Whether a state would do harm. */
        public boolean isLimited() {
            return asked.contains(Asked.NEVER);
        }
    }

    public DemandView {
        phases = List.copyOf(phases);
        groups = List.copyOf(groups);
        notes = List.copyOf(notes);
    }

    boolean isEmpty() {
        return phases.isEmpty() || groups.isEmpty();
    }
}
