package dev.ledgerwing.web.radio;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.radio.RadioStatement;
import dev.ledgerwing.report.drawing.RadioPictures;
import java.util.List;

/**
 * The plan in force: the recorded one, or a proposed one where none is recorded.
 *
 * @param picture the controls of the transmitter with what they command; ready markup of our own
 * @param changes what the planner's own channels would change of the recorded ones; none where that is nothing, or where it has none
 * @param isFound whether the planner has channels to be recorded
 */
record PlanView(boolean isRecorded, List<PlanRow> channels, String picture, List<String> changes, boolean isFound) {

    /** Whether recording the planner's channels would change something. */
    public boolean canBeRecorded() {
        return isFound && (!isRecorded || !changes.isEmpty());
    }

    static PlanView of(RadioStatement radio, RadioNames names) {
        Build build = radio.build();
        boolean recorded = radio.isRecorded();
        boolean found = radio.proposed().fits() && !radio.proposed().channels().isEmpty();
        return new PlanView(
                recorded,
                PlanRow.of(radio.inForce(), build.radio().controls(), names),
                radio.inForce().isEmpty()
                        ? ""
                        : RadioPictures.transmitter(radio).html(),
                recorded && found
                        ? PlanChanges.between(radio.inForce(), radio.proposed().channels(), names)
                        : List.of(),
                found);
    }
}
