package org.espalier.film.internal.dicomweb;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.UUID;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.film.TestFilm;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.json.JsonMapper;

/** The archive's side of DICOMweb spoken by a server that others wrote. */
@IntegrationTest
class PeerArchiveIntegrationTests {

    private static final JsonMapper JSON = new JsonMapper();
    private static final int STUDY = 0x0020000D;
    private static final int INSTANCE = 0x00080018;

    @LocalServerPort
    int port;

    @Autowired
    TestNetwork network;

    @TempDir
    Path folder;

    @Test
    void sendsFindsAndFetchesBack() throws Exception {
        UUID site = network.site();
        var token = network.token(site);
        try (var peer = PeerArchive.start(folder, port, token)) {
            var film = TestFilm.of(400, 900).of("H-5005", "20160203");
            var large = TestFilm.of(2500, 3000);
            send(peer, film.bytes());
            send(peer, large.bytes());
            var here = new TestArchive(port, token);
            assertThat(here.find("/instances")).hasSize(2);

            var found = JSON.readTree(peer.post(
                    "/dicom-web/servers/espalier/qido",
                    "{\"Uri\":\"/studies\",\"Arguments\":{\"PatientID\":\"H-5005\"}}"));
            assertThat(found).hasSize(1);
            assertThat(found.get(0).toString()).contains(film.uid(STUDY));

            var known = JSON.readTree(peer.post("/tools/lookup", film.uid(INSTANCE)))
                    .get(0)
                    .path("Path")
                    .asString();
            peer.delete(known);
            peer.post(
                    "/dicom-web/servers/espalier/retrieve",
                    "{\"Resources\":[{\"Study\":\"" + film.uid(STUDY) + "\"}],\"Synchronous\":true}");
            assertThat(peer.get(known + "/tags?simplify")).contains("\"PatientID\" : \"H-5005\"", "\"Rows\" : \"900\"");
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void gatewayForgetsAFilmOnceItIsKeptHereAndNotBefore(boolean known) throws Exception {
        var token = network.token(network.site());
        try (var peer = PeerArchive.start(folder, port, known ? token : "espalier_wrong")) {
            peer.post("/instances", TestFilm.of(400, 900).bytes());
            peer.post("/tools/execute-script", Files.readString(Path.of("docker/forward.lua")) + "OnHeartBeat()");
            assertThat(JSON.readTree(peer.get("/instances"))).hasSize(known ? 0 : 1);
            assertThat(new TestArchive(port, token).find("/instances")).hasSize(known ? 1 : 0);
        }
    }

    private static void send(PeerArchive peer, byte[] film) {
        var kept = JSON.readTree(peer.post("/instances", film)).path("ID").asString();
        var sent = JSON.readTree(peer.post(
                "/dicom-web/servers/espalier/stow", "{\"Resources\":[\"" + kept + "\"],\"Synchronous\":true}"));
        assertThat(sent.path("InstancesCount").asString()).isEqualTo("1");
    }
}
