package dev.ledgerwing.core.balance.weighing;

import dev.ledgerwing.core.Ledgers;
import dev.ledgerwing.core.balance.Axis;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.FitState;
import dev.ledgerwing.core.build.LinePlace;
import dev.ledgerwing.core.build.LoadCase.ExtraItem;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.build.WeighIn.Scale;
import dev.ledgerwing.core.build.WeighIn.Support;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.LengthUnit;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.quantity.MassUnit;
import dev.ledgerwing.core.quantity.QuantityText;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Weighings to read, typed as builders type them. */
final class Weighings {

    static final Build EMPTY = Ledgers.with();
    static final Scale ONE_GRAM = scale("1 g", "0 g");
    static final WeighInReport.LedgerRevision REVISION = new WeighInReport.LedgerRevision(7, "ab12");

    private Weighings() {}

    static Mass mass(String text) {
        return QuantityText.mass(text, MassUnit.G).value().orElseThrow();
    }

    static Length length(String text) {
        return QuantityText.length(text, LengthUnit.MM).value().orElseThrow();
    }

    static Scale scale(String step, String maxError) {
        return new Scale(mass(step), mass(maxError));
    }

    static Station at(String x, String y, String z) {
        return new Station(length(x), length(y), length(z));
    }

    /** A support on the ground of the drawing. */
    static Support support(String name, String x, String y, String reading, String tare) {
        return new Support(name, at(x, y, "0"), mass(reading), mass(tare), null);
    }

    static Support support(String name, String x, String y, String reading) {
        return support(name, x, y, reading, "0");
    }

    static Support tilted(String name, String x, String y, String reading, String tiltedReading) {
        return new Support(name, at(x, y, "0"), mass(reading), Mass.ZERO, mass(tiltedReading));
    }

    static WeighInDraft level(Support... supports) {
        return draft(0, null, supports);
    }

    static WeighInDraft draft(double noseUpDeg, @Nullable Double tiltedDeg, Support... supports) {
        return new WeighInDraft(
                "W1",
                "Hall scales",
                LocalDate.of(2026, 5, 3),
                null,
                null,
                null,
                List.of(),
                ONE_GRAM,
                Length.ZERO,
                noseUpDeg,
                tiltedDeg,
                Arrays.asList(supports));
    }

    static WeighInDraft with(Scale scale, String armUncertainty, WeighInDraft was) {
        return new WeighInDraft(
                was.id(),
                was.name(),
                was.date(),
                was.assembly(),
                was.loadCase(),
                was.aboard(),
                was.extra(),
                scale,
                length(armUncertainty),
                was.noseUpDeg(),
                was.tiltedNoseUpDeg(),
                was.supports());
    }

    static WeighInDraft carrying(WeighInDraft was, ExtraItem... extra) {
        return new WeighInDraft(
                was.id(),
                was.name(),
                was.date(),
                was.assembly(),
                was.loadCase(),
                was.aboard(),
                Arrays.asList(extra),
                was.scale(),
                was.armUncertainty(),
                was.noseUpDeg(),
                was.tiltedNoseUpDeg(),
                was.supports());
    }

    static WeighInDraft ofAssembly(String id, String assembly, WeighInDraft was) {
        return new WeighInDraft(
                id,
                was.name(),
                was.date(),
                assembly,
                was.loadCase(),
                was.aboard(),
                was.extra(),
                was.scale(),
                was.armUncertainty(),
                was.noseUpDeg(),
                was.tiltedNoseUpDeg(),
                was.supports());
    }

    static WeighInDraft named(String id, WeighInDraft was) {
        return new WeighInDraft(
                id,
                was.name() + " " + id,
                was.date(),
                was.assembly(),
                was.loadCase(),
                was.aboard(),
                was.extra(),
                was.scale(),
                was.armUncertainty(),
                was.noseUpDeg(),
                was.tiltedNoseUpDeg(),
                was.supports());
    }

    static WeighInReport report(Build build, WeighInDraft draft) {
        return WeighInReport.of(build, draft, REVISION, Figures.METRIC);
    }

    static ScalesReading read(WeighInDraft draft) {
        return report(EMPTY, draft).reading();
    }

    static ScalesAnswer answer(WeighInDraft draft) {
        return read(draft).answer().orElseThrow();
    }

    static Coordinate centre(WeighInDraft draft, Axis axis) {
        return answer(draft).joint().centre(axis).orElseThrow();
    }

    static PartLine fitted(PartLine line, @Nullable Station station) {
        LinePlace place = station == null ? LinePlace.UNKNOWN : LinePlace.at(station);
        return new PartLine(
                line.id(),
                line.assembly(),
                line.name(),
                line.category(),
                line.quantity(),
                line.mass(),
                place,
                FitState.FITTED,
                line.supply(),
                line.note(),
                line.serves(),
                line.electrical(),
                line.needs());
    }

    /** A fitted line with exactly this mass. */
    static PartLine certain(String id, double grams, double xMm, double yMm, double zMm) {
        return fitted(Ledgers.certain(id, grams), new Station(Length.ofMm(xMm), Length.ofMm(yMm), Length.ofMm(zMm)));
    }

    static PartLine inWing(PartLine line) {
        return fitted(Ledgers.inWing(line), line.place().station());
    }

    static Support heavier(Support was, Mass more) {
        return new Support(was.name(), was.station(), was.reading().plus(more), was.tare(), was.tiltedReading());
    }
}
