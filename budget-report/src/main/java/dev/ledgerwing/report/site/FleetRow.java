package dev.ledgerwing.report.site;

import dev.ledgerwing.report.sheet.Fact;
import dev.ledgerwing.report.sheet.MassBar;
import dev.ledgerwing.report.sheet.VerdictMark;
import org.jspecify.annotations.Nullable;

/**
 * One airframe in the table of the fleet.
 *
 * @param sheet address of its build sheet
 * @param pdf address of the same as PDF; null = there is none
 * @param described the bar in words
 */
public record FleetRow(
        String name,
        String stage,
        String sheet,
        @Nullable String pdf,
        VerdictMark mass,
        MassBar bar,
        String described,
        Fact predicted,
        Fact target,
        Fact margin,
        String fingerprint) {}
