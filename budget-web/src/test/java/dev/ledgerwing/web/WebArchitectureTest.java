package dev.ledgerwing.web;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noMethods;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_USE_FIELD_INJECTION;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import jakarta.persistence.Entity;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Locale;
import org.springframework.data.repository.Repository;
import org.springframework.stereotype.Controller;
import org.springframework.transaction.annotation.Transactional;

@AnalyzeClasses(packages = "dev.ledgerwing", importOptions = ImportOption.DoNotIncludeTests.class)
class WebArchitectureTest {

    @ArchTest
    static final ArchRule featuresAreFreeOfCycles =
            slices().matching("dev.ledgerwing.web.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule nothingBelowKnowsTheWeb = noClasses()
            .that()
            .resideOutsideOfPackage("dev.ledgerwing.web..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("dev.ledgerwing.web..");

    @ArchTest
    static final ArchRule entitiesStayInTheirFeature = classes()
            .that()
            .areAnnotatedWith(Entity.class)
            .should()
            .haveSimpleNameEndingWith("Row")
            .andShould()
            .bePackagePrivate()
            .because("pages and other features get ready-made values");

    @ArchTest
    static final ArchRule repositoriesStayInTheirFeature = classes()
            .that()
            .areAssignableTo(Repository.class)
            .should()
            .haveSimpleNameEndingWith("Rows")
            .andShould()
            .bePackagePrivate();

    @ArchTest
    static final ArchRule controllersAreHidden = classes()
            .that()
            .areAnnotatedWith(Controller.class)
            .should()
            .bePackagePrivate()
            .andShould()
            .haveSimpleNameEndingWith("Controller");

    @ArchTest
    static final ArchRule controllersTouchNoRows = noClasses()
            .that()
            .areAnnotatedWith(Controller.class)
            .should()
            .dependOnClassesThat()
            .areAnnotatedWith(Entity.class)
            .orShould()
            .dependOnClassesThat()
            .areAssignableTo(Repository.class);

    @ArchTest
    static final ArchRule controllersOpenNoTransactions =
            noClasses().that().areAnnotatedWith(Controller.class).should().beAnnotatedWith(Transactional.class);

    @ArchTest
    static final ArchRule methodsOfControllersOpenNoTransactions = noMethods()
            .that()
            .areDeclaredInClassesThat()
            .areAnnotatedWith(Controller.class)
            .should()
            .beAnnotatedWith(Transactional.class);

    @ArchTest
    static final ArchRule noHiddenClock = noClasses()
            .should()
            .callMethod(Instant.class, "now")
            .orShould()
            .callMethod(LocalDate.class, "now")
            .because("moments come from the one clock, in microseconds");

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
            .because("what people read must not change with the machine's language");

    @ArchTest
    static final ArchRule noFieldInjection = NO_CLASSES_SHOULD_USE_FIELD_INJECTION;
}
