package dev.ledgerwing.core.build;

/** A nested record that only gathers fields: each of them is compared and merged for itself. */
interface FieldGroup {}
