package dev.ledgerwing.web.desk;

import java.util.Collection;
import java.util.List;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface LineRows extends Repository<LineRow, Long> {

    List<LineRow> findByAirframeIdAndLineIdIn(long airframeId, Collection<String> lineIds);

    @Modifying
    @Query("delete from LineRow l where l.airframeId = :airframeId and l.lineId in :lineIds")
    void remove(long airframeId, Collection<String> lineIds);

    @Modifying
    @Query("delete from LineRow l where l.airframeId = :airframeId")
    void removeAll(long airframeId);
}
