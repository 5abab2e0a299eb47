package dev.ledgerwing.web.tables;

/** Where imported parts go. */
enum Placing {
    /** Behind the parts that are there. */
    APPEND,
    /** In place of all of them. */
    REPLACE
}
