package dev.ledgerwing.web.desk;

import java.util.List;
import java.util.Optional;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface RevisionRows extends Repository<RevisionRow, Long> {

    Optional<RevisionRow> findByAirframeIdAndNumber(long airframeId, int number);

    List<RevisionRow> findByAirframeIdOrderByNumberDesc(long airframeId);

    List<RevisionRow> findByAirframeIdAndNumberLessThanEqualOrderByNumberDesc(long airframeId, int number, Limit limit);

    /** Revision, code and name of its airframe, predicted mass and verdict of the revision before it (null for the first). */
    @Query(
            "select r, a.code, a.name, p.predictedMg, p.massVerdict from RevisionRow r join AirframeRow a on a.id = r.airframeId"
                    + " left join RevisionRow p on p.airframeId = r.airframeId and p.number = r.number - 1"
                    + " order by r.moment desc, r.id desc")
    List<Object[]> newest(Limit limit);
}
