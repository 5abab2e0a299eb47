package dev.ledgerwing.core.mass;

import dev.ledgerwing.core.build.Assembly;
import dev.ledgerwing.core.build.Booking;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** What the mass budget has to say about a build, rule by rule. */
public final class MassFindings {

    private final MassStatement statement;
    private final MassForecast forecast;
    private final Figures figures;

    private MassFindings(MassForecast forecast, Figures figures) {
        this.statement = forecast.statement();
        this.forecast = forecast;
        this.figures = figures;
    }

    /** Every finding in the order of the rules, its sentences in the units of {@code figures}. */
    public static List<Finding> of(MassForecast forecast, Figures figures) {
        MassFindings rules = new MassFindings(forecast, figures);
        return Stream.of(
                        rules.target(),
                        rules.ceiling(),
                        rules.partsWithoutMass(),
                        rules.extraItemsWithoutMass(),
                        rules.completeness(),
                        rules.bookings())
                .flatMap(Function.identity())
                .toList();
    }

    private Stream<Finding> target() {
        return Stream.of(new TargetRule(statement, forecast, figures).finding());
    }

    private Stream<Finding> ceiling() {
        return new CeilingRule(statement, figures).finding().stream();
    }

    private Stream<Finding> completeness() {
        return new CompletenessRule(statement).findings().stream();
    }

    private Stream<Finding> partsWithoutMass() {
        return statement.unknown().stream().map(row -> withoutMass(row, row.name()));
    }

    private Stream<Finding> extraItemsWithoutMass() {
        return statement.cases().stream()
                .flatMap(each -> each.unknown().stream()
                        .filter(MassRow::isExtra)
                        .map(row -> withoutMass(
                                row, row.name() + " in “" + each.loadCase().name() + "”")))
                .distinct();
    }

    private static Finding withoutMass(MassRow row, String subject) {
        return new MassAgainst("mass.unknown", subject, row.line(), null, null)
                .finding(
                        Verdict.UNKNOWN,
                        "“" + row.name() + "” has no mass yet and is in no sum: weigh it, or enter a guess.",
                        List.of());
    }

    private Stream<Finding> bookings() {
        Build build = statement.build();
        Stream<Finding> airframe =
                Stream.ofNullable(build.booking()).flatMap(booking -> booked("Booking", "The scales", booking));
        Stream<Finding> assemblies = build.assemblyBookings().stream().flatMap(each -> {
            String name = build.assembly(each.assembly()).map(Assembly::name).orElse(each.assembly());
            return booked("Booking of " + name, name + ": the scales", each.booking());
        });
        return Stream.concat(airframe, assemblies);
    }

    private Stream<Finding> booked(String subject, String scales, Booking booking) {
        Mass mass = booking.mass();
        if (mass.mg() == 0) {
            return Stream.empty();
        }
        Mass size = mass.isNegative() ? Mass.ZERO.minus(mass) : mass;
        String sentence = scales + " said " + figures.mass(size) + (mass.isNegative() ? " less" : " more")
                + " than the ledger: booked, counted in the predicted mass, not explained yet. Noted: “"
                + booking.reason()
                + "”.";
        return Stream.of(
                new MassAgainst("mass.booking", subject, null, mass, null).finding(Verdict.HOLDS, sentence, List.of()));
    }
}
