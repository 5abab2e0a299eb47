package dev.ledgerwing.core.outputs.bank;

import java.util.List;
import java.util.Optional;

/**
 * Which output drives what.
 *
 * @param settings of the banks in use, in the order of the board
 * @param placings every device that has a place, in the order of the record
 * @param leftOver codes of the devices for which there is none
 * @param belowWish how many have to do with a slower rate than they want
 * @param moved how many hung on another output before
 * @param leftAtLeast how many are left over by every plan, as far as that has been found out
 */
public record BankPlan(
        List<BankSetting> settings,
        List<Placing> placings,
        List<String> leftOver,
        int belowWish,
        int moved,
        int leftAtLeast) {

    /** A device on an output. */
    public record Placing(String device, int number) {}

    public BankPlan {
        settings = List.copyOf(settings);
        placings = List.copyOf(placings);
        leftOver = List.copyOf(leftOver);
    }

    public boolean isComplete() {
        return leftOver.isEmpty();
    }

    /** Whether it is certain that no plan leaves fewer over; there may be too many ways to try them all. */
    public boolean isDecided() {
        return leftOver.size() <= leftAtLeast;
    }

    /** The output a device hangs on; empty when there is no place for it. */
    public Optional<Integer> numberOf(String device) {
        return placings.stream()
                .filter(placing -> placing.device().equals(device))
                .map(Placing::number)
                .findFirst();
    }
}
