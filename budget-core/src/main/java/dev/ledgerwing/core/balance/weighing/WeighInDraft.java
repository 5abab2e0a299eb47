package dev.ledgerwing.core.balance.weighing;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.FitState;
import dev.ledgerwing.core.build.LoadCase;
import dev.ledgerwing.core.build.LoadCase.ExtraItem;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.WeighIn;
import dev.ledgerwing.core.build.WeighIn.LedgerWeighed;
import dev.ledgerwing.core.build.WeighIn.Scale;
import dev.ledgerwing.core.build.WeighIn.Support;
import dev.ledgerwing.core.quantity.Length;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What a builder says of a weighing, before it is held against the ledger.
 *
 * @param assembly code of the assembly on the scales; null = the whole airframe
 * @param loadCase code of the load case it stood in; null = the design case
 * @param aboard ids of the lines that were on the scales; null = all that are aboard in the load case. Those not fitted are left out
 *     either way.
 */
public record WeighInDraft(
        String id,
        String name,
        LocalDate date,
        @Nullable String assembly,
        @Nullable String loadCase,
        @Nullable List<String> aboard,
        List<ExtraItem> extra,
        Scale scale,
        Length armUncertainty,
        double noseUpDeg,
        @Nullable Double tiltedNoseUpDeg,
        List<Support> supports) {

    public WeighInDraft {
        aboard = aboard == null ? null : List.copyOf(aboard);
        extra = List.copyOf(extra);
        supports = List.copyOf(supports);
    }

    /** The lines of the ledger that it is held against. */
    public LedgerSide ledger(Build build) {
        LoadCase stood = build.loadCases().stream()
                .filter(each -> each.code().equals(loadCase))
                .findFirst()
                .orElseGet(build::designCase);
        Map<Boolean, List<PartLine>> byFitted = build.lines().stream()
                .filter(isMeant(stood))
                .collect(Collectors.partitioningBy(line -> line.state() == FitState.FITTED));
        return LedgerSide.of(
                build, stood, byFitted.getOrDefault(true, List.of()), byFitted.getOrDefault(false, List.of()));
    }

    private Predicate<PartLine> isMeant(LoadCase stood) {
        return line -> (assembly == null || line.assembly().equals(assembly))
                && (aboard == null ? !stood.absent().contains(line.id()) : aboard.contains(line.id()));
    }

    /**
     * The weigh-in for the record.
     *
     * @param revision of the ledger that it is held against
     * @param fingerprint of that revision
     * @throws IllegalArgumentException when the record refuses what was entered, naming the field
     */
    public WeighIn against(Build build, int revision, String fingerprint) {
        LedgerSide ledger = ledger(build);
        return new WeighIn(
                id,
                name,
                date,
                assembly,
                ledger.compared().stream().map(PartLine::id).toList(),
                extra,
                scale,
                armUncertainty,
                noseUpDeg,
                tiltedNoseUpDeg,
                supports,
                new LedgerWeighed(revision, fingerprint, ledger.mass(), ledger.moments()));
    }
}
