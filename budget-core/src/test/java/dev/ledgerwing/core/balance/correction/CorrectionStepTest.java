package dev.ledgerwing.core.balance.correction;

import static dev.ledgerwing.core.Said.plain;
import static dev.ledgerwing.core.balance.correction.Trims.at;
import static dev.ledgerwing.core.balance.correction.Trims.movable;
import static dev.ledgerwing.core.balance.correction.Trims.part;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.ledgerwing.core.build.Assembly.MovesWith;
import dev.ledgerwing.core.build.AssemblyBooking;
import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Bay;
import dev.ledgerwing.core.build.Booking;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Builds;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.FitState;
import dev.ledgerwing.core.build.LinePlace;
import dev.ledgerwing.core.build.LinePlace.Travel;
import dev.ledgerwing.core.build.LoadCase;
import dev.ledgerwing.core.build.LoadCase.Purpose;
import dev.ledgerwing.core.build.Moments;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.Mass;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** What each step does to a record. */
class CorrectionStepTest {

    private static final PartLine SPAR = movable(part("spar", "wing", Category.STRUCTURE, 500, 600), 550, 650);
    private static final PartLine PACK = part("pack", "fuselage", Category.BATTERY, 800, 300);
    private static final PartLine MOTOR = part("motor", "nose", Category.PROPULSION, 200, 60);

    private static Build build() {
        return Trims.between(300, 400, SPAR, stowable(PACK), MOTOR);
    }

    private static PartLine stowable(PartLine line) {
        return line.withPlace(new LinePlace(
                line.place().station(), null, at(350), new Travel(Length.ofMm(250), Length.ofMm(320)), null, null));
    }

    private static LinePlace place(Build build, String line) {
        return build.line(line).orElseThrow().place();
    }

    private static Bay bay(String code, String... holds) {
        return new Bay(code, "Bay", Length.ofMm(500), Length.ofMm(700), null, null, null, null, List.of(holds));
    }

    @Test
    void movingAPartMovesWhereItIsStowedButNotItsTravel() {
        Build moved = new MovePart(stowable(PACK), Length.ofMm(-20)).on(build(), () -> "new");
        assertThat(place(moved, "pack").station()).isEqualTo(at(280));
        assertThat(place(moved, "pack").stowedStation()).isEqualTo(at(330));
        assertThat(place(moved, "pack").travel()).isEqualTo(new Travel(Length.ofMm(250), Length.ofMm(320)));
    }

