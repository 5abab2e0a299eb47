package dev.ledgerwing.core.balance.correction;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Nature;
import dev.ledgerwing.core.build.PartDeeds;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.Mass;
import java.util.function.Supplier;

/**
 * Moves a part within its travel. Where it is stowed moves along, since both hang on one fixing; a load case that puts it elsewhere still
 * does.
 *
 * @param part as it is now
 * @param by aft; negative is forward
 */
public record MovePart(PartLine part, Length by) implements CorrectionStep {

    @Override
    public CorrectionKind kind() {
        return CorrectionKind.MOVE;
    }

    @Override
    public Build on(Build build, Supplier<String> newIds) {
        PartLine now = build.line(part.id()).orElse(part);
        return PartDeeds.changed(build, now.withPlace(new AlongX(by).of(now.place())), Nature.FITTED);
    }

    @Override
    public String sentence(Figures figures) {
        Station station = part.place().station();
        String to = station == null
                ? ""
                : ", to station " + figures.length(station.x().plus(by));
        return "Move “" + part.name() + "” " + new AlongX(by).words(figures) + to + ".";
    }

    @Override
    public Mass cost() {
        return Mass.ZERO;
    }

    @Override
    public double movementMm() {
        return Math.abs(by.mm());
    }

    @Override
    public String subject() {
        return part.name();
    }

    @Override
    public String line() {
        return part.id();
    }

    @Override
    public String key() {
        return "move." + part.id() + "." + by.um();
    }
}
