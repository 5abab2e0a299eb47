package dev.ledgerwing.web;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;

@AnalyzeClasses(packages = "dev.ledgerwing", importOptions = ImportOption.OnlyIncludeTests.class)
class TestNamesTest {

    /** A class of another name is never run, and nothing says so. Contracts are run by the classes that extend them. */
    @ArchTest
    static final ArchRule testsAreInClassesThatAreRun = methods()
            .that()
            .areMetaAnnotatedWith(Test.class)
            .or()
            .areMetaAnnotatedWith(ParameterizedTest.class)
            .should()
            .beDeclaredInClassesThat()
            .haveNameMatching(".*(Test|IT|Contract)");
}
