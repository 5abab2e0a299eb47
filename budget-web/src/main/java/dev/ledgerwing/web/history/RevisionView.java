package dev.ledgerwing.web.history;

import org.jspecify.annotations.Nullable;

/**
 * One revision, ready to be shown.
 *
 * @param difference what it changed; of a first revision, what it began with
 * @param fingerprint the first digits of it
 * @param head number of the newest revision
 */
record RevisionView(HistoryView.Row row, DifferenceView difference, String fingerprint, int head) {

    public boolean isFirst() {
        return row.number() == 1;
    }

    public boolean isHead() {
        return row.number() == head;
    }

    public @Nullable Integer earlier() {
        return isFirst() ? null : row.number() - 1;
    }

    public @Nullable Integer later() {
        return isHead() ? null : row.number() + 1;
    }
}
