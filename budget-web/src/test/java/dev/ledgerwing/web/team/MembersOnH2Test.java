package dev.ledgerwing.web.team;

import org.springframework.test.context.TestPropertySource;

@TestPropertySource(properties = "spring.datasource.url=jdbc:h2:mem:members;DB_CLOSE_DELAY=-1")
class MembersOnH2Test extends MembersContract {}
