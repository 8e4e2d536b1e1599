package org.espalier.science;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;

@AnalyzeClasses(packages = "org.espalier.science", importOptions = ImportOption.DoNotIncludeTests.class)
class ScienceArchitectureTests {

    @ArchTest
    static final ArchRule quantityStandsBelowStatisticsAlignmentGrowthExposureAndForecast = layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .layer("quantity")
            .definedBy("org.espalier.science.quantity..")
            .layer("statistics")
            .definedBy("org.espalier.science.statistics..")
            .layer("alignment")
            .definedBy("org.espalier.science.alignment..")
            .layer("growth")
            .definedBy("org.espalier.science.growth..")
            .layer("exposure")
            .definedBy("org.espalier.science.exposure..")
            .layer("forecast")
            .definedBy("org.espalier.science.forecast..")
            .whereLayer("quantity")
            .mayNotAccessAnyLayer()
            .whereLayer("statistics")
            .mayOnlyAccessLayers("quantity")
            .whereLayer("alignment")
            .mayOnlyAccessLayers("quantity", "statistics")
            .whereLayer("growth")
            .mayOnlyAccessLayers("quantity", "statistics")
            .whereLayer("exposure")
            .mayOnlyAccessLayers("quantity", "statistics", "alignment", "growth")
            .whereLayer("forecast")
            .mayOnlyAccessLayers("quantity", "statistics", "alignment", "growth");

    @ArchTest
    static final ArchRule usesTheJdkAndHipparchusOnly = classes()
            .that()
            .haveSimpleNameNotEndingWith("package-info")
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage("java..", "org.hipparchus..", "org.espalier.science..");

    @ArchTest
    static final ArchRule takesTheDayFromItsCaller = noClasses()
            .should()
            .callMethod(LocalDate.class, "now")
            .orShould()
            .callMethod(Instant.class, "now")
            .orShould()
            .dependOnClassesThat()
            .areAssignableTo(Clock.class);
}
