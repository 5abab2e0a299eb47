package dev.ledgerwing.web.desk;

import java.util.List;
import java.util.Optional;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface RevisionRows extends Repository<RevisionRow, Long> {

    Optional<RevisionRow> findByAirframeIdAndNumber(long airframeId, int number);

    List<RevisionRow> findByAirframeIdOrderByNumberDesc(long airframeId);

    @Query("select r, a.code, a.name from RevisionRow r join AirframeRow a on a.id = r.airframeId"
            + " order by r.moment desc, r.id desc")
    List<Object[]> newest(Limit limit);
}
