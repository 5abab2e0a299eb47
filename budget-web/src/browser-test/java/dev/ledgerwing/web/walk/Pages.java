package dev.ledgerwing.web.walk;

import java.util.List;

/** Every page that a signed-in member can open without typing anything. */
final class Pages {

    static final List<String> OPEN = List.of(
            "/",
            "/airframes/new",
            "/airframes/curlew/parts",
            "/airframes/curlew/parts/new",
            "/airframes/curlew/assemblies/wing",
            "/airframes/curlew/import",
            "/airframes/curlew/mass",
            "/airframes/godwit/mass",
            "/airframes/dunlin/mass",
            "/airframes/curlew/mass/budget",
            "/airframes/curlew/balance",
            "/airframes/godwit/balance",
            "/airframes/dunlin/balance",
            "/airframes/curlew/balance/geometry",
            "/airframes/curlew/balance/limits",
            "/airframes/curlew/balance/new-case",
            "/airframes/curlew/balance/new-bay",
            "/airframes/curlew/balance/new-rule",
            "/airframes/curlew/balance/cases/survey",
            "/airframes/curlew/balance/bays/pack-bay",
            "/airframes/curlew/balance/rules/K001",
            "/airframes/curlew/power",
            "/airframes/godwit/power",
            "/airframes/dunlin/power",
            "/airframes/curlew/power?failed=element.standby-avionics.4",
            "/airframes/curlew/power?failed=nonsense",
            "/airframes/curlew/power/sources/flight-pack",
            "/airframes/curlew/power/sources/new",
            "/airframes/curlew/power/rails/avionics-5v",
            "/airframes/curlew/power/feeds/drive-avionics",
            "/airframes/curlew/power/feeds/new",
            "/airframes/curlew/power/duty/avionics-5v",
            "/airframes/curlew/power/phases",
            "/airframes/curlew/power/rules",
            "/airframes/curlew/power/day",
            "/airframes/curlew/radio/link",
            "/airframes/curlew/radio/controls",
            "/airframes/curlew/radio/functions",
            "/airframes/curlew/radio/demands",
            "/airframes/curlew/radio/demands?phase=cruise",
            "/airframes/curlew/radio/channels",
            "/airframes/curlew/radio/given-up",
            "/airframes/godwit/radio/given-up",
            "/airframes/dunlin/weigh-ins/W001",
            "/airframes/dunlin/weigh-ins/new",
            "/airframes/curlew/history",
            "/airframes/curlew/history/1",
            "/airframes/curlew/history/12",
            "/airframes/curlew/history/compare?from=3&to=12",
            "/airframes/curlew/sheets",
            "/airframes/curlew/sheets/12/build.html",
            "/airframes/curlew/sheets/12/balance.html",
            "/airframes/curlew/sheets/12/power.html");

    private Pages() {}
}
