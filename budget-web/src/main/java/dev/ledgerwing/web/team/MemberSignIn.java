package dev.ledgerwing.web.team;

import dev.ledgerwing.web.team.SignInThrottle.Attempt;
import java.time.Duration;
import org.jspecify.annotations.Nullable;
import org.springframework.security.authentication.AuthenticationProvider;
import org.springframework.security.authentication.BadCredentialsException;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.authentication.dao.DaoAuthenticationProvider;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.userdetails.UserDetails;
import org.springframework.security.core.userdetails.UsernameNotFoundException;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.security.web.authentication.WebAuthenticationDetails;
import org.springframework.stereotype.Component;

/** Checks name and passphrase, but not more often than {@link SignInThrottle} allows. */
@Component
class MemberSignIn implements AuthenticationProvider {

    private final DaoAuthenticationProvider check;
    private final SignInThrottle throttle;

    MemberSignIn(MemberRows rows, PasswordEncoder passphrases, SignInThrottle throttle) {
        this.check = new DaoAuthenticationProvider(name -> named(name, rows));
        this.check.setPasswordEncoder(passphrases);
        this.throttle = throttle;
    }

    private static UserDetails named(String name, MemberRows rows) {
        return rows.findByNameFolded(MemberRow.folded(name))
                .map(MemberRow::signedIn)
                .orElseThrow(() -> new UsernameNotFoundException("no member of that name"));
    }

    @Override
    public boolean supports(Class<?> authentication) {
        return UsernamePasswordAuthenticationToken.class.isAssignableFrom(authentication);
    }

    @Override
    @Nullable
    public Authentication authenticate(Authentication wanted) {
        if (wanted.getName().length() > NewMember.NAME_AT_MOST) {
            throw new BadCredentialsException("no name is that long");
        }
        Attempt attempt = new Attempt(MemberRow.folded(wanted.getName()), address(wanted));
        Duration wait = throttle.begin(attempt);
        if (!wait.isZero()) {
            throw new TooManyAttempts(wait);
        }
        Authentication member = check.authenticate(wanted);
        throttle.succeeded(attempt);
        return member;
    }

    private static String address(Authentication wanted) {
        return wanted.getDetails() instanceof WebAuthenticationDetails details ? details.getRemoteAddress() : "";
    }
}
