package dev.ledgerwing.web.setup;

import dev.ledgerwing.web.team.Members;
import jakarta.validation.ConstraintViolation;
import jakarta.validation.Validator;
import java.util.Locale;
import java.util.Set;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.SmartInitializingSingleton;
import org.springframework.stereotype.Component;

/**
 * Before the server listens: creates the first account from the settings, or prints the key for whoever is to create it from
 * another machine.
 */
@Component
class FirstAccountAtStart implements SmartInitializingSingleton {

    private static final Logger LOG = LoggerFactory.getLogger(FirstAccountAtStart.class);

    private final Members members;
    private final UnattendedSettings settings;
    private final OneTimeKey key;
    private final Validator validator;

    FirstAccountAtStart(Members members, UnattendedSettings settings, OneTimeKey key, Validator validator) {
        this.members = members;
        this.settings = settings;
        this.key = key;
        this.validator = validator;
    }

    @Override
    public void afterSingletonsInstantiated() {
        if (members.anyone()) {
            return;
        }
        if (settings.given()) {
            create();
        } else if (key.needed()) {
            LOG.info("The first account is created at /welcome with the one-time key {}", key.text());
        }
    }

    private void create() {
        var form = new FirstAccountForm(settings.member(), settings.passphrase(), settings.passphrase(), null);
        Set<ConstraintViolation<FirstAccountForm>> problems = validator.validate(form);
        if (!problems.isEmpty()) {
            throw new UnusableFirstAccount(problems.stream()
                    .map(FirstAccountAtStart::describe)
                    .sorted()
                    .toList());
        }
        members.addFirst(form.newMember());
    }

    private static String describe(ConstraintViolation<FirstAccountForm> problem) {
        String field = problem.getPropertyPath().toString();
        String variable = field.equals("name") ? "member" : field;
        return "LEDGERWING_FIRST_" + variable.toUpperCase(Locale.ROOT) + ": " + problem.getMessage();
    }
}