    @Test
    void aPartThatIsGoneCannotBeMoved() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new MovePart(part("gone", 10, 0), Length.ofMm(1)).on(build(), () -> "new"))
                .withMessageContaining("no longer there");
    }

    @Test
    void movingKeepsAWeighInAndAnotherMassTakesThePartOffIt() {
        Build weighed = build().withWeighIns(List.of(Builds.weighIn("W1", List.of("pack", "motor"))));
        Build moved = new MovePart(stowable(PACK), Length.ofMm(-20)).on(weighed, () -> "new");
        assertThat(moved.weighIns().get(0).aboard()).containsExactly("pack", "motor");
        Build lighter = new OtherMass(stowable(PACK), Mass.ofGrams(-50)).on(weighed, () -> "new");
        assertThat(lighter.weighIns().get(0).aboard()).containsExactly("motor");
    }

    @Test
    void anotherMassIsPlannedAndNotWeighed() {
        PartLine after = new OtherMass(stowable(PACK), Mass.ofGrams(-50))
                .on(build(), () -> "new")
                .line("pack")
                .orElseThrow();
        assertThat(after.totalMass()).isEqualTo(Mass.ofGrams(750));
        assertThat(after.mass().basis()).isEqualTo(Basis.CALCULATED);
        assertThat(after.mass().growthPercent()).as("it is made to its mass").isEqualTo(0.0);
        assertThat(after.state()).isEqualTo(FitState.PLANNED);
        assertThat(after.supply().partCode()).isNull();
    }

    @Test
    void anotherMassOfSeveralIsToldOfEach() {
        PartLine two = PartLine.named("two", "wing", "Servo", Category.SERVO, 2, MOTOR.mass());
        OtherMass lighter = new OtherMass(two, Mass.ofGrams(-10));
        assertThat(plain(lighter.sentence(Figures.METRIC)))
                .isEqualTo("Make or find “Servo” 10 g lighter each, 5 % of its mass.");
        assertThat(lighter.cost()).isEqualTo(Mass.ofGrams(-20));
    }

    @Test
    void ballastIsCutToItsMassAndNotWeighedYet() {
        BallastPlace place = new BallastPlace("motor", "beside “Motor”", "nose", at(60));
        PartLine ballast = new AddBallast(place, Mass.ofGrams(40))
                .on(build(), () -> "new")
                .line("new")
                .orElseThrow();
        assertThat(ballast.assembly()).isEqualTo("nose");
        assertThat(ballast.mass().basis()).isEqualTo(Basis.CALCULATED);
        assertThat(ballast.mass().growthPercent()).isEqualTo(0.0);
        assertThat(ballast.mass().uncertainty()).isEqualTo(Mass.ofGrams(1));
    }

    @Test
    void ballastIsTriedAtTheEndsBesideBallastAndAtTheEndsOfBays() {
        PartLine lead = part("lead", "tail", Category.BALLAST, 30, 400);
        Build build = Trims.between(300, 400, SPAR, PACK, MOTOR, lead).withBays(List.of(bay("b", "pack")));
        assertThat(BallastPlace.in(build))
                .extracting(BallastPlace::words)
                .containsExactly(
                        "beside “Part motor”",
                        "beside “Part spar”",
                        "beside “Part lead”",
                        "at the front of “Bay”",
                        "at the back of “Bay”");
        PartLine probe = part("probe", "nose", Category.PAYLOAD, 30, 10);
        assertThat(BallastPlace.in(Trims.between(300, 400, SPAR, PACK, MOTOR, probe)))
                .as("not beside what may stay at home")
                .extracting(BallastPlace::words)
                .containsExactly("beside “Part motor”", "beside “Part spar”");
        assertThat(BallastPlace.in(build)).extracting(BallastPlace::assembly).endsWith("fuselage", "fuselage");
        assertThat(BallastPlace.in(
                        build.withBays(List.of()).withLines(List.of()).withAssemblies(List.of())))
                .isEmpty();
    }

    @Test
    void whatMovesWithTheWingMovesWhollyAndNothingElseDoes() {
        LoadCase flaps = new LoadCase(
                "flaps",
                "Flaps",
                Purpose.FLIGHT,
                false,
                List.of(),
                Map.of("spar", at(640), "pack", at(310)),
                List.of(),
                List.of());
        Build before = build().withLoadCases(List.of(LoadCase.everythingAboard(), flaps))
                .withBays(List.of(bay("wing-bay", "spar"), bay("mixed", "spar", "pack"), bay("empty")));
        Build after = new GroupShift(MovesWith.WING, Length.ofMm(10)).on(before);
        assertThat(place(after, "spar").station()).isEqualTo(at(610));
        assertThat(place(after, "spar").travel()).isEqualTo(new Travel(Length.ofMm(560), Length.ofMm(660)));
        assertThat(place(after, "pack")).isEqualTo(place(before, "pack"));
        assertThat(after.loadCases().get(1).moved()).isEqualTo(Map.of("spar", at(650), "pack", at(310)));
        assertThat(after.bays())
                .extracting(Bay::fromX)
                .containsExactly(Length.ofMm(510), Length.ofMm(500), Length.ofMm(500));
    }

    @Test
    void whatWasBookedOnTheWingMovesWithIt() {
        Mass booked = Mass.ofGrams(20);
        Build before = build().withAssemblyBookings(List.of(
                new AssemblyBooking("wing", new Booking(booked, "weighed", Moments.of(booked, at(600)))),
                new AssemblyBooking("nose", new Booking(booked, "weighed", Moments.of(booked, at(60))))));
        Build after = new GroupShift(MovesWith.WING, Length.ofMm(10)).on(before);
        assertThat(after.bookingOf("wing").orElseThrow().moments()).isEqualTo(Moments.of(booked, at(610)));
        assertThat(after.bookingOf("nose")).isEqualTo(before.bookingOf("nose"));
    }

    @Test
    void aLongerNoseTakesItsPartsForwardAndAddsStructureInTheMiddle() {
        Build after = new LengthenNose(Length.ofMm(40), Length.ofMm(200), Mass.ofGrams(16)).on(build(), () -> "new");
        assertThat(place(after, "motor").station()).isEqualTo(at(20));
        PartLine structure = after.line("new").orElseThrow();
        assertThat(structure.place().station()).isEqualTo(at(180));
        assertThat(structure.assembly()).isEqualTo("nose");
        assertThat(structure.totalMass()).isEqualTo(Mass.ofGrams(16));
        assertThat(place(after, "pack")).isEqualTo(place(build(), "pack"));
    }

    @Test
    void leavingAPayloadAtHomeForgetsWhereCasesPutIt() {
        LoadCase ground = new LoadCase(
                "bench", "Bench", Purpose.GROUND, false, List.of(), Map.of("pack", at(1)), List.of(), List.of());
        LoadCase flight = new LoadCase(
                "ferry", "Ferry", Purpose.FLIGHT, true, List.of(), Map.of("pack", at(2)), List.of("motor"), List.of());
        Build after = new LeaveAtHome(PACK).on(build().withLoadCases(List.of(ground, flight)), () -> "new");
        assertThat(after.loadCases().get(0)).isEqualTo(ground);
        assertThat(after.loadCases().get(1).absent()).containsExactly("pack");
        assertThat(after.loadCases().get(1).moved()).isEmpty();
        assertThat(after.loadCases().get(1).stowed()).containsExactly("motor");
    }

    @Test
    void everyKeyIsItsOwn() {
        BallastPlace place = new BallastPlace("motor", "beside “Motor”", "nose", at(60));
        List<CorrectionStep> steps = List.of(
                new MovePart(PACK, Length.ofMm(5)),
                new MovePart(PACK, Length.ofMm(-5)),
                new AddBallast(place, Mass.ofGrams(5)),
                new TakeOutBallast(PACK),
                new LeaveAtHome(PACK),
                new OtherMass(PACK, Mass.ofGrams(5)),
                new ShiftWing(Length.ofMm(5), true),
                new LengthenNose(Length.ofMm(5), Length.ofMm(200), Mass.ofGrams(2)));
        assertThat(steps).extracting(CorrectionStep::key).doesNotHaveDuplicates();
        assertThat(steps).allMatch(step -> Objects.requireNonNull(step.key()).matches("[A-Za-z0-9.-]+"));
    }
}
