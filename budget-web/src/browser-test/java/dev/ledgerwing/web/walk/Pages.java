package dev.ledgerwing.web.walk;

import java.util.List;

/** Every page that a signed-in member can open without typing anything. */
final class Pages {

    static final List<String> OPEN = List.of(
            "/",
            "/airframes/new",
            "/airframes/curlew/parts",
            "/airframes/curlew/parts/new",
            "/airframes/curlew/assemblies/wing");

    private Pages() {}
}
