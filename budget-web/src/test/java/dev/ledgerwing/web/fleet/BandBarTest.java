package dev.ledgerwing.web.fleet;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.verdict.Verdict;
import dev.ledgerwing.web.desk.CgFigure;
import org.junit.jupiter.api.Test;

class BandBarTest {

    private static CgFigure inMm(double cg) {
        return new CgFigure(cg, null, 600.0, 700.0, null, null);
    }

    @Test
    void theCgStandsInItsBandByItsShare() {
        assertThat(BandBar.of(inMm(650), Verdict.HOLDS)).isEqualTo(new BandBar(true, 75.0));
        assertThat(BandBar.of(inMm(700), Verdict.HOLDS)).isEqualTo(new BandBar(true, 100.0));
        assertThat(BandBar.of(inMm(650), Verdict.UNKNOWN))
                .as("of what is placed only")
                .isEqualTo(new BandBar(true, null));
    }

    @Test
    void farOutItStandsAtTheEdge() {
        assertThat(BandBar.of(inMm(-4000), Verdict.HOLDS).cg()).isEqualTo(5.0);
        assertThat(BandBar.of(inMm(4000), Verdict.HOLDS).cg()).isEqualTo(145.0);
    }

    @Test
    void withoutLimitsOrCgNothingIsDrawnForThem() {
        assertThat(BandBar.of(new CgFigure(650.0, null, null, null, null, null), Verdict.UNKNOWN))
                .isEqualTo(new BandBar(false, null));
        assertThat(BandBar.of(new CgFigure(null, null, 600.0, 700.0, null, null), Verdict.UNKNOWN))
                .isEqualTo(new BandBar(true, null));
    }

    @Test
    void figuresAreSaidInPerCentWhereThereIsAChordElseInMillimetres() {
        assertThat(inMm(643).words(Figures.METRIC)).isEqualTo("643\u2009mm, 600 to 700");
        assertThat(new CgFigure(641.9, 36.44, 610.0, 640.0, 28.0, 38.0).words(Figures.METRIC))
                .isEqualTo("36.4\u2009% MAC, 28 to 38");
        assertThat(new CgFigure(null, null, null, null, null, null).words(Figures.METRIC))
                .isEqualTo("no CG yet");
        assertThat(new CgFigure(641.9, null, null, null, null, null).words(Figures.METRIC))
                .isEqualTo("641.9\u2009mm, no limits");
    }
}
