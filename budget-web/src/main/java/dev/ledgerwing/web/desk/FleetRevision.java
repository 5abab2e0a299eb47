package dev.ledgerwing.web.desk;

/** A revision together with the airframe it belongs to. */
public record FleetRevision(String airframeCode, String airframeName, Revision revision) {}
