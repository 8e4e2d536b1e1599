package org.espalier.access;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.flow.router.Route;
import java.util.List;
import org.espalier.IntegrationTest;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.context.annotation.ClassPathScanningCandidateComponentProvider;
import org.springframework.core.type.filter.AnnotationTypeFilter;
import org.springframework.util.ClassUtils;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;

/**
 * No screen and no endpoint of the house without its row in the table of permissions, and no row for a screen that is
 * gone.
 */
@IntegrationTest
class PermissionRowsIntegrationTests {

    private static final String HOUSE = "org.espalier";

    @Autowired
    PermissionTable table;

    @Autowired
    @Qualifier("requestMappingHandlerMapping")
    RequestMappingHandlerMapping mappings;

    @Test
    void everyScreenHasARowAndEveryRowAScreen() {
        var screens = screens();
        assertThat(screens)
                .isNotEmpty()
                .allSatisfy(route -> assertThat(table.route(route)).as(route).isPresent());
        assertThat(table.of(Permission.Kind.ROUTE)).hasSameSizeAs(screens);
    }

    @Test
    void everyEndpointHasARow() {
        var endpoints = endpoints();
        assertThat(endpoints).isNotEmpty().allSatisfy(endpoint -> {
            var parts = endpoint.split(" ", 2);
            assertThat(table.endpoint(parts[0], parts[1])).as(endpoint).isPresent();
        });
    }

    private static List<String> screens() {
        var scanner = new ClassPathScanningCandidateComponentProvider(false);
        scanner.addIncludeFilter(new AnnotationTypeFilter(Route.class));
        return scanner.findCandidateComponents(HOUSE).stream()
                .map(found -> ClassUtils.resolveClassName(
                        String.valueOf(found.getBeanClassName()),
                        PermissionRowsIntegrationTests.class.getClassLoader()))
                .map(screen -> screen.getAnnotation(Route.class).value())
                .toList();
    }

    private List<String> endpoints() {
        return mappings.getHandlerMethods().entrySet().stream()
                .filter(mapping ->
                        mapping.getValue().getBeanType().getPackageName().startsWith(HOUSE))
                .flatMap(mapping -> mapping.getKey().getMethodsCondition().getMethods().stream()
                        .flatMap(method -> mapping.getKey().getPatternValues().stream()
                                .map(pattern -> method + " " + pattern.replaceAll("\\{[^/]+}", "x"))))
                .toList();
    }
}
