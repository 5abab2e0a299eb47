package dev.ledgerwing.web.desk;

import dev.ledgerwing.core.build.Stage;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.verdict.Verdict;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** What the fleet shows of an airframe: the headlines of its newest revision. */
public record AirframeHeadline(
        String code,
        String name,
        Stage stage,
        int number,
        String author,
        Instant moment,
        String title,
        @Nullable Mass target,
        Mass basic,
        Mass predicted,
        Verdict massVerdict,
        Verdict balanceVerdict,
        CgFigure balance,
        Verdict powerVerdict,
        PowerFigure power,
        Verdict radioVerdict,
        RadioFigure radio,
        Verdict outputsVerdict,
        OutputsFigure outputs,
        int lineCount) {

    static AirframeHeadline of(AirframeRow row) {
        return new AirframeHeadline(
                row.code,
                row.name,
                row.stage,
                row.headNumber,
                row.headAuthor,
                row.headMoment,
                row.headTitle,
                row.targetMg == null ? null : new Mass(row.targetMg),
                new Mass(row.basicMg),
                new Mass(row.predictedMg),
                row.massVerdict,
                row.balanceVerdict,
                new CgFigure(
                        row.cgXMm,
                        row.cgPercentMac,
                        row.forwardLimitXMm,
                        row.aftLimitXMm,
                        row.forwardLimitPercentMac,
                        row.aftLimitPercentMac),
                row.powerVerdict,
                new PowerFigure(row.powerMarginPercent, row.powerEnduranceMinutes),
                row.radioVerdict,
                new RadioFigure(row.radioChannelsNeeded, row.radioChannelsAvailable, row.radioSharedPairs),
                row.outputsVerdict,
                new OutputsFigure(row.outputsNeeded, row.outputsAvailable),
                row.lineCount);
    }
}
