package dev.ledgerwing.web.team;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Optional;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.stereotype.Component;

/** The member who makes a request, read once from the database for the whole of it. */
@Component
class CurrentMember {

    private static final String READ = CurrentMember.class.getName();

    private final Members members;

    CurrentMember(Members members) {
        this.members = members;
    }

    Optional<Member> of(HttpServletRequest request) {
        if (request.getAttribute(READ) instanceof Member read) {
            return Optional.of(read);
        }
        Optional<Member> member = signedIn().flatMap(who -> members.byId(who.id()));
        member.ifPresent(read -> request.setAttribute(READ, read));
        return member;
    }

    private static Optional<SignedIn> signedIn() {
        return Optional.ofNullable(SecurityContextHolder.getContext().getAuthentication())
                .map(Authentication::getPrincipal)
                .filter(SignedIn.class::isInstance)
                .map(SignedIn.class::cast);
    }
}
