package dev.ledgerwing.web.desk;

import jakarta.persistence.EntityManagerFactory;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.ReentrantLock;
import org.springframework.orm.jpa.JpaTransactionManager;
import org.springframework.transaction.TransactionDefinition;

/**
 * Lets one writing transaction run at a time. Two concurrent writers and a killed process can tear an H2 file; with one writer
 * no kill ever did. Read-only transactions are not held up. A transaction of its own inside a writing one (REQUIRES_NEW) would
 * give the turn away early and is not used anywhere.
 */
final class OneWriterTransactionManager extends JpaTransactionManager {

    private static final long serialVersionUID = 1;
    private static final long LONGEST_WAIT_S = 10;

    private final transient ReentrantLock turn = new ReentrantLock(true);

    OneWriterTransactionManager(EntityManagerFactory entityManagerFactory) {
        super(entityManagerFactory);
    }

    @Override
    protected void doBegin(Object transaction, TransactionDefinition definition) {
        if (definition.isReadOnly()) {
            super.doBegin(transaction, definition);
            return;
        }
        takeTurn();
        try {
            super.doBegin(transaction, definition);
        } catch (RuntimeException | Error failed) {
            turn.unlock();
            throw failed;
        }
    }

    private void takeTurn() {
        try {
            if (!turn.tryLock(LONGEST_WAIT_S, TimeUnit.SECONDS)) {
                throw new StillWriting();
            }
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new StillWriting();
        }
    }

    @Override
    protected void doCleanupAfterCompletion(Object transaction) {
        try {
            super.doCleanupAfterCompletion(transaction);
        } finally {
            if (turn.isHeldByCurrentThread()) {
                turn.unlock();
            }
        }
    }
}
