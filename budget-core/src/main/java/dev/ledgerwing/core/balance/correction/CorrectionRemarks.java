package dev.ledgerwing.core.balance.correction;

import dev.ledgerwing.core.balance.CaseBalance;
import dev.ledgerwing.core.balance.PlacedRow;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What goes with corrections, or stands in place of them: narrow bands, parts not known, cases that pull apart. */
record CorrectionRemarks(Corrections corrections, Figures figures) {

    List<String> all() {
        List<String> remarks = new ArrayList<>();
        if (corrections.now().stream().anyMatch(Aim::narrow)) {
            remarks.add("The band is too narrow to keep clear of both its limits: its middle is aimed for." + unsure());
        }
        incomplete().ifPresent(remarks::add);
        if (corrections.offers().isEmpty()) {
            remarks.add(whyNone());
        }
        return remarks;
    }

    private String unsure() {
        return corrections.now().stream().anyMatch(aim -> aim.narrow() && aim.isUnsure())
                ? " Weighing more parts makes the CG surer."
                : "";
    }

    private Optional<String> incomplete() {
        long parts = corrections.statement().flight().stream()
                .flatMap(CorrectionRemarks::notPlaced)
                .map(row -> row.row())
                .distinct()
                .count();
        return parts == 0
                ? Optional.empty()
                : Optional.of("Worked out without " + (parts == 1 ? "one part" : parts + " parts")
                        + " of which mass or station is not known: enter what is missing first.");
    }

    private static Stream<PlacedRow> notPlaced(CaseBalance aboard) {
        return Stream.concat(aboard.withoutMass().stream(), aboard.withoutStation().stream());
    }

    private String whyNone() {
        List<Aim> now = corrections.now();
        if (now.stream().allMatch(Aim::isMet)) {
            return "Every flight case lies as near the middle of its band as can be aimed for.";
        }
        Aim foremost = now.stream()
                .min(Comparator.comparingDouble(aim -> aim.clearOfForwardMm()))
                .orElseThrow();
        Aim aftmost = now.stream()
                .min(Comparator.comparingDouble(aim -> aim.clearOfAftMm()))
                .orElseThrow();
        boolean pullApart = foremost.clearOfForwardMm() < 0 && aftmost.clearOfAftMm() < 0;
        return pullApart
                ? pullApart(foremost, aftmost)
                : "Nothing that may be moved, added or left out lands every flight case"
                        + " in its band: give parts a travel, or look at the limits.";
    }

    private String pullApart(Aim foremost, Aim aftmost) {
        double apart = aftmost.point().xMm() - foremost.point().xMm();
        return "“" + foremost.point().name() + "” is too far forward and “"
                + aftmost.point().name() + "” too far aft, "
                + figures.length(Length.ofMm(apart)) + " apart: what puts one right makes the other worse. Carry what"
                + " differs between them nearer to the CG.";
    }
}
