package dev.ledgerwing.core.balance.weighing;

import dev.ledgerwing.core.balance.Axis;
import dev.ledgerwing.core.build.AssemblyBooking;
import dev.ledgerwing.core.build.Booking;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Moments;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.WeighIn;
import dev.ledgerwing.core.mass.WholeWeighing;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.quantity.Moment;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The bookings that follow from a weigh-in. Of the airframe: scales less lines less what is booked for assemblies. Of an assembly: scales
 * less lines; where the whole airframe was weighed with the same parts, the airframe's booking takes the opposite, so that what was weighed
 * stays.
 *
 * <p>Along an axis that the scales cannot tell, the booked mass is put where the ledger has the CG of what was weighed, so that booking
 * it moves nothing that way. Where the scales told the mass alone no moments are booked, unless others have to be balanced by them.
 */
final class Bookkeeping {

    private static final int PLACES = 6; // milligram-micrometres in a gram-millimetre, as a power of ten
    private static final int LONGEST_NAME = 150;

    private final Build build;
    private final WeighIn weighIn;
    private final LedgerSide ledger;
    private final ScalesAnswer answer;
    private final Books books;

    Bookkeeping(Build build, WeighIn weighIn, LedgerSide ledger, ScalesAnswer answer) {
        this.build = build;
        this.weighIn = weighIn;
        this.ledger = ledger;
        this.answer = answer;
        this.books = Books.of(build);
    }

    BookingProposal proposal(boolean advised) {
        String assembly = weighIn.assembly();
        Books booked = assembly == null ? whole() : assembly(assembly, difference(ledger.mass(), ledger.moments()));
        Books cleared = assembly == null ? books.withAirframe(null) : assembly(assembly, null);
        return new BookingProposal(assembly, books.of(assembly), booked.of(assembly), advised, booked, cleared);
    }

    /** What the ledger says with what is booked for assemblies: what a weigh-in of the whole airframe is held against. */
    JointMass reference() {
        if (!weighIn.isWhole()) {
            return ledger.joint();
        }
        List<Booking> aboard = onScales();
        Mass mass = aboard.stream().map(Booking::mass).reduce(ledger.mass(), Mass::plus);
        return LedgerSide.joint(
                mass, plus(ledger.moments(), aboard), ledger.joint().errors());
    }

    private Books whole() {
        Books placed = books;
        if (tellsPlace()) {
            for (AssemblyBooking each : books.assemblies()) {
                placed = placed.withAssembly(each.assembly(), placed(each.assembly(), each.booking()));
            }
        }
        List<Booking> aboard = onScales();
        Mass mass = aboard.stream().map(Booking::mass).reduce(ledger.mass(), Mass::plus);
        return placed.withAirframe(difference(mass, plus(ledger.moments(), aboard)));
    }

    /** The bookings of the assemblies that had a part on the scales, each at a place. */
    private List<Booking> onScales() {
        return books.assemblies().stream()
                .filter(booked -> ledger.compared().stream()
                        .anyMatch(line -> line.assembly().equals(booked.assembly())))
                .map(booked -> placed(booked.assembly(), booked.booking()))
                .toList();
    }

    private static @Nullable Moments plus(@Nullable Moments moments, List<Booking> bookings) {
        Moments sum = moments;
        for (Booking each : bookings) {
            Moments more = each.moments();
            sum = sum == null || more == null ? null : sum.plus(more);
        }
        return sum;
    }

    /** Scales less what is accounted for; null when nothing is left. */
    private @Nullable Booking difference(Mass accounted, @Nullable Moments moments) {
        Mass mass = answer.mass().minus(accounted);
        Moments left = tellsPlace() && moments != null ? left(mass, moments) : null;
        String reason = "weighed " + weighIn.date() + ": " + shortened(weighIn.name());
        return kept(books.of(weighIn.assembly()), mass, left, reason);
    }

    private boolean tellsPlace() {
        return answer.joint().isKnown(Axis.X) || answer.joint().isKnown(Axis.Y);
    }

