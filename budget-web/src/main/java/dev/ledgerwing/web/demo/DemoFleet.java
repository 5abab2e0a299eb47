package dev.ledgerwing.web.demo;

import dev.ledgerwing.seed.SeedAirframe;
import dev.ledgerwing.seed.SeedFleet;
import dev.ledgerwing.seed.SeedRevision;
import dev.ledgerwing.web.desk.Deed;
import dev.ledgerwing.web.desk.Desk;
import dev.ledgerwing.web.desk.Outcome;
import dev.ledgerwing.web.desk.Readings;
import dev.ledgerwing.web.desk.Seen;
import dev.ledgerwing.web.desk.Signature;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.SmartInitializingSingleton;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.stereotype.Component;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/** Loads the demo fleet, revision by revision, into a server that has no airframes yet, before it answers. */
@Component
@ConditionalOnProperty(name = "ledgerwing.demo", matchIfMissing = true)
class DemoFleet implements SmartInitializingSingleton {

    private static final Logger LOG = LoggerFactory.getLogger(DemoFleet.class);

    private final Desk desk;
    private final Readings readings;

    private final TransactionTemplate allOrNothing;

    DemoFleet(Desk desk, Readings readings, PlatformTransactionManager transactionManager) {
        this.desk = desk;
        this.readings = readings;
        this.allOrNothing = new TransactionTemplate(transactionManager);
    }

    @Override
    public void afterSingletonsInstantiated() {
        if (readings.fleet().isEmpty()) {
            // a start that is cut short must not leave half a fleet behind
            allOrNothing.executeWithoutResult(status -> SeedFleet.airframes().forEach(this::load));
        }
    }

    private void load(SeedAirframe airframe) {
        for (SeedRevision revision : airframe.revisions()) {
            if (revision.number() == 1) {
                desk.open(revision.build(), new Signature(revision.author(), revision.reason()), revision.moment());
            } else {
                append(airframe.code(), revision);
            }
        }
        LOG.info(
                "Loaded the demo airframe {}, {} revisions",
                airframe.code(),
                airframe.revisions().size());
    }

    private void append(String code, SeedRevision revision) {
        Outcome outcome = desk.change(
                new Seen(code, revision.number() - 1),
                Deed.fitting(revision.reason(), seen -> revision.build()),
                new Signature(revision.author(), ""),
                revision.moment());
        if (!(outcome instanceof Outcome.Landed)) {
            throw new IllegalStateException("the demo revision " + code + " " + revision.number() + " did not land");
        }
    }
}
