package dev.ledgerwing.core.balance.correction;

import static dev.ledgerwing.core.Said.plain;
import static dev.ledgerwing.core.balance.correction.Trims.between;
import static dev.ledgerwing.core.balance.correction.Trims.movable;
import static dev.ledgerwing.core.balance.correction.Trims.part;
import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.Ledgers;
import dev.ledgerwing.core.balance.BalanceStatement;
import dev.ledgerwing.core.balance.MassState;
import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.LineMass;
import dev.ledgerwing.core.build.LinePlace;
import dev.ledgerwing.core.build.LoadCase.Purpose;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.quantity.UnitSystem;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Without a wing the limits move 2 mm inward: a band to 352 mm aims for 350 mm. */
class CorrectionFinderTest {

    private static final PartLine PACK = part("pack", "fuselage", Category.BATTERY, 800, 300);
    private static final PartLine MOTOR = part("motor", "nose", Category.PROPULSION, 200, 60);
    private static final PartLine REST = part("rest", "fuselage", Category.STRUCTURE, 4000, 388.125);

    /** 5.000 kg that balance at 360.9 mm. */
    private static Build tailHeavy(double packFromMm) {
        return between(300, 352, movable(PACK, packFromMm, 340), MOTOR, REST);
    }

    private static List<String> sentences(Corrections corrections) {
        return corrections.offers().stream()
                .map(offer -> plain(offer.sentence(Figures.METRIC)))
                .toList();
    }

    private static List<CorrectionKind> kinds(Build build) {
        return CorrectionFinder.of(build).offers().stream()
                .map(Correction::kind)
                .toList();
    }

    private static Correction offer(Build build, CorrectionKind kind) {
        return CorrectionFinder.of(build).offers().stream()
                .filter(offer -> offer.kind() == kind)
                .findFirst()
                .orElseThrow();
    }

    private static double cgXMm(Build build) {
        return BalanceStatement.of(build)
                .design()
                .cg(MassState.BASIC)
                .orElseThrow()
                .xMm();
    }

    /** By derivation: 68.125 mm forward, rounded inward to 69; 187.931 g, rounded up to 188. */
    @Test
    void movesAPackForNothingOrAddsBallastAhead() {
        Build build = tailHeavy(200);
        assertThat(cgXMm(build)).isEqualTo(360.9);
        assertThat(sentences(CorrectionFinder.of(build)))
                .startsWith("Move “Part pack” 69 mm forward, to station 231 mm.")
                .contains("Put 188 g of ballast beside “Part motor”, at station 60 mm.");
    }

    @Test
    void saysWhatItCostsAndWhereEveryCaseBalancesThen() {
        Correction ballast = offer(tailHeavy(290), CorrectionKind.BALLAST);
        assertThat(ballast.cost()).isEqualTo(Mass.ofGrams(188));
        assertThat(ballast.cases()).hasSize(2).allMatch(Aim::isMet);
        assertThat(ballast.cases().get(0).point().xMm()).isBetween(349.9, 350.0);
        assertThat(offer(tailHeavy(200), CorrectionKind.MOVE).cost()).isEqualTo(Mass.ZERO);
    }

    @Test
    void applyingAnOfferLandsWhatItShowed() {
        Build build = tailHeavy(290);
        Correction ballast = offer(build, CorrectionKind.BALLAST);
        Build applied = ballast.on(build, () -> "L9");
        assertThat(applied.line("L9").orElseThrow().category()).isEqualTo(Category.BALLAST);
        assertThat(cgXMm(applied)).isEqualTo(cgXMm(ballast.after()));
        assertThat(CorrectionFinder.of(applied).isNeeded()).isFalse();
    }

    @Test
    void anOfferIsFoundAgainByItsKey() {
        Correction move = offer(tailHeavy(200), CorrectionKind.MOVE);
        assertThat(CorrectionFinder.of(tailHeavy(200)).offer(move.key())).contains(move);
        assertThat(CorrectionFinder.of(tailHeavy(200)).offer("move.pack.1")).isEmpty();
    }

    @Test
    void sentencesStandInTheUnitsOfTheReader() {
        Correction move = offer(tailHeavy(200), CorrectionKind.MOVE);
        assertThat(plain(move.sentence(new Figures(UnitSystem.OUNCE_INCH))))
                .isEqualTo("Move “Part pack” 2.72 in forward, to station 9.09 in.");
    }

