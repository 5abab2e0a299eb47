package dev.ledgerwing.report.drawing;

import java.util.Locale;

/**
 * What is drawn in one manner. Every shape can be told from the others in black and white; a style sheet may colour it by the pen's
 * class.
 */
enum Pen {
    SURFACE("fill=\"currentColor\" fill-opacity=\"0.06\" stroke=\"none\""),
    OUTLINE("fill=\"none\" stroke=\"currentColor\" stroke-width=\"1.2\" stroke-linecap=\"round\""),
    PANEL_BEFORE("fill=\"none\" stroke=\"currentColor\" stroke-width=\"0.7\" stroke-dasharray=\"3 3\""),
    CENTRE("fill=\"none\" stroke=\"currentColor\" stroke-width=\"0.8\" stroke-dasharray=\"14 3 3 3\""),
    CHORD("fill=\"none\" stroke=\"currentColor\" stroke-width=\"2.4\""),
    BAND("fill=\"currentColor\" fill-opacity=\"0.1\" stroke=\"none\""),
    HATCH("fill=\"none\" stroke=\"currentColor\" stroke-width=\"0.6\" stroke-opacity=\"0.45\""),
    EDGE("fill=\"none\" stroke=\"currentColor\" stroke-width=\"1.2\""),
    EDGE_BEFORE("fill=\"none\" stroke=\"currentColor\" stroke-width=\"0.8\" stroke-dasharray=\"3 3\""),
    RULER("fill=\"none\" stroke=\"currentColor\" stroke-width=\"0.8\""),
    RULE("fill=\"none\" stroke=\"currentColor\" stroke-width=\"0.6\" stroke-opacity=\"0.25\""),
    LEADER("fill=\"none\" stroke=\"currentColor\" stroke-width=\"0.7\""),
    BAR("fill=\"none\" stroke=\"currentColor\" stroke-width=\"1.4\""),
    BASIC("fill=\"currentColor\" stroke=\"currentColor\" stroke-width=\"1.3\""),
    PREDICTED("fill=\"#fff\" stroke=\"currentColor\" stroke-width=\"1.5\""),
    INCOMPLETE("fill=\"#fff\" stroke=\"currentColor\" stroke-width=\"1.2\" stroke-dasharray=\"2 1.5\""),
    BEFORE("fill=\"currentColor\" fill-opacity=\"0.35\" stroke=\"currentColor\" stroke-width=\"0.8\""),
    ARROW("fill=\"currentColor\" stroke=\"currentColor\" stroke-width=\"1\""),
    NEUTRAL("fill=\"#fff\" stroke=\"currentColor\" stroke-width=\"1.3\""),
    PLAN_PART("fill=\"none\" stroke=\"currentColor\" stroke-width=\"0.6\" stroke-opacity=\"0.5\""),
    PART("fill=\"#fff\" stroke=\"currentColor\" stroke-width=\"0.9\""),
    MOVABLE("fill=\"currentColor\" fill-opacity=\"0.17\" stroke=\"currentColor\" stroke-width=\"1.6\""),
    EXTRA("fill=\"#fff\" stroke=\"currentColor\" stroke-width=\"1.1\" stroke-dasharray=\"2.5 2\""),
    BEAM("fill=\"none\" stroke=\"currentColor\" stroke-width=\"1.8\""),
    FEED("fill=\"none\" stroke=\"currentColor\" stroke-width=\"1.3\""),
    FEED_DARK(
            "fill=\"none\" stroke=\"currentColor\" stroke-width=\"1.3\" stroke-dasharray=\"3 3\" stroke-opacity=\"0.6\""),
    BUS("fill=\"none\" stroke=\"currentColor\" stroke-width=\"3.4\""),
    BUS_DARK(
            "fill=\"none\" stroke=\"currentColor\" stroke-width=\"3.4\" stroke-dasharray=\"3 3\" stroke-opacity=\"0.6\""),
    SYMBOL("fill=\"#fff\" stroke=\"currentColor\" stroke-width=\"1.2\" stroke-linejoin=\"round\""),
    SYMBOL_DARK(
            "fill=\"#fff\" stroke=\"currentColor\" stroke-width=\"1.2\" stroke-dasharray=\"2 1.6\" stroke-opacity=\"0.6\""),
    CROSS("fill=\"none\" stroke=\"currentColor\" stroke-width=\"2.6\" stroke-linecap=\"round\""),
    LOAD_ROOM("fill=\"#fff\" stroke=\"currentColor\" stroke-width=\"0.8\""),
    LOAD("fill=\"currentColor\" stroke=\"none\""),
    CURVE("fill=\"none\" stroke=\"currentColor\" stroke-width=\"2\" stroke-linejoin=\"round\""),
    CURVE_DASHED("fill=\"none\" stroke=\"currentColor\" stroke-width=\"1.6\" stroke-dasharray=\"7 4\""),
    CURVE_DOTTED("fill=\"none\" stroke=\"currentColor\" stroke-width=\"1.2\" stroke-dasharray=\"2 3\""),
    FLOOR("fill=\"none\" stroke=\"currentColor\" stroke-width=\"1.6\" stroke-dasharray=\"10 3 2 3\""),
    STACK("fill=\"none\" stroke=\"currentColor\" stroke-width=\"0.9\""),
    DEMAND("fill=\"none\" stroke=\"currentColor\" stroke-width=\"1.7\""),
    TRACK("fill=\"none\" stroke=\"currentColor\" stroke-width=\"1.6\" stroke-linecap=\"round\""),
    STOP("fill=\"#fff\" stroke=\"currentColor\" stroke-width=\"1.4\""),
    PRESET("fill=\"#fff\" stroke=\"currentColor\" stroke-width=\"1.1\" stroke-dasharray=\"2 1.6\""),
    KNOB("fill=\"currentColor\" stroke=\"currentColor\" stroke-width=\"1\""),
    BLOCK("fill=\"none\" stroke=\"currentColor\" stroke-width=\"1.3\""),
    PIN("fill=\"#fff\" stroke=\"currentColor\" stroke-width=\"1.3\""),
    PIN_FREE("fill=\"#fff\" stroke=\"currentColor\" stroke-width=\"0.8\" stroke-dasharray=\"2 2\""),
    LEAD("fill=\"none\" stroke=\"currentColor\" stroke-width=\"1.3\""),
    SHAPE("fill=\"currentColor\" stroke=\"currentColor\" stroke-width=\"1\""),
    SHAPE_OPEN("fill=\"#fff\" stroke=\"currentColor\" stroke-width=\"1.2\"");

    private final String attributes;

    Pen(String attributes) {
        this.attributes = attributes;
    }

    /** Class and presentation attributes. */
    String attributes() {
        return "class=\"" + name().toLowerCase(Locale.ROOT).replace('_', '-') + "\" " + attributes;
    }
}
