package dev.ledgerwing.report;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_THROW_GENERIC_EXCEPTIONS;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_USE_JAVA_UTIL_LOGGING;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Date;
import java.util.Locale;

@AnalyzeClasses(packages = "dev.ledgerwing.report", importOptions = ImportOption.DoNotIncludeTests.class)
class ReportArchitectureTest {

    @ArchTest
    static final ArchRule reportsKnowNoServer = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "jakarta..",
                    "javax.servlet..",
                    "org.springframework.web..",
                    "org.springframework.boot..",
                    "org.hibernate..",
                    "dev.ledgerwing.web..",
                    "dev.ledgerwing.seed..")
            .because("the command line prints the same sheets where no server is");

    @ArchTest
    static final ArchRule packagesAreFreeOfCycles =
            slices().matching("dev.ledgerwing.report.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule onlyTheCommandLineKnowsItsLibrary = noClasses()
            .that()
            .resideOutsideOfPackage("..report.cli..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("picocli..");

    @ArchTest
    static final ArchRule nothingKnowsTheCommandLine = noClasses()
            .that()
            .resideOutsideOfPackage("..report.cli..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("..report.cli..");

    @ArchTest
    static final ArchRule onlyChartsKnowTheChartLibrary = noClasses()
            .that()
            .resideOutsideOfPackage("..report.chart..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.jfree..");

    @ArchTest
    static final ArchRule onlySheetsKnowTheTemplateAndPdfLibraries = noClasses()
            .that()
            .resideOutsideOfPackage("..report.sheet..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.thymeleaf..", "com.openhtmltopdf..", "org.apache.pdfbox..", "com.google.zxing..");

    @ArchTest
    static final ArchRule noHiddenClock = noClasses()
            .should()
            .callMethod(Instant.class, "now")
            .orShould()
            .callMethod(LocalDate.class, "now")
            .orShould()
            .callMethod(Clock.class, "systemDefaultZone")
            .orShould()
            .callConstructor(Date.class)
            .because("time is passed in, so that equal records give equal sheets");

    @ArchTest
    static final ArchRule noDefaultLocale = noClasses()
            .should()
            .callMethod(String.class, "format", String.class, Object[].class)
            .orShould()
            .callMethod(String.class, "formatted", Object[].class)
            .orShould()
            .callMethod(String.class, "toLowerCase")
            .orShould()
            .callMethod(String.class, "toUpperCase")
            .orShould()
            .callMethod(Locale.class, "getDefault")
            .because("numbers and names must not change with the machine's locale");

    @ArchTest
    static final ArchRule fieldsAreFinal = noFields()
            .that()
            .areDeclaredInClassesThat()
            .resideOutsideOfPackage("..report.cli..")
            .should()
            .notHaveModifier(JavaModifier.FINAL)
            .because("only the library of the command line sets fields");

    @ArchTest
    static final ArchRule noStandardStreams = NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS;

    @ArchTest
    static final ArchRule noGenericExceptions = NO_CLASSES_SHOULD_THROW_GENERIC_EXCEPTIONS;

    @ArchTest
    static final ArchRule noJavaUtilLogging = NO_CLASSES_SHOULD_USE_JAVA_UTIL_LOGGING;
}