    @Test
    void aTravelThatIsTooShortIsNoOffer() {
        assertThat(kinds(tailHeavy(290))).doesNotContain(CorrectionKind.MOVE);
    }

    @Test
    void aMoveWithBallastSavesBallast() {
        Correction pair = offer(tailHeavy(260), CorrectionKind.PAIR);
        assertThat(plain(pair.sentence(Figures.METRIC)))
                .isEqualTo("Move “Part pack” 40 mm forward, to station 260 mm."
                        + " Put 78 g of ballast beside “Part motor”, at station 60 mm.");
        assertThat(pair.cost()).isEqualTo(Mass.ofGrams(78));
    }

    @Test
    void twoMovesDoWhatOneCannot() {
        PartLine receiver = movable(part("receiver", "fuselage", Category.RADIO, 400, 320), 200, 320);
        Build build = between(300, 352, movable(PACK, 260, 340), MOTOR, receiver, part("rest", 3600, 395.6944));
        List<Correction> offers = CorrectionFinder.of(build).offers();
        assertThat(kinds(build)).doesNotContain(CorrectionKind.MOVE);
        assertThat(offers.get(0).kind()).isEqualTo(CorrectionKind.PAIR);
        assertThat(offers.get(0).cost()).isEqualTo(Mass.ZERO);
        assertThat(offers.get(0).steps()).allMatch(MovePart.class::isInstance);
    }

    @Test
    void aNoseHeavyAirframeIsHelpedFromTheOtherSide() {
        Build build = between(
                363, 400, movable(PACK, 200, 420), MOTOR, part("tail", "tail", Category.STRUCTURE, 100, 900), REST);
        assertThat(cgXMm(build)).isBetween(371.0, 372.0);
        Build noseHeavy = between(
                380, 420, movable(PACK, 200, 420), MOTOR, part("tail", "tail", Category.STRUCTURE, 100, 900), REST);
        assertThat(sentences(CorrectionFinder.of(noseHeavy)))
                .anyMatch(sentence -> sentence.startsWith("Move “Part pack” 68 mm aft"))
                .anyMatch(sentence -> sentence.contains("of ballast beside “Part tail”"))
                .noneMatch(sentence -> sentence.contains("beside “Part motor”"));
        assertThat(CorrectionFinder.of(build).offers()).isEmpty();
    }

    @Test
    void nothingIsOfferedWhereNothingIsWrong() {
        Corrections corrections = CorrectionFinder.of(between(300, 400, movable(PACK, 200, 340), MOTOR, REST));
        assertThat(corrections.isNeeded()).isFalse();
        assertThat(corrections.offers()).isEmpty();
        assertThat(corrections.remarks(Figures.METRIC)).isEmpty();
    }

    @Test
    void nothingIsOfferedWithoutLimits() {
        Build build = tailHeavy(200).withGeometry(Trims.limits(null));
        assertThat(CorrectionFinder.of(build).offers()).isEmpty();
        assertThat(CorrectionFinder.of(build).isNeeded()).isFalse();
    }

    @Test
    void uselessBallastIsTakenOutFirst() {
        PartLine lead = part("lead", "tail", Category.BALLAST, 120, 900);
        Build build = between(355, 370, PACK, MOTOR, REST, lead);
        Correction first = CorrectionFinder.of(build).offers().get(0);
        assertThat(plain(first.sentence(Figures.METRIC))).isEqualTo("Take “Part lead” out: saves 120 g.");
        assertThat(first.cost()).isEqualTo(Mass.ofGrams(-120));
        assertThat(first.on(build, () -> "L9").line("lead")).isEmpty();
    }

    @Test
    void aPayloadCanStayAtHomeAndStaysInTheLedger() {
        PartLine camera = part("camera", "tail", Category.PAYLOAD, 120, 900);
        Build build = between(355, 370, PACK, MOTOR, REST, camera);
        Correction home = offer(build, CorrectionKind.LEAVE_OUT);
        Build applied = home.on(build, () -> "L9");
        assertThat(applied.line("camera")).isPresent();
        assertThat(applied.designCase().absent()).containsExactly("camera");
        assertThat(CorrectionFinder.of(applied).isNeeded()).isFalse();
    }

