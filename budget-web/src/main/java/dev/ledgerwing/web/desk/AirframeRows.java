package dev.ledgerwing.web.desk;

import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface AirframeRows extends Repository<AirframeRow, Long> {

    Optional<AirframeRow> findByCode(String code);

    boolean existsByCode(String code);

    List<AirframeRow> findAllByOrderByCode();

    @Query("select a.code from AirframeRow a where a.cacheVersion <> :version order by a.code")
    List<String> codesNotCachedBy(int version);
}
