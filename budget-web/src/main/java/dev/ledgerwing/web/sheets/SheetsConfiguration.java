package dev.ledgerwing.web.sheets;

import dev.ledgerwing.report.sheet.SheetRenderer;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

@Configuration(proxyBeanMethods = false)
class SheetsConfiguration {

    @Bean
    SheetRenderer sheetRenderer() {
        return new SheetRenderer();
    }
}
