package dev.ledgerwing.core;

import dev.ledgerwing.core.build.Airframe;
import dev.ledgerwing.core.build.Assembly;
import dev.ledgerwing.core.build.Assembly.MovesWith;
import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Booking;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.JudgedBy;
import dev.ledgerwing.core.build.LineMass;
import dev.ledgerwing.core.build.LoadCase;
import dev.ledgerwing.core.build.LoadCase.ExtraItem;
import dev.ledgerwing.core.build.LoadCase.Purpose;
import dev.ledgerwing.core.build.MassBudget;
import dev.ledgerwing.core.build.MassBudget.CeilingIs;
import dev.ledgerwing.core.build.MassUncertainty;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Stage;
import dev.ledgerwing.core.quantity.Mass;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Small ledgers to calculate with. Two assemblies, wing and fuselage; everything is aboard unless a load case says otherwise. */
public final class Ledgers {

    public static final MassBudget NO_TARGET = new MassBudget(null, null, null, null);

    private Ledgers() {}

    /** At stage DESIGN, where no line is missed yet, without a target. */
    public static Build with(PartLine... lines) {
        return with(Arrays.asList(lines));
    }

    public static Build with(List<PartLine> lines) {
        Airframe airframe = new Airframe("teal", "Teal", null, Stage.DESIGN, "nose tip");
        return Build.blank(airframe, NO_TARGET)
                .withAssemblies(List.of(
                        new Assembly("wing", "Wing", MovesWith.WING),
                        new Assembly("fuselage", "Fuselage", MovesWith.FUSELAGE)))
                .withLines(lines);
    }

    /** One piece in the fuselage. */
    public static PartLine line(String id, Category category, double grams, Basis basis) {
        return line(id, category, 1, LineMass.of(Mass.ofGrams(grams), basis));
    }

    public static PartLine line(String id, Category category, int quantity, LineMass mass) {
        return PartLine.named(id, "fuselage", "Part " + id, category, quantity, mass);
    }

    public static PartLine named(String id, String name, Category category) {
        return PartLine.named(id, "fuselage", name, category, 1, LineMass.of(Mass.ofGrams(50), Basis.WEIGHED));
    }

    public static PartLine inWing(PartLine line) {
        return PartLine.named(line.id(), "wing", line.name(), line.category(), line.quantity(), line.mass());
    }

    /** A weighed line that grows by nothing and is certain: it stands for its mass alone. */
    public static PartLine certain(String id, double grams) {
        LineMass mass = new LineMass(Mass.ofGrams(grams), Basis.WEIGHED, null, Mass.ZERO, null);
        return line(id, Category.STRUCTURE, 1, mass);
    }

    /** A mass with its own allowance, and otherwise certain. */
    public static LineMass grownBy(double percent, double grams) {
        return new LineMass(Mass.ofGrams(grams), Basis.CALCULATED, null, Mass.ZERO, percent);
    }

    public static LineMass notKnown() {
        return LineMass.notKnown();
    }

    public static Build atStage(Stage stage, Build build) {
        Airframe was = build.airframe();
        return build.withAirframe(new Airframe(was.code(), was.name(), was.purpose(), stage, was.datum()));
    }

    public static Build withTarget(double grams, @Nullable Double reservePercent, Build build) {
        return build.withBudget(new MassBudget(Mass.ofGrams(grams), null, null, reservePercent));
    }

    public static Build withCeiling(Mass ceiling, CeilingIs meant, Build build) {
        return build.withBudget(new MassBudget(null, ceiling, meant, null));
    }

    public static Build withBooking(double grams, Build build) {
        return build.withBooking(new Booking(Mass.ofGrams(grams), "weighed on the kitchen scales"));
    }

    /** The given cases after the design case in which everything is aboard. */
    public static Build withCases(Build build, LoadCase... more) {
        List<LoadCase> cases = new ArrayList<>(build.loadCases());
        cases.addAll(Arrays.asList(more));
        return withExactCases(build, cases);
    }

    public static Build withExactCases(Build build, List<LoadCase> cases) {
        return build.withLoadCases(cases);
    }

    public static LoadCase loadCase(String code, Purpose purpose, List<String> absent, ExtraItem... extra) {
        return new LoadCase(code, "Case " + code, purpose, false, absent, Map.of(), List.of(), Arrays.asList(extra));
    }

    public static LoadCase designCase(List<String> absent, ExtraItem... extra) {
        return new LoadCase(
                "survey", "Survey", Purpose.FLIGHT, true, absent, Map.of(), List.of(), Arrays.asList(extra));
    }

    public static ExtraItem extra(String name, @Nullable Double grams, Basis basis) {
        return new ExtraItem(name, grams == null ? null : Mass.ofGrams(grams), basis, null);
    }

    public static Build judgedWith(MassUncertainty uncertainty, Build build) {
        JudgedBy was = build.judgedBy();
        return build.withJudgedBy(new JudgedBy(was.growth(), uncertainty, was.reserves()));
    }

    /** The default rules with other scales. */
    public static MassUncertainty scales(double stepG, double maxErrorG, boolean tareTaken) {
        MassUncertainty own = MassUncertainty.OWN_CHOICE;
        return new MassUncertainty(
                own.guessedPercent(),
                own.calculatedPercent(),
                own.cataloguePercent(),
                Mass.ofGrams(stepG),
                Mass.ofGrams(maxErrorG),
                tareTaken,
                own.guessedCorrelation(),
                own.calculatedCorrelation(),
                own.catalogueCorrelation(),
                own.weighedCorrelation(),
                own.source());
    }

    /** The default rules with another correlation between guesses of one category. */
    public static MassUncertainty guessesCorrelatedBy(double correlation) {
        MassUncertainty own = MassUncertainty.OWN_CHOICE;
        return new MassUncertainty(
                own.guessedPercent(),
                own.calculatedPercent(),
                own.cataloguePercent(),
                own.scaleStep(),
                own.scaleMaxError(),
                own.tareTaken(),
                correlation,
                own.calculatedCorrelation(),
                own.catalogueCorrelation(),
                own.weighedCorrelation(),
                own.source());
    }
}
