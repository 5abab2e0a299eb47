package dev.ledgerwing.core.outputs.bank;

import dev.ledgerwing.core.build.OutputBank;
import dev.ledgerwing.core.build.PulseKind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * How one bank is set: all its outputs share the timer, so there is one rate and one kind of pulse.
 *
 * @param rateHz null = the board's rates are not known
 * @param pulse one kind, also where the kinds the board can give are not known: any of them, but never two at once
 */
public record BankSetting(OutputBank bank, @Nullable Double rateHz, PulseKind pulse) {

    /** Every way it can be set, the slowest rate first: what nobody asks for does no good. */
    static List<BankSetting> of(OutputBank bank) {
        List<BankSetting> settings = new ArrayList<>();
        List<@Nullable Double> rates = new ArrayList<>(
                bank.ratesHz().stream().sorted(Comparator.naturalOrder()).toList());
        if (rates.isEmpty()) {
            rates.add(null);
        }
        List<PulseKind> pulses = bank.pulses().isEmpty() ? List.of(PulseKind.values()) : bank.pulses();
        for (PulseKind pulse : pulses) {
            for (Double rate : rates) {
                settings.add(new BankSetting(bank, rate, pulse));
            }
        }
        return settings;
    }

    /** Whether the device can work in it, as far as is known. */
    public boolean serves(Device device) {
        return pulse == device.pulse() && (rateHz == null || device.bears(rateHz));
    }

    /** Whether the device has to do with less than it wants. */
    public boolean isSlowFor(Device device) {
        return rateHz != null && device.missesItsWish(rateHz);
    }

    /**
     * The setting that does best for what hangs on a bank already: fewest devices that cannot work in it, then fewest below
     * the rate they want, then the slowest.
     */
    public static BankSetting bestFor(OutputBank bank, List<Device> devices) {
        return of(bank).stream()
                .min(Comparator.<BankSetting>comparingLong(setting -> count(devices, each -> !setting.serves(each)))
                        .thenComparingLong(setting -> count(devices, setting::isSlowFor)))
                .orElseThrow();
    }

    private static long count(List<Device> devices, Predicate<Device> which) {
        return devices.stream().filter(which).count();
    }
}
