package dev.ledgerwing.report.sheet;

import java.util.List;

/**
 * The parts of one assembly.
 *
 * @param count how many lines it has, in words
 * @param total its subtotal; empty where it is in no sum
 */
public record PartGroup(String title, String count, String total, List<PartEntry> parts) {

    public PartGroup {
        parts = List.copyOf(parts);
    }
}
