package dev.ledgerwing.core.build;

import java.util.List;

/** What is commanded by radio. */
public record Radio(List<RadioFunction> functions) {

    public static final Radio NONE = new Radio(List.of());

    public Radio {
        functions = List.copyOf(functions);
    }
}
