package dev.ledgerwing.web.desk;

import dev.ledgerwing.core.build.Stage;
import dev.ledgerwing.core.verdict.Verdict;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** An airframe and the headlines of its newest revision: a cache that can be rebuilt from the revision. */
@Entity
@Table(name = "airframe")
class AirframeRow {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "airframe_seq")
    @SequenceGenerator(name = "airframe_seq", sequenceName = "airframe_seq")
    @Nullable
    Long id;

    @Column(updatable = false)
    String code;

    String name;

    @Enumerated(EnumType.STRING)
    Stage stage;

    long headRevisionId;
    int headNumber;
    String headAuthor;
    Instant headMoment;
    String headTitle;

    @Nullable
    Long targetMg;

    long basicMg;
    long predictedMg;

    @Enumerated(EnumType.STRING)
    Verdict massVerdict;

    @Enumerated(EnumType.STRING)
    Verdict balanceVerdict;

    @Column(name = "cg_x_mm")
    @Nullable
    Double cgXMm;

    @Nullable
    Double cgPercentMac;

    @Column(name = "forward_limit_x_mm")
    @Nullable
    Double forwardLimitXMm;

    @Column(name = "aft_limit_x_mm")
    @Nullable
    Double aftLimitXMm;

    @Nullable
    Double forwardLimitPercentMac;

    @Nullable
    Double aftLimitPercentMac;

    @Enumerated(EnumType.STRING)
    Verdict powerVerdict;

    @Nullable
    Double powerMarginPercent;

    @Nullable
    Double powerEnduranceMinutes;

    @Enumerated(EnumType.STRING)
    Verdict radioVerdict;

    @Nullable
    Integer radioChannelsNeeded;

    @Nullable
    Integer radioChannelsAvailable;

    @Nullable
    Integer radioSharedPairs;

    @Enumerated(EnumType.STRING)
    Verdict outputsVerdict;

    @Nullable
    Integer outputsNeeded;

    @Nullable
    Integer outputsAvailable;

    int lineCount;

    /** What the headlines and the line rows were made by. */
    int cacheVersion;

    @SuppressWarnings("NullAway.Init")
    protected AirframeRow() {}

    @SuppressWarnings("NullAway.Init")
    AirframeRow(String code) {
        this.code = code;
    }
}
