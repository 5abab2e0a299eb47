package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.balance.BalanceBand;
import dev.ledgerwing.core.balance.BalanceShape;
import dev.ledgerwing.core.balance.BalanceStatement;
import dev.ledgerwing.core.balance.CaseBalance;
import dev.ledgerwing.core.balance.Cg;
import dev.ledgerwing.core.balance.CgUncertainty;
import dev.ledgerwing.core.balance.MassState;
import dev.ledgerwing.core.balance.NeutralPoint;
import dev.ledgerwing.core.balance.PanelPlan;
import dev.ledgerwing.core.balance.PlacedRow;
import dev.ledgerwing.core.balance.Planform;
import dev.ledgerwing.core.build.LinePlace;
import dev.ledgerwing.core.build.LoadCase;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.verdict.Verdict;
import dev.ledgerwing.report.drawing.BalanceView.BandView;
import dev.ledgerwing.report.drawing.BalanceView.CaseView;
import dev.ledgerwing.report.drawing.BalanceView.CgView;
import dev.ledgerwing.report.drawing.BalanceView.Chord;
import dev.ledgerwing.report.drawing.BalanceView.PlanPanel;
import dev.ledgerwing.report.drawing.BalanceView.PlanPoint;
import dev.ledgerwing.report.drawing.PartMark.Kind;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Takes from a balance statement what its drawings show. */
record BalanceViews(BalanceStatement statement, Function<LoadCase, Verdict> verdicts) {

    BalanceView view() {
        BalanceShape shape = statement.shape();
        Planform wing = shape.wing();
        NeutralPoint neutralPoint = shape.neutralPoint();
        return new BalanceView(
                statement.build().airframe().name(),
                panels(wing),
                panels(shape.tail()),
                wing == null ? null : chord(wing),
                band(shape.band()),
                shape.declared() == null ? null : band(shape.derived()),
                neutralPoint == null ? null : neutralPoint.xMm(),
                statement.cases().stream().map(this::loadCase).toList(),
                statement.design().rows().stream().map(this::part).toList());
    }

    private static List<PlanPanel> panels(@Nullable Planform surface) {
        return surface == null
                ? List.of()
                : surface.panels().stream()
                        .flatMap(panel -> surface.mirrored()
                                ? Stream.of(panel(panel, 1), panel(panel, -1))
                                : Stream.of(panel(panel, 1)))
                        .toList();
    }

    private static PlanPanel panel(PanelPlan panel, int side) {
        double rootY = side * panel.rootYMm();
        double tipY = side * panel.tipYMm();
        return new PlanPanel(List.of(
                new PlanPoint(panel.rootXMm(), rootY),
                new PlanPoint(panel.tipXMm(), tipY),
                new PlanPoint(panel.tipXMm() + panel.tipChordMm(), tipY),
                new PlanPoint(panel.rootXMm() + panel.rootChordMm(), rootY)));
    }

    private static Chord chord(Planform wing) {
        return new Chord(wing.macXMm(), wing.macMm(), wing.macYMm(), wing.mirrored());
    }

    private static @Nullable BandView band(@Nullable BalanceBand band) {
        return band == null
                ? null
                : new BandView(band.forwardXMm(), band.aftXMm(), band.source() == BalanceBand.Source.DERIVED);
    }

    private CaseView loadCase(CaseBalance one) {
        LoadCase loadCase = one.loadCase();
        return new CaseView(
                loadCase.code(),
                loadCase.name(),
                one.isFlight(),
                loadCase.design(),
                one.withoutMass().size() + one.withoutStation().size(),
                verdicts.apply(loadCase).name().toLowerCase(Locale.ROOT),
                cg(one, MassState.BASIC),
                cg(one, MassState.PREDICTED));
    }

    private static @Nullable CgView cg(CaseBalance one, MassState state) {
        Cg cg = one.cg(state).orElse(null);
        CgUncertainty uncertainty = one.uncertainty(state).orElse(null);
        return cg == null ? null : new CgView(cg.xMm(), cg.yMm(), uncertainty == null ? null : uncertainty.xMm());
    }

    private PartMark part(PlacedRow row) {
        Length mirrored = row.mirroredAtY();
        return new PartMark(
                row.row().name(), row.row().basic(), row.station(), mirrored == null ? null : mirrored.mm(), kind(row));
    }

    private Kind kind(PlacedRow row) {
        String line = row.row().line();
        if (line == null) {
            return Kind.EXTRA;
        }
        LinePlace place = statement.build().line(line).orElseThrow().place();
        return Objects.isNull(place.travel()) ? Kind.FIXED : Kind.MOVABLE;
    }
}
