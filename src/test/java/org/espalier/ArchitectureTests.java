package org.espalier;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Html;
import com.vaadin.flow.router.Route;
import java.util.Set;
import org.jspecify.annotations.NullMarked;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.stereotype.Service;
import org.springframework.web.bind.annotation.RestController;

@AnalyzeClasses(packages = "org.espalier", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTests {

    private static final Set<String> TIME = Set.of("now", "currentTimeMillis");

    @ArchTest
    static final ArchRule SERVICES_AND_REPOSITORIES_KNOW_NO_SCREEN = noClasses()
            .that()
            .areAnnotatedWith(Service.class)
            .or()
            .areAnnotatedWith(Repository.class)
            .should()
            .dependOnClassesThat()
            .resideInAPackage("com.vaadin..");

    @ArchTest
    static final ArchRule REPOSITORIES_STAY_IN_THEIR_PACKAGE =
            classes().that().areAnnotatedWith(Repository.class).should().notBePublic();

    @ArchTest
    static final ArchRule SCREENS_STAY_IN_THEIR_PACKAGE =
            classes().that().areAnnotatedWith(Route.class).should().notBePublic();

    @ArchTest
    static final ArchRule CONTROLLERS_STAY_IN_THEIR_PACKAGE =
            classes().that().areAnnotatedWith(RestController.class).should().notBePublic();

    @ArchTest
    static final ArchRule SCREENS_ASK_SERVICES = noClasses()
            .that()
            .resideInAPackage("..ui..")
            .or()
            .areAssignableTo(Component.class)
            .should()
            .dependOnClassesThat()
            .areAnnotatedWith(Repository.class)
            .orShould()
            .dependOnClassesThat()
            .areAssignableTo(JdbcClient.class);

    @ArchTest
    static final ArchRule SERVICES_ARE_THE_ROOT_OF_THEIR_MODULE =
            classes().that().areAnnotatedWith(Service.class).should().resideInAPackage("org.espalier.*");

    @ArchTest
    static final ArchRule SERVICES_CAN_BE_GUARDED = methods()
            .that()
            .areDeclaredInClassesThat()
            .areAnnotatedWith(Service.class)
            .and()
            .arePublic()
            .should()
            .notBeFinal()
            .andShould()
            .notBeStatic();

    @ArchTest
    static final ArchRule THE_CLOCK_IS_ASKED_FOR_THE_TIME = noClasses()
            .should(new ArchCondition<JavaClass>("call now()") {
                @Override
                public void check(JavaClass type, ConditionEvents events) {
                    type.getMethodCallsFromSelf().stream()
                            .filter(call ->
                                    call.getTargetOwner().getPackageName().startsWith("java"))
                            .filter(call -> TIME.contains(call.getName()))
                            .forEach(call -> events.add(SimpleConditionEvent.satisfied(call, call.getDescription())));
                }
            });

    @ArchTest
    static final ArchRule NOBODY_WRITES_TO_THE_CONSOLE_BUT_COMMANDS_AND_THE_DEMO = noClasses()
            .that()
            .haveSimpleNameNotEndingWith("Command")
            .and()
            .areNotAssignableTo(Espalier.class)
            .and()
            .resideOutsideOfPackage("org.espalier.demo")
            .should()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err");

    @ArchTest
    static final ArchRule NO_TEXT_BECOMES_MARKUP =
            noClasses().should().dependOnClassesThat().areAssignableTo(Html.class);

    @ArchTest
    static final ArchRule NAMES_SAY_WHAT_A_CLASS_IS = noClasses()
            .should()
            .haveSimpleNameEndingWith("Impl")
            .orShould()
            .haveNameMatching(".*(Util|Utils|Helper|Manager|Dto)");

    @ArchTest
    static final ArchRule EVERY_PACKAGE_IS_NULL_MARKED = classes()
            .should(new ArchCondition<JavaClass>("be null-marked") {
                @Override
                public void check(JavaClass type, ConditionEvents events) {
                    boolean marked = type.getPackage().isAnnotatedWith(NullMarked.class);
                    if (!marked) {
                        events.add(SimpleConditionEvent.violated(
                                type, type.getPackageName() + " has no @NullMarked package-info"));
                    }
                }
            });

    @ArchTest
    static final ArchRule COMPONENTS_OF_A_UI_PACKAGE_STAY_THERE = classes()
            .that()
            .resideInAPackage("..ui")
            .and()
            .areTopLevelClasses()
            .and()
            .doNotHaveSimpleName("package-info")
            .should()
            .notHaveModifier(JavaModifier.PUBLIC);
}
