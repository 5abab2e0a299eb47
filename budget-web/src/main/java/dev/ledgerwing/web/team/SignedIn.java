package dev.ledgerwing.web.team;

import java.util.List;
import org.springframework.security.core.authority.SimpleGrantedAuthority;
import org.springframework.security.core.userdetails.User;

/** What the session remembers of a member; everything that can change is read afresh with {@link CurrentMember}. */
final class SignedIn extends User {

    private final long id;

    SignedIn(long id, String name, String passphraseHash) {
        super(name, passphraseHash, List.of(new SimpleGrantedAuthority("MEMBER")));
        this.id = id;
    }

    long id() {
        return id;
    }
}