    @Test
    void aPartOfAnotherMassIsOfferedUpToAFifth() {
        Build build = between(300, 360.8, PACK, MOTOR, REST);
        assertThat(sentences(CorrectionFinder.of(build)))
                .contains("Make or find “Part motor” 36 g heavier, 18 % of its mass.")
                .contains("Make or find “Part rest” 359 g lighter, 9 % of its mass.");
        Build far = between(200, 300, PACK, MOTOR, REST);
        assertThat(kinds(far)).doesNotContain(CorrectionKind.OTHER_MASS);
    }

    @Test
    void casesThatPullApartGetTheReason() {
        PartLine sonde = part("sonde", "fuselage", Category.PAYLOAD, 1000, 700);
        Build both = Ledgers.withCases(
                between(375, 390, movable(PACK, 200, 400), MOTOR, REST, sonde),
                Ledgers.loadCase("empty", Purpose.FLIGHT, List.of("sonde")));
        Corrections corrections = CorrectionFinder.of(both);
        assertThat(corrections.isNeeded()).isTrue();
        assertThat(kinds(both)).isSubsetOf(CorrectionKind.LEAVE_OUT);
        assertThat(corrections.remarks(Figures.METRIC)).hasSize(1);
        assertThat(plain(corrections.remarks(Figures.METRIC).get(0)))
                .startsWith("“Case empty” is too far forward and “All up” too far aft, 56.5 mm apart");
    }

    @Test
    void aNarrowBandIsAimedForInItsMiddle() {
        Corrections corrections = CorrectionFinder.of(between(346, 350, movable(PACK, 100, 340), MOTOR, REST));
        assertThat(corrections.now()).allMatch(Aim::narrow);
        Correction move = corrections.offers().get(0);
        assertThat(move.cases())
                .allMatch(aim -> aim.point().xMm() > 347.4 && aim.point().xMm() < 348.6);
        assertThat(corrections.remarks(Figures.METRIC))
                .containsExactly("The band is too narrow to keep clear of both its limits: its middle is aimed for.");
    }

    @Test
    void aCgThatIsTooUnsureForItsBandAsksForTheScales() {
        PartLine guessed = PartLine.named(
                        "guess", "tail", "Guess", Category.STRUCTURE, 1, LineMass.of(Mass.ofGrams(200), Basis.GUESSED))
                .withPlace(LinePlace.at(Trims.at(900)));
        Corrections corrections = CorrectionFinder.of(between(346, 350, movable(PACK, 100, 340), MOTOR, REST, guessed));
        assertThat(corrections.remarks(Figures.METRIC)).anyMatch(remark -> remark.endsWith("makes the CG surer."));
    }

    @Test
    void aSureCgInTheMiddleOfANarrowBandIsLeftThere() {
        Build middle = between(360.4, 361.4, movable(PACK, 100, 340), MOTOR, REST);
        assertThat(CorrectionFinder.of(middle).isNeeded()).isFalse();
    }

    /** Scales that are off by as much as the band is wide: it stays tight, and no part can be put better. */
    @Test
    void whatLiesInTheMiddleAlreadyIsNotMoved() {
        PartLine coarse = REST.withMass(new LineMass(Mass.ofGrams(4000), Basis.WEIGHED, null, Mass.ofGrams(300), null));
        Corrections corrections = CorrectionFinder.of(between(359.4, 362.4, movable(PACK, 100, 340), MOTOR, coarse));
        assertThat(corrections.isNeeded()).isTrue();
        assertThat(corrections.offers()).isEmpty();
        assertThat(corrections.remarks(Figures.METRIC))
                .contains("Every flight case lies as near the middle of its band as can be aimed for.");
    }

    @Test
    void whatIsNotKnownIsSaid() {
        PartLine antenna = PartLine.named("antenna", "tail", "Antenna", Category.RADIO, 1, Ledgers.notKnown());
        Build build = between(300, 352, movable(PACK, 200, 340), MOTOR, REST, antenna);
        assertThat(CorrectionFinder.of(build).remarks(Figures.METRIC))
                .contains(
                        "Worked out without one part of which mass or station is not known: enter what is missing first.");
    }

    @Test
    void theOrderIsTheSameWhateverTheOrderOfTheParts() {
        Build one = between(300, 352, movable(PACK, 200, 340), MOTOR, REST);
        Build other = between(300, 352, REST, MOTOR, movable(PACK, 200, 340));
        assertThat(sentences(CorrectionFinder.of(other))).isEqualTo(sentences(CorrectionFinder.of(one)));
    }
}
