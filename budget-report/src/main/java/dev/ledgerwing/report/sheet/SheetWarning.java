package dev.ledgerwing.report.sheet;

import java.util.List;

/**
 * Said large at the head of a sheet that nobody may work from.
 *
 * @param foot the same, short, in the foot of every page
 * @param reasons a sentence each
 * @param ways what would put it right, a sentence each
 */
public record SheetWarning(String title, String foot, List<String> reasons, List<String> ways) {

    public SheetWarning {
        reasons = List.copyOf(reasons);
        ways = List.copyOf(ways);
    }
}
