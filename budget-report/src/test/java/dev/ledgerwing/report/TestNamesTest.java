package dev.ledgerwing.report;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.simpleNameEndingWith;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import org.junit.platform.commons.annotation.Testable;

@AnalyzeClasses(packages = "dev.ledgerwing.report", importOptions = ImportOption.OnlyIncludeTests.class)
class TestNamesTest {

    private static final DescribedPredicate<JavaClass> RUN = simpleNameEndingWith("Test")
            .or(simpleNameEndingWith("IT"))
            .or(DescribedPredicate.describe("are nested", JavaClass::isNestedClass))
            .as("named …Test or …IT, or nested in one");

    @ArchTest
    static final ArchRule testsAreInClassesThatAreRun = methods()
            .that()
            .areMetaAnnotatedWith(Testable.class)
            .should()
            .beDeclaredInClassesThat(RUN)
            .because("nothing is run from a class of another name, and nobody says so");

    @ArchTest
    static final ArchRule rulesAreInClassesThatAreRun = fields().that()
            .areMetaAnnotatedWith(Testable.class)
            .should()
            .beDeclaredInClassesThat(RUN)
            .because("nothing is run from a class of another name, and nobody says so");
}
