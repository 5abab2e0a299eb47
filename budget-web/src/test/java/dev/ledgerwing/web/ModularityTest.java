package dev.ledgerwing.web;

import org.junit.jupiter.api.Test;
import org.springframework.modulith.core.ApplicationModules;

class ModularityTest {

    @Test
    void featuresUseOnlyWhatOthersOffer() {
        ApplicationModules.of(LedgerwingApplication.class).verify();
    }
}
