package dev.ledgerwing.core.file.table;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** Decides what each column holds: one column for each meaning, everything else is said to be left out. */
final class ColumnPlan {

    private final Header header;
    private final Notes notes;
    private final Map<Meaning, Claim> winners = new EnumMap<>(Meaning.class);

    private ColumnPlan(Header header, Notes notes) {
        this.header = header;
        this.notes = notes;
    }

    static Columns of(Header header, List<ColumnMeaning> said, Notes notes) {
        return new ColumnPlan(header, notes).columns(claims(header, said));
    }

    private static List<Claim> claims(Header header, List<ColumnMeaning> said) {
        Map<Integer, ColumnMeaning> byColumn = said.stream()
                .collect(Collectors.toMap(ColumnMeaning::column, Function.identity(), (one, other) -> other));
        int width = byColumn.keySet().stream().reduce(header.width(), Math::max);
        List<Claim> claims = new ArrayList<>();
        for (int column = 1; column <= width; column++) {
            HeaderCell heading = header.cell(column);
            ColumnMeaning chosen = byColumn.get(column);
            claims.add(chosen == null ? Claim.byHeading(column, heading) : Claim.byPerson(chosen, heading));
        }
        return claims;
    }

    private Columns columns(List<Claim> claims) {
        for (Claim claim : claims.stream().sorted(Claim.STRONGEST_FIRST).toList()) {
            Meaning meaning = claim.meaning();
            if (meaning != null && claim.isRead()) {
                winners.putIfAbsent(meaning, claim);
            }
        }
        List<TableColumn> columns = claims.stream().map(this::column).toList();
        requireName();
        return new Columns(columns, strangeUnits(claims));
    }

    private TableColumn column(Claim claim) {
        Meaning meaning = claim.meaning();
        if (meaning == null) {
            return notUnderstood(claim);
        }
        Claim winner = winners.getOrDefault(meaning, claim);
        if (winner.equals(claim)) {
            return claim.accepted();
        }
        String why = "column " + winner.column() + " already holds: " + meaning.title();
        String sentence =
                "Column " + winner.column() + " is read as “" + meaning.title() + "”, so this one is not read.";
        if (claim.chosen() && winner.chosen()) {
            notes.problem(place(claim), sentence + " Choose one of the two.");
        } else {
            notes.notice(place(claim), sentence);
        }
        return claim.ignored(why);
    }

    private TableColumn notUnderstood(Claim claim) {
        if (claim.header().text().isEmpty()) {
            return claim.ignored("has no heading");
        }
        notes.notice(
                place(claim),
                "The heading " + place(claim).quoted() + " is not understood, so the column is not read.");
        return claim.ignored("heading not understood");
    }

    private void requireName() {
        if (!winners.containsKey(Meaning.NAME)) {
            notes.problem(
                    new Cell(Math.max(1, header.row()), 1, ""),
                    "No column holds the names of the parts: choose the one that does.");
        }
    }

    private List<Integer> strangeUnits(List<Claim> claims) {
        IntStream.Builder columns = IntStream.builder();
        for (Claim claim : claims) {
            @Nullable String strange = claim.header().strangeUnit();
            if (strange != null && claim.equals(winners.get(claim.meaning()))) {
                columns.add(claim.column());
                notes.problem(
                        place(claim),
                        Cell.quoted(strange) + " is not a unit this column can count in: choose its unit.");
            }
        }
        return columns.build().boxed().toList();
    }

    private Cell place(Claim claim) {
        return claim.cell(Math.max(1, header.row()));
    }
}
