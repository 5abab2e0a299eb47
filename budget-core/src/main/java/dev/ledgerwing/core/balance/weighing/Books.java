package dev.ledgerwing.core.balance.weighing;

import dev.ledgerwing.core.build.AssemblyBooking;
import dev.ledgerwing.core.build.Booking;
import dev.ledgerwing.core.build.Build;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Everything that is booked: for the airframe and for its assemblies. */
public record Books(@Nullable Booking airframe, List<AssemblyBooking> assemblies) {

    public Books {
        assemblies = List.copyOf(assemblies);
    }

    public static Books of(Build build) {
        return new Books(build.booking(), build.assemblyBookings());
    }

    public @Nullable Booking of(@Nullable String assembly) {
        if (assembly == null) {
            return airframe;
        }
        return assemblies.stream()
                .filter(each -> each.assembly().equals(assembly))
                .map(AssemblyBooking::booking)
                .findFirst()
                .orElse(null);
    }

    /** The record with these bookings in place of its own. */
    public Build in(Build build) {
        return build.withBooking(airframe).withAssemblyBookings(assemblies);
    }

    Books withAirframe(@Nullable Booking changed) {
        return new Books(changed, assemblies);
    }

    Books withAssembly(String assembly, @Nullable Booking changed) {
        List<AssemblyBooking> all = new ArrayList<>();
        boolean found = false;
        for (AssemblyBooking each : assemblies) {
            boolean meant = each.assembly().equals(assembly);
            found |= meant;
            if (!meant) {
                all.add(each);
            } else if (changed != null) {
                all.add(new AssemblyBooking(assembly, changed));
            }
        }
        if (!found && changed != null) {
            all.add(new AssemblyBooking(assembly, changed));
        }
        return new Books(airframe, all);
    }
}