    private Moments left(Mass mass, Moments accounted) {
        return new Moments(left(Axis.X, mass, accounted), left(Axis.Y, mass, accounted), left(Axis.Z, mass, accounted));
    }

    private Moment left(Axis axis, Mass mass, Moments accounted) {
        Double said = answer.joint().momentsGMm().get(axis);
        if (said != null) {
            return moment(said).minus(axis.of(accounted));
        }
        return moment(
                mass.grams() * ledger.joint().centre(axis).map(Coordinate::mm).orElse(0.0));
    }

    private static Moment moment(double gMm) {
        return new Moment(new BigDecimal(gMm)
                .movePointRight(PLACES)
                .setScale(0, RoundingMode.HALF_UP)
                .toBigInteger());
    }

    private Books assembly(String code, @Nullable Booking changed) {
        Booking was = books.of(code);
        Booking airframe = books.airframe();
        if (!takesOpposite()) {
            return books.withAssembly(code, changed);
        }
        boolean balanced = airframe == null || airframe.moments() != null;
        Booking is = changed == null || !balanced ? changed : placed(code, changed);
        Booking before = was == null || !balanced ? was : placed(code, was);
        return books.withAssembly(code, is).withAirframe(opposite(airframe, before, is));
    }

    /** Whether the whole airframe was weighed with the same parts: then it is known what it weighs, however the difference is split. */
    private boolean takesOpposite() {
        Optional<WholeWeighing> weighed = WholeWeighing.of(build);
        return weighed.isEmpty()
                ? books.airframe() != null
                : ledger.compared().stream()
                        .map(PartLine::id)
                        .anyMatch(weighed.get().lines()::contains);
    }

    private @Nullable Booking opposite(@Nullable Booking airframe, @Nullable Booking was, @Nullable Booking is) {
        Mass mass = mass(airframe).plus(mass(was)).minus(mass(is));
        Moments booked = moments(airframe);
        Moments back = moments(was);
        Moments taken = moments(is);
        Moments left = booked == null || back == null || taken == null
                ? null
                : booked.plus(back).minus(taken);
        String reason = airframe == null
                ? "booked elsewhere since the whole airframe was weighed: " + shortened(weighIn.name())
                : airframe.reason();
        return kept(airframe, mass, left, reason);
    }

    private static Mass mass(@Nullable Booking booking) {
        return booking == null ? Mass.ZERO : booking.mass();
    }

    private static @Nullable Moments moments(@Nullable Booking booking) {
        return booking == null ? Moments.ZERO : booking.moments();
    }

    /** The booking there was when it says the same; null when nothing is left. */
    private static @Nullable Booking kept(
            @Nullable Booking before, Mass mass, @Nullable Moments moments, String reason) {
        if (mass.mg() == 0 && (moments == null || moments.equals(Moments.ZERO))) {
            return null;
        }
        boolean same = before != null && before.mass().equals(mass) && Objects.equals(before.moments(), moments);
        return same ? before : new Booking(mass, reason, moments);
    }

    /** A booking of which the mass alone is known, put where the ledger has the CG of the assembly. */
    private Booking placed(String assembly, Booking booking) {
        if (booking.moments() != null) {
            return booking;
        }
        List<PartLine> lines = build.lines().stream()
                .filter(line -> line.assembly().equals(assembly))
                .toList();
        JointMass joint =
                LedgerSide.of(build, build.designCase(), lines, List.of()).joint();
        double massG = booking.mass().grams();
        Optional<Moments> moments = joint.centre(Axis.X)
                .flatMap(x -> joint.centre(Axis.Y)
                        .flatMap(y -> joint.centre(Axis.Z)
                                .map(z -> new Moments(
                                        moment(massG * x.mm()), moment(massG * y.mm()), moment(massG * z.mm())))));
        return moments.map(at -> new Booking(booking.mass(), booking.reason(), at))
                .orElse(booking);
    }

    private static String shortened(String name) {
        return name.length() <= LONGEST_NAME ? name : name.substring(0, LONGEST_NAME) + "…";
    }
}
