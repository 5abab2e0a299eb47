package dev.ledgerwing.core.build;

/** The booking of one assembly that was weighed by itself. */
public record AssemblyBooking(String assembly, Booking booking) implements Element {

    public AssemblyBooking {
        Check.slug("assembly", assembly);
    }

    @Override
    public String id() {
        return assembly;
    }

    @Override
    public String name() {
        return assembly;
    }
}
