package dev.ledgerwing.core.outputs;

import dev.ledgerwing.core.build.Board;
import dev.ledgerwing.core.build.Output;
import dev.ledgerwing.core.build.OutputBank;
import dev.ledgerwing.core.build.PulseKind;
import dev.ledgerwing.core.outputs.bank.BankSetting;
import dev.ledgerwing.core.outputs.bank.Device;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One bank of the board aboard and what hangs on it.
 *
 * @param setting the one that does best for what hangs on it
 */
public record BankUse(BankSetting setting, List<Output> outputs) {

    public BankUse {
        outputs = List.copyOf(outputs);
    }

    static List<BankUse> of(Board board, List<Output> outputs) {
        return board.banks().stream()
                .map(bank -> {
                    List<Output> here = outputs.stream()
                            .filter(output -> output.number() != null
                                    && bank.outputNumbers().contains(output.number()))
                            .toList();
                    return new BankUse(
                            BankSetting.bestFor(
                                    bank, here.stream().map(Device::of).toList()),
                            here);
                })
                .toList();
    }

    public OutputBank bank() {
        return setting.bank();
    }

    /** The rate in force; null = not known, or nothing hangs on it. */
    public @Nullable Double rateHz() {
        return outputs.isEmpty() ? null : setting.rateHz();
    }

    /** The kind of pulse in force; null = not known, or nothing hangs on it. */
    public @Nullable PulseKind pulse() {
        return outputs.isEmpty() || bank().pulses().isEmpty() ? null : setting.pulse();
    }
}
