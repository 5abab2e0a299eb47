package dev.ledgerwing.core.build;

/** A part of the record with an identity of its own, which changes and merges are followed by. Always a record. */
public sealed interface Element
        permits Assembly,
                AssemblyBooking,
                Bay,
                Board,
                Channel,
                Control,
                Feed,
                KeepApart,
                LoadCase,
                NotNeeded,
                Output,
                PartLine,
                Phase,
                PowerSource,
                RadioFunction,
                Rail,
                WeighIn {

    /** Its id or code, unique among its kind in one build. */
    String id();

    /** What people call it. */
    String name();
}
