package org.espalier;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.lang.reflect.Field;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.context.annotation.ClassPathScanningCandidateComponentProvider;
import org.springframework.core.type.filter.AnnotationTypeFilter;
import org.springframework.modulith.core.ApplicationModules;
import org.springframework.modulith.core.Violations;
import org.springframework.util.ClassUtils;

/**
 * Every rule of the architecture fails on careless code: a new rule needs its careless line in the package
 * {@code careless}.
 */
class RulesSeenFailingTests {

    private static final JavaClasses CARELESS = new ClassFileImporter()
            .importPackages("careless", "org.espalier.science.quantity", "org.espalier.science.statistics");

    static Stream<Arguments> rules() {
        var scanner = new ClassPathScanningCandidateComponentProvider(false);
        scanner.addIncludeFilter(new AnnotationTypeFilter(AnalyzeClasses.class));
        return scanner.findCandidateComponents("org.espalier").stream()
                .map(found -> ClassUtils.resolveClassName(
                        String.valueOf(found.getBeanClassName()), RulesSeenFailingTests.class.getClassLoader()))
                .flatMap(type -> Arrays.stream(type.getDeclaredFields()))
                .filter(field -> field.isAnnotationPresent(ArchTest.class))
                .map(field -> Arguments.of(field.getName(), rule(field)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rules")
    void failsOnCarelessCode(String name, ArchRule rule) {
        assertThat(rule.evaluate(CARELESS).hasViolation()).as(name).isTrue();
    }

    @Test
    void modulesThatUseMoreThanTheyDeclareFail() {
        ImportOption withTests = location -> true;
        assertThatThrownBy(() ->
                        ApplicationModules.of("careless.modules", withTests).verify())
                .isInstanceOf(Violations.class)
                .hasMessageContaining("'one'")
                .hasMessageContaining("'two'");
    }

    private static ArchRule rule(Field field) {
        try {
            field.setAccessible(true);
            return (ArchRule) field.get(null);
        } catch (IllegalAccessException e) {
            throw new AssertionError(e);
        }
    }
}
