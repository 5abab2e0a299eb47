package dev.ledgerwing.core.file.table;

import java.math.BigDecimal;

/** The ranges the record allows, so that a cell outside them is told before the record refuses it. */
final class Limits {

    static final int MOST_PIECES = 100_000;
    static final BigDecimal LARGEST_MASS_G = BigDecimal.valueOf(1_000_000);
    static final BigDecimal LARGEST_STATION_MM = BigDecimal.valueOf(100_000);
    static final BigDecimal LARGEST_COST = BigDecimal.valueOf(1_000_000_000);
    static final int LONGEST_NAME = 200;
    static final int LONGEST_SUPPLIER = 200;
    static final int LONGEST_PART_CODE = 80;
    static final int LONGEST_NOTE = 2000;

    private Limits() {}
}
