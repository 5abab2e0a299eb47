package dev.ledgerwing.core.balance.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.balance.Axis;
import dev.ledgerwing.core.balance.weighing.WeighInDeeds.Choice;
import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Booking;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.LineMass;
import dev.ledgerwing.core.build.LinePlace;
import dev.ledgerwing.core.build.Moments;
import dev.ledgerwing.core.build.Nature;
import dev.ledgerwing.core.build.PartDeeds;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.mass.MassStatement;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.Mass;
import java.util.Objects;
import java.util.Random;
import java.util.stream.LongStream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BookkeepingInvariantsTest {

    /** Moments are kept to the milligram-micrometre. */
    private static final Offset<Double> ROUNDED = within(1e-6);

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 100);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void bookingMakesTheLedgerWeighWhatTheScalesSaid(long seed) {
        WeighInDraft draft = off(seed);
        Build booked = weighed(seed, draft);
        ScalesAnswer answer = Weighings.answer(draft);
        assertThat(known(booked)).isEqualTo(answer.mass());
        Moments moments = knownMoments(booked);
        for (Axis axis : new Axis[] {Axis.X, Axis.Y}) {
            assertThat(axis.of(moments).gMm())
                    .isCloseTo(
                            Objects.requireNonNull(answer.joint().momentsGMm().get(axis)), ROUNDED);
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void bookingAndWeighingAgainBooksNothingFurther(long seed) {
        WeighInDraft draft = off(seed);
        Build booked = weighed(seed, draft);
        WeighInReport again = Weighings.report(booked, Weighings.named("W2", draft));
        assertThat(again.proposal().orElseThrow().further()).isEqualTo(Mass.ZERO);
        assertThat(again.proposal().orElseThrow().proposed()).isEqualTo(booked.booking());
        Build twice =
                WeighInDeeds.recorded(booked, Weighings.named("W2", draft), Weighings.REVISION, Choice.AS_ADVISED);
        assertThat(Books.of(twice)).isEqualTo(Books.of(booked));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void correctingALineLeavesMassAndMomentsAndFittingOneChangesThem(long seed) {
        Build booked = weighed(seed, off(seed));
        Random random = new Random(seed);
        PartLine before = booked.lines().get(random.nextInt(booked.lines().size()));
        PartLine after = before.withMass(LineMass.of(new Mass(random.nextInt(300_000)), Basis.WEIGHED))
                .withPlace(LinePlace.at(new Station(
                        new Length(random.nextInt(900_000)), new Length(random.nextInt(90_000)), Length.ZERO)));
        Build corrected = PartDeeds.changed(booked, after, Nature.CORRECTED);
        assertThat(known(corrected)).isEqualTo(known(booked));
        assertThat(knownMoments(corrected)).isEqualTo(knownMoments(booked));
        Build fitted = PartDeeds.changed(booked, after, Nature.FITTED);
        assertThat(known(fitted))
                .isEqualTo(known(booked).plus(after.totalMass()).minus(before.totalMass()));
        assertThat(fitted.weighIns().get(0).aboard()).doesNotContain(before.id());
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void weighingAnAssemblyLaterLeavesWhatTheWholeWeighed(long seed) {
        Build booked = weighed(seed, off(seed));
        for (WeighInDraft wing : new WeighInDraft[] {
            Weighings.level(Weighings.support("Pan", "0", "0", "1234.5 g")),
            Weighings.level(
                    Weighings.support("Root", "500", "0", "800 g"),
                    Weighings.support("Tip", "500", "900", "434.5 g"),
                    Weighings.support("Trailing", "700", "300", "100 g"))
        }) {
            Build both = WeighInDeeds.recorded(
                    booked, Weighings.ofAssembly("W2", "wing", wing), Weighings.REVISION, Choice.BOOK);
            assertThat(both.bookingOf("wing")).isPresent();
            assertThat(known(both)).isEqualTo(known(booked));
            assertThat(knownMoments(both)).isEqualTo(knownMoments(booked));
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void weighingTheWholeAfterAnAssemblyBooksTheRest(long seed) {
        RandomWeighings random = new RandomWeighings(seed);
        Build wingFirst = WeighInDeeds.recorded(
                random.build(),
                Weighings.ofAssembly("W1", "wing", Weighings.level(Weighings.support("Pan", "0", "0", "1234.5 g"))),
                Weighings.REVISION,
                Choice.BOOK);
        WeighInDraft draft = Weighings.named("W2", off(seed));
        Build both = WeighInDeeds.recorded(wingFirst, draft, Weighings.REVISION, Choice.BOOK);
        assertThat(known(both)).isEqualTo(Weighings.answer(draft).mass());
        assertThat(Axis.X.of(knownMoments(both)).gMm())
                .isCloseTo(
                        Objects.requireNonNull(
                                Weighings.answer(draft).joint().momentsGMm().get(Axis.X)),
                        ROUNDED);
    }

    /** The airframe of a seed on scales that say something quite different from its ledger. */
    private static WeighInDraft off(long seed) {
        RandomWeighings random = new RandomWeighings(seed);
        Build build = random.build();
        WeighInDraft right = random.exactly(Weighings.level().ledger(build), 0, null);
        return Weighings.level(
                Weighings.heavier(right.supports().get(0), new Mass(60_000 + 1000 * seed)),
                Weighings.heavier(right.supports().get(1), Mass.ofGrams(-20)),
                Weighings.heavier(right.supports().get(2), Mass.ofGrams(31)));
    }

    private static Build weighed(long seed, WeighInDraft draft) {
        return WeighInDeeds.recorded(new RandomWeighings(seed).build(), draft, Weighings.REVISION, Choice.AS_ADVISED);
    }

    private static Mass known(Build build) {
        MassStatement mass = MassStatement.of(build);
        return mass.basic().plus(mass.booking());
    }

    private static Moments knownMoments(Build build) {
        Moments moments = Objects.requireNonNull(Weighings.level().ledger(build).moments());
        for (Booking booking : build.bookings()) {
            moments = moments.plus(Objects.requireNonNull(booking.moments()));
        }
        return moments;
    }
}
