package dev.ledgerwing.web.desk;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.SmartInitializingSingleton;
import org.springframework.stereotype.Component;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Rebuilds the caches that an older version made, airframe by airframe, before the server answers. Each airframe is one transaction, so a start
 * that is cut short goes on with the rest next time. No document is ever rewritten.
 */
@Component
class CacheRebuild implements SmartInitializingSingleton {

    private static final Logger LOG = LoggerFactory.getLogger(CacheRebuild.class);

    private final AirframeRows airframes;
    private final Archive archive;
    private final Ledger ledger;
    private final TransactionTemplate writing;

    CacheRebuild(
            AirframeRows airframes, Archive archive, Ledger ledger, PlatformTransactionManager transactionManager) {
        this.airframes = airframes;
        this.archive = archive;
        this.ledger = ledger;
        this.writing = new TransactionTemplate(transactionManager);
    }

    @Override
    public void afterSingletonsInstantiated() {
        for (String code : airframes.codesNotCachedBy(Ledger.CACHE_VERSION)) {
            writing.executeWithoutResult(status -> rebuild(code));
            LOG.info("Rebuilt the headlines and part rows of {}", code);
        }
    }

    private void rebuild(String code) {
        AirframeRow airframe = ledger.lock(code).orElseThrow();
        Snapshot head = archive.head(airframe);
        ledger.rebuildCaches(airframe, new Judged(head.build(), head.review()));
    }
}
