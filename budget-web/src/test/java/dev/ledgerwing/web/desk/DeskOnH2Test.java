package dev.ledgerwing.web.desk;

import org.springframework.test.context.TestPropertySource;

@TestPropertySource(properties = "spring.datasource.url=jdbc:h2:mem:desk;DB_CLOSE_DELAY=-1")
class DeskOnH2Test extends DeskContract {}
