package org.espalier.platform;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import org.espalier.IntegrationTest;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Value;

/** What the people who run the house can see of it. */
@IntegrationTest
class WatchingIntegrationTests {

    private final HttpClient client = HttpClient.newHttpClient();

    @Value("${local.management.port}")
    int managementPort;

    @Value("${local.server.port}")
    int port;

    @Test
    void isReadyWhileTheDatabaseIsReachedAndFilmsCanBeKept() throws Exception {
        assertThat(management("/actuator/health/readiness").body()).contains("\"UP\"");
        assertThat(management("/actuator/health/liveness").body()).contains("\"UP\"");
    }

    @Test
    void countsWhatItDoes() throws Exception {
        assertThat(management("/actuator/prometheus").body()).contains("jvm_memory_used_bytes", "hikaricp_connections");
    }

    @Test
    void showsNothingOfItselfOnThePortOfTheUsers() throws Exception {
        assertThat(get(port, "/actuator/prometheus").body()).doesNotContain("jvm_memory");
        assertThat(management("/actuator/env").statusCode()).isNotEqualTo(200);
    }

    @Test
    void givesEachAnswerTheIdOfItsRequest() throws Exception {
        var first = get(port, "/login").headers().firstValue("X-Request-Id");
        var second = get(port, "/login").headers().firstValue("X-Request-Id");
        assertThat(first).isPresent().isNotEqualTo(second);
    }

    private HttpResponse<String> management(String path) throws IOException, InterruptedException {
        return get(managementPort, path);
    }

    private HttpResponse<String> get(int port, String path) throws IOException, InterruptedException {
        var request = HttpRequest.newBuilder(URI.create("http://localhost:" + port + path))
                .build();
        return client.send(request, HttpResponse.BodyHandlers.ofString());
    }
}
