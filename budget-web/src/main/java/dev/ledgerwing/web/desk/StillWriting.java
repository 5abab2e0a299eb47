package dev.ledgerwing.web.desk;

import org.springframework.dao.TransientDataAccessResourceException;

/** Another change held the only place to write for too long. */
public final class StillWriting extends TransientDataAccessResourceException {

    private static final long serialVersionUID = 1;

    StillWriting() {
        super("another change is still being written");
    }
}
