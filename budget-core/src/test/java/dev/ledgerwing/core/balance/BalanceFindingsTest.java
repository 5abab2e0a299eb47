package dev.ledgerwing.core.balance;

import static dev.ledgerwing.core.balance.Balances.at;
import static dev.ledgerwing.core.balance.Balances.certain;
import static dev.ledgerwing.core.balance.Balances.finding;
import static dev.ledgerwing.core.balance.Balances.findings;
import static dev.ledgerwing.core.balance.Balances.mirroredWing;
import static dev.ledgerwing.core.balance.Balances.panel;
import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.Ledgers;
import dev.ledgerwing.core.Said;
import dev.ledgerwing.core.build.BalanceLimits;
import dev.ledgerwing.core.build.Booking;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.LinePlace;
import dev.ledgerwing.core.build.LoadCase.Purpose;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.StaticMargin;
import dev.ledgerwing.core.build.Surface;
import dev.ledgerwing.core.build.Tail;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.quantity.UnitSystem;
import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Remedy;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BalanceFindingsTest {

    /** Chord 200 mm from 500 mm on, neutral point at 25 per cent: 550 mm. */
    private static final Surface WING = mirroredWing(500, panel(1000, 200, 200, 0, 0));

    @ParameterizedTest
    @CsvSource({
        "94.9, BREAKS, nose-heavy by 0.1 mm: at basic mass it balances at 94.9 mm; the forward limit is 95 mm.",
        "83, BREAKS, nose-heavy by 12 mm: at basic mass it balances at 83 mm; the forward limit is 95 mm.",
        "95, HOLDS, balances at 95 mm at basic mass; 0 mm inside",
        "101, HOLDS, balances at 101 mm at basic mass; 4 mm inside: the aft limit is 105 mm.",
        "109, BREAKS, tail-heavy by 4 mm: at basic mass it balances at 109 mm; the aft limit is 105 mm."
    })
    void judgesTheCgAgainstTheLimitsInMillimetres(double xMm, Verdict verdict, String start) {
        Finding finding = finding(BalanceFindings.CG, Balances.within(95, 105, certain("all", 1000, xMm)));
        assertThat(finding.verdict()).isEqualTo(verdict);
        if (xMm != 95) {
            assertThat(Said.sentence(finding)).startsWith("“All up”: " + start.replace(';', ','));
        }
        assertThat(finding.subject()).isEqualTo("All up");
        assertThat(finding.measured()).isEqualTo(xMm);
        assertThat(finding.unit()).isEqualTo("mm");
    }

    @Test
    void warnsOfATailHeavyAeroplane() {
        Finding finding = finding(BalanceFindings.CG, Balances.within(95, 105, certain("all", 1000, 109)));
        assertThat(finding.sentence()).endsWith("may not be controllable: do not fly it like this.");
        assertThat(finding.limit()).isEqualTo(105);
        assertThat(finding.marginLeft()).isEqualTo(-4);
    }

    @Test
    void neverSaysThatALimitIsBrokenByNothing() {
        Finding finding = finding(BalanceFindings.CG, Balances.within(95, 105, certain("all", 1000, 94.99)));
        assertThat(Said.sentence(finding)).startsWith("“All up”: nose-heavy by less than 0.1 mm");
    }

    /** One mass at a station sure to 3 mm: twice that is wanted. */
    @ParameterizedTest
    @CsvSource({"100.9, TIGHT", "101, HOLDS", "109, HOLDS", "109.1, TIGHT"})
    void isTightInsideByLessThanTwiceItsUncertainty(double xMm, Verdict expected) {
        PartLine all = Ledgers.certain("all", 1000).withPlace(LinePlace.at(at(xMm, 0, 0)));
        Finding finding = finding(BalanceFindings.CG, Balances.within(95, 115, all));
        assertThat(finding.verdict()).isEqualTo(expected);
        assertThat(Said.sentence(finding).contains("standard uncertainty of 3 mm"))
                .isEqualTo(expected == Verdict.TIGHT);
    }

    @Test
    void judgesTheWorseOfBasicAndPredictedMass() {
        PartLine tail = Balances.line("tail", Ledgers.grownBy(50, 200), 200)
                .withPlace(new LinePlace(at(200, 0, 0), Length.ZERO, null, null, null, null));
        Finding finding = finding(BalanceFindings.CG, Balances.within(95, 115, certain("nose", 200, 0), tail));
        assertThat(Said.sentence(finding))
                .isEqualTo(
                        "“All up”: tail-heavy by 5 mm: at predicted mass it balances at 120 mm, the aft limit is 115 mm. At basic mass:"
                                + " 100 mm. A tail-heavy aeroplane may not be controllable: do not fly it like this.");
    }

    @Test
    void groundCasesHaveNoBand() {
        Build build = Ledgers.withCases(
                Balances.within(95, 105, certain("all", 1000, 100), certain("pack", 100, 100)),
                Ledgers.loadCase("bench", Purpose.GROUND, List.of("pack")),
                Ledgers.loadCase("ferry", Purpose.FLIGHT, List.of("pack")));
        assertThat(findings(BalanceFindings.CG, build))
                .extracting(Finding::subject)
                .containsExactly("All up", "Case ferry");
    }

    @Test
    void aPartWithoutMassOrStationLeavesTheBalanceUnknown() {
        Build build = Balances.within(
                95,
                105,
                certain("all", 1000, 50),
                Ledgers.certain("pack", 1450),
                Balances.line("tray", Ledgers.notKnown(), 10));
        Finding finding = finding(BalanceFindings.CG, build);
        assertThat(finding.verdict()).as("the pack may bring it back").isEqualTo(Verdict.UNKNOWN);
        assertThat(Said.sentence(finding))
                .isEqualTo(
                        "“All up”: where it balances is not known: no mass is known of “Part tray”, and nobody has said where “Part"
                                + " pack” sits. The rest balances at 50 mm.");
        assertThat(Said.sentence(finding("balance.no-station", build)))
                .isEqualTo("“Part pack” has a mass, but nobody has said where it sits: it is in no balance.");
    }

    @Test
    void namesAFewOfManyPartsWithoutAStation() {
        Build build = Ledgers.with(
                Ledgers.certain("e", 1),
                Ledgers.certain("d", 1),
                Ledgers.certain("c", 1),
                Ledgers.certain("b", 1),
                Ledgers.certain("a", 1));
        assertThat(finding("balance.no-station", build).sentence())
                .startsWith("5 parts have a mass, but nobody has said where they sit")
                .endsWith("“Part a”, “Part b”, “Part c” and 2 more.");
    }

    @Test
    void allMassesUnknownAndNothingAboardAreNotFine() {
        Finding unknown =
                finding(BalanceFindings.CG, Balances.within(95, 105, Balances.line("a", Ledgers.notKnown(), 100)));
        Finding nothing = finding(BalanceFindings.CG, Balances.within(95, 105));
        assertThat(List.of(unknown.verdict(), nothing.verdict())).containsOnly(Verdict.UNKNOWN);
        assertThat(unknown.sentence()).startsWith("“All up”: no part aboard has both a mass and a station");
        assertThat(nothing.sentence()).startsWith("“All up”: nothing is aboard");
    }

    @Test
    void withoutLimitsSaysWhatToDoFirstAndJudgesNothing() {
        Build build = Ledgers.with(certain("all", 1000, 100));
        Finding finding = finding(BalanceFindings.NO_LIMITS, build);
        assertThat(finding.verdict()).isEqualTo(Verdict.UNKNOWN);
        assertThat(finding.remedies())
                .extracting(Remedy::sentence)
                .containsExactly(
                        "First enter the two limits that the plan gives in millimetres, or draw the wing and enter the static"
                                + " margin you want.");
        assertThat(findings(BalanceFindings.CG, build)).isEmpty();
    }

    @Test
    void limitsInPerCentNeedAWing() {
        Build build = Ledgers.with(certain("all", 1000, 100))
                .withGeometry(Balances.geometry(null, null, BalanceLimits.ofPercentMac(28, 38), null));
        assertThat(finding(BalanceFindings.NO_LIMITS, build).sentence()).contains("no wing is drawn");
    }

    @Test
    void limitsInPerCentAreThoseOfTheChord() {
        Build build = winged(590, BalanceLimits.ofPercentMac(15, 20), null, null);
        assertThat(Said.sentence(finding(BalanceFindings.CG, build)))
                .startsWith(
                        "“All up”: tail-heavy by 50 mm: at basic mass it balances at 590 mm (45 % MAC), the aft limit is 540 mm (20 %"
                                + " MAC).");
    }

    @Test
    void withoutDeclaredLimitsTheStaticMarginWantedGivesTheBand() {
        Build build = winged(530, null, new StaticMargin(5, 15), null);
        BalanceShape shape = BalanceStatement.of(build).shape();
        assertThat(shape.band()).isEqualTo(new BalanceBand(BalanceBand.Source.DERIVED, 520, 540));
        assertThat(finding(BalanceFindings.CG, build).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(finding(BalanceFindings.CG, build).sentence()).contains("estimated from the neutral point");
        assertThat(findings(BalanceFindings.STATIC_MARGIN, build)).isEmpty();
    }

    @Test
    void declaredLimitsJudgeAndTheDerivedOnesAreShown() {
        Build build = winged(530, BalanceLimits.ofPercentMac(5, 12), new StaticMargin(5, 15), null);
        BalanceShape shape = BalanceStatement.of(build).shape();
        assertThat(shape.band()).isEqualTo(shape.declared());
        assertThat(shape.derived()).isNotNull();
        assertThat(finding(BalanceFindings.CG, build).verdict()).isEqualTo(Verdict.BREAKS);
    }

    /** The neutral point lies at 25 per cent. */
    @ParameterizedTest
    @CsvSource({"20, HOLDS", "20.1, TIGHT", "24.9, TIGHT", "25, BREAKS", "30, BREAKS"})
    void holdsTheAftLimitAgainstTheNeutralPoint(double aftPercent, Verdict expected) {
        Build build = winged(530, BalanceLimits.ofPercentMac(10, aftPercent), new StaticMargin(5, 15), null);
        Finding finding = finding(BalanceFindings.AFT_LIMIT, build);
        assertThat(finding.verdict()).isEqualTo(expected);
        assertThat(finding.sentence()).contains("An estimate from the wing alone");
    }

    @ParameterizedTest
    @CsvSource({
        "515, TIGHT, sluggish",
        "530, HOLDS, least static margin",
        "541, TIGHT, less than",
        "550, BREAKS, do not fly"
    })
    void holdsTheStaticMarginAgainstTheOneWanted(double xMm, Verdict expected, String said) {
        Build build = winged(xMm, BalanceLimits.ofPercentMac(0, 20), new StaticMargin(5, 15), null);
        Finding finding = finding(BalanceFindings.STATIC_MARGIN, build);
        assertThat(finding.verdict()).isEqualTo(expected);
        assertThat(finding.sentence()).contains(said);
    }

    @ParameterizedTest
    @CsvSource({"538.2, 1, TIGHT", "537.8, 1, HOLDS", "538.2, 0, HOLDS"})
    void aStaticMarginLessThanTwiceItsUncertaintyAboveTheLeastIsTight(double xMm, double stationMm, Verdict expected) {
        Build build = winged(xMm, BalanceLimits.ofPercentMac(0, 20), new StaticMargin(5, 15), null);
        Build measured = build.withLines(build.lines().stream()
                .map(line -> line.withPlace(
                        new LinePlace(line.place().station(), Length.ofMm(stationMm), null, null, null, null)))
                .toList());

        assertThat(finding(BalanceFindings.STATIC_MARGIN, measured).verdict())
                .as("5.9 or 6.1 % of a chord of 200 mm, 5 % wanted; 1 mm is 0.5 %")
                .isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({"5, 0", "5.1, 1", "-7, 1"})
    void saysWhenTheCgLiesOffTheCentreLine(double yMm, int findings) {
        Build build = Balances.within(95, 105, certain("all", 1000, at(100, yMm, 0)));
        assertThat(findings(BalanceFindings.LATERAL, build)).hasSize(findings);
    }

    @Test
    void saysToWhichSideItLies() {
        Finding finding =
                finding(BalanceFindings.LATERAL, Balances.within(95, 105, certain("all", 1000, at(100, -7, 0))));
        assertThat(finding.verdict()).isEqualTo(Verdict.TIGHT);
        assertThat(Said.sentence(finding))
                .isEqualTo(
                        "The CG lies 7 mm to the left of the centre line, more than 5 mm: it needs aileron trim, or ballast on"
                                + " the right.");
    }

    @Test
    void asksAboutSurfacesThatStandUpright() {
        Surface fin = mirroredWing(500, panel(300, 200, 150, 0, 90));
        Build build = Ledgers.with(certain("all", 1000, 100))
                .withGeometry(Balances.geometry(fin, new Tail(fin, 0.9), BalanceLimits.ofPercentMac(20, 30), null));
        assertThat(findings("balance.no-area", build))
                .extracting(Finding::subject)
                .containsExactly("Wing", "Stabiliser");
        assertThat(finding(BalanceFindings.NO_LIMITS, build).sentence()).contains("no chord seen from above");
    }

    @Test
    void asksAboutAPartFortyMetresAway() {
        Build build = Balances.within(
                95,
                105,
                certain("pack", 1500, 40_000),
                certain("wing", 2000, 550),
                certain("tail", 300, 1600),
                certain("motor", 400, 20),
                certain("body", 800, 600));
        assertThat(findings("balance.far-away", build))
                .extracting(Finding::line)
                .containsExactly("pack");
        assertThat(finding("balance.far-away", build).verdict()).isEqualTo(Verdict.UNKNOWN);
        assertThat(finding("balance.far-away", build).sentence()).endsWith("Is its station in another unit?");
    }

    @Test
    void asksNothingAboutTheEndsOfALongAeroplane() {
        PartLine[] lines = new PartLine[20];
        for (int i = 0; i < lines.length; i++) {
            lines[i] = certain("p" + i, 100, i < 18 ? 200 + i : (i - 17) * 900);
        }
        assertThat(findings("balance.far-away", Balances.within(95, 105, lines)))
                .isEmpty();
        assertThat(findings("balance.far-away", winged(40_000, null, null, null)))
                .hasSize(1);
        assertThat(findings("balance.far-away", Ledgers.with(certain("only", 1000, 40_000))))
                .hasSize(1);
    }

    @Test
    void saysThatABookingSitsNobodyKnowsWhere() {
        Build build = Balances.within(95, 105, certain("all", 1000, 100))
                .withBooking(new Booking(Mass.ofGrams(40), "kitchen scales"));
        assertThat(finding("balance.booking", build).verdict()).isEqualTo(Verdict.TIGHT);
    }

    @Test
    void speaksInchesToWhoeverReadsInches() {
        BalanceStatement statement = BalanceStatement.of(Balances.within(254, 508, certain("all", 1000, 279.4)));
        assertThat(BalanceFindings.of(statement, new Figures(UnitSystem.OUNCE_INCH)))
                .extracting(Said::sentence)
                .containsExactly("“All up”: balances at 11 in at basic mass, 1 in inside: the forward limit is 10 in.");
    }

    @Test
    void judgesTheBalanceBudgetAlone() {
        assertThat(findings(Ledgers.with())).extracting(Finding::budget).containsOnly(Budget.BALANCE);
    }

    private static Build winged(
            double cgXMm, @Nullable BalanceLimits limits, @Nullable StaticMargin margin, @Nullable Tail tail) {
        return Ledgers.with(certain("all", 1000, cgXMm)).withGeometry(Balances.geometry(WING, tail, limits, margin));
    }
}
