package dev.ledgerwing.web.team;

import java.util.Optional;
import org.springframework.data.repository.Repository;

interface MemberRows extends Repository<MemberRow, Long> {

    long count();

    Optional<MemberRow> findById(long id);

    Optional<MemberRow> findByNameFolded(String nameFolded);

    MemberRow save(MemberRow row);
}
