package dev.ledgerwing.core;

import static com.tngtech.archunit.core.domain.JavaCall.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_THROW_GENERIC_EXCEPTIONS;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_USE_JAVA_UTIL_LOGGING;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.Arrays;
import java.util.Locale;
import java.util.Random;
import java.util.UUID;
import java.util.stream.Stream;

/** The packages and the arrows between them, and what keeps a calculation a pure function of the record. */
@AnalyzeClasses(packages = "dev.ledgerwing.core", importOptions = ImportOption.DoNotIncludeTests.class)
class CoreArchitectureTest {

    private static final String FILE = "dev.ledgerwing.core.file..";
    private static final String SUN = "net.e175.klaus.solarpositioning..";
    private static final String[] LIBRARIES = {
        "tools.jackson..", "com.fasterxml.jackson.annotation..", "com.networknt.schema..", "org.apache.commons.csv.."
    };

    @ArchTest
    static final ArchRule packagesAreFreeOfCycles =
            slices().matching("dev.ledgerwing.core.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule everyPackageHasItsArrows = classes()
            .should()
            .resideInAnyPackage(core(
                    "quantity",
                    "build",
                    "verdict",
                    "mass",
                    "balance",
                    "power",
                    "radio",
                    "outputs",
                    "review",
                    "words",
                    "file"))
            .because("a new package is added here together with the rule of what it may know");

    @ArchTest
    static final ArchRule quantityKnowsNothing = mayKnow("quantity");

    @ArchTest
    static final ArchRule buildKnowsQuantity = mayKnow("build", "quantity");

    @ArchTest
    static final ArchRule verdictKnowsQuantity = mayKnow("verdict", "quantity");

    @ArchTest
    static final ArchRule massKnowsTheRecord = mayKnow("mass", "build", "verdict", "quantity");

    @ArchTest
    static final ArchRule balanceKnowsTheMass = mayKnow("balance", "mass", "build", "verdict", "quantity");

    @ArchTest
    static final ArchRule balanceDoesNotKnowItsCorrections = noClasses()
            .that()
            .resideInAPackage("dev.ledgerwing.core.balance")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("dev.ledgerwing.core.balance.correction..")
            .because("a statement of the balance stands without what might be done about it");

    @ArchTest
    static final ArchRule powerKnowsTheRecordAndWhereTheSunStands = classes()
            .that()
            .resideInAPackage("dev.ledgerwing.core.power..")
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage(all(outside(core("power", "build", "verdict", "quantity")), SUN))
            .because("arrows point one way");

    @ArchTest
    static final ArchRule onlySolarKnowsWhereTheSunStands = noClasses()
            .that()
            .resideOutsideOfPackage("dev.ledgerwing.core.power.solar..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage(SUN);

    @ArchTest
    static final ArchRule partsOfPowerAreFreeOfCycles =
            slices().matching("dev.ledgerwing.core.power.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule radioKnowsTheRecord = mayKnow("radio", "build", "verdict", "quantity");

    @ArchTest
    static final ArchRule partsOfRadioAreFreeOfCycles =
            slices().matching("dev.ledgerwing.core.radio.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule outputsKnowTheRecord = mayKnow("outputs", "build", "verdict", "quantity");

    @ArchTest
    static final ArchRule reviewKnowsEveryBudget =
            mayKnow("review", "outputs", "radio", "power", "balance", "mass", "build", "verdict", "quantity");

    @ArchTest
    static final ArchRule wordsKnowTheRecord = mayKnow("words", "build", "quantity");

    @ArchTest
    static final ArchRule fileKnowsTheRecordAndItsLibraries = classes()
            .that()
            .resideInAPackage(FILE)
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage(all(outside(core("file", "build", "quantity")), LIBRARIES));

    private static ArchRule mayKnow(String name, String... others) {
        return classes()
                .that()
                .resideInAPackage(core(name)[0])
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage(all(outside(core(others)), core(name)))
                .because("only the package file knows a library, and arrows point one way");
    }

    private static String[] core(String... names) {
        return Arrays.stream(names)
                .map(name -> "dev.ledgerwing.core." + name + "..")
                .toArray(String[]::new);
    }

    private static String[] outside(String... packages) {
        return all(packages, "java..", "org.jspecify.annotations..");
    }

    private static String[] all(String[] some, String... more) {
        return Stream.concat(Arrays.stream(some), Arrays.stream(more)).toArray(String[]::new);
    }

    @ArchTest
    static final ArchRule noClock = noClasses()
            .should()
            .callMethodWhere(
                    target(owner(resideInAPackage("java.time.."))).and(target(nameMatching("now|system.*|tick.*"))))
            .orShould()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .callMethod(System.class, "nanoTime")
            .because("time is passed in, so that results can be repeated");

    @ArchTest
    static final ArchRule noChance = noClasses()
            .should()
            .dependOnClassesThat()
            .areAssignableTo(Random.class)
            .orShould()
            .callMethod(Math.class, "random")
            .orShould()
            .callMethod(UUID.class, "randomUUID")
            .because("the same record gives the same answer");

    @ArchTest
    static final ArchRule noFilesAndNoNetworkOutsideFile = noClasses()
            .that()
            .resideOutsideOfPackage(FILE)
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("java.io..", "java.nio..", "java.net..", "java.sql..")
            .because("a calculation sees the record and nothing else");

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
            .because("numbers and names must not change with the machine's language");

    @ArchTest
    static final ArchRule fieldsAreFinal = fields().should().beFinal();

    @ArchTest
    static final ArchRule noStandardStreams = NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS;

    @ArchTest
    static final ArchRule noGenericExceptions = NO_CLASSES_SHOULD_THROW_GENERIC_EXCEPTIONS;

    @ArchTest
    static final ArchRule noJavaUtilLogging = NO_CLASSES_SHOULD_USE_JAVA_UTIL_LOGGING;
}
