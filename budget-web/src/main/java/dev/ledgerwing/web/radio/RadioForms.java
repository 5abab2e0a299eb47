package dev.ledgerwing.web.radio;

import dev.ledgerwing.web.support.Refusal;
import dev.ledgerwing.web.team.Member;

/** The forms of the radio by their addresses. */
final class RadioForms {

    private RadioForms() {}

    /** The form at an address below the page. */
    static RadioForm named(String name, Member member) {
        return switch (name) {
            case "link" -> new LinkForm();
            case "controls" -> new ControlsForm();
            case "functions" -> new FunctionsForm();
            case "demands" -> new DemandsForm(null);
            case "channels" -> new ChannelsForm();
            case "given-up" -> new GivenUpForm(member.name());
            default -> throw Refusal.notFound("There is nothing at this address. The address may have a slip.");
        };
    }
}
