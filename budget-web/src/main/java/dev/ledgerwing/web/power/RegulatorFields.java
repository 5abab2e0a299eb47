package dev.ledgerwing.web.power;

import dev.ledgerwing.core.build.Regulator;
import dev.ledgerwing.web.forms.Entries;
import dev.ledgerwing.web.forms.Shown;
import org.jspecify.annotations.Nullable;

/**
 * The fields of a regulator.
 *
 * @param row before the name of each field
 */
record RegulatorFields(String row) {

    void show(Regulator regulator, Shown fields) {
        fields.text(row + ".type", regulator.type().name())
                .amount(row + ".output", regulator.outputV())
                .amount(row + ".efficiency", regulator.efficiencyPercent())
                .amount(row + ".dropout", regulator.dropoutV())
                .amount(row + ".minInput", regulator.minInputV())
                .amount(row + ".maxInput", regulator.maxInputV())
                .amount(row + ".quiescent", regulator.quiescentA());
    }

    /** The regulator as typed; nothing where something is wrong. */
    @Nullable
    Regulator regulator(Entries entries) {
        Regulator.Type type = entries.typed().text(row + ".type").isEmpty()
                ? Regulator.Type.SWITCHING
                : entries.choice(row + ".type", Regulator.Type.values());
        Double outputV = entries.needed(
                row + ".output",
                entries.amount(row + ".output", PowerBounds.OUTPUT_VOLTAGE),
                1.0,
                "Please give the voltage it makes.");
        Double efficiency = entries.amount(row + ".efficiency", PowerBounds.SHARE);
        Double dropoutV = entries.amount(row + ".dropout", PowerBounds.DROPOUT);
        Double minInputV = entries.amount(row + ".minInput", PowerBounds.VOLTAGE);
        Double maxInputV = entries.amount(row + ".maxInput", PowerBounds.VOLTAGE);
        Double quiescentA = entries.amount(row + ".quiescent", PowerBounds.QUIESCENT);
        if (minInputV != null && maxInputV != null && minInputV >= maxInputV) {
            entries.trouble(row + ".minInput", "The lowest input is the smaller of the two.");
        }
        return entries.areFine()
                ? new Regulator(type, outputV, efficiency, dropoutV, minInputV, maxInputV, quiescentA)
                : null;
    }
}
