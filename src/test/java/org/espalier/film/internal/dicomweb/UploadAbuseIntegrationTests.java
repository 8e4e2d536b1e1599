package org.espalier.film.internal.dicomweb;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.UUID;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.film.TestFilm;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** What a hostile sender with a good key may try; whatever it was, the next honest film is taken. */
@IntegrationTest
class UploadAbuseIntegrationTests {

    private static final String MULTIPART = "multipart/related; type=\"application/dicom\"; boundary=x";

    @LocalServerPort
    int port;

    @Autowired
    TestNetwork network;

    UUID site;
    TestArchive archive;

    @BeforeEach
    void aKey() {
        site = network.site();
        archive = new TestArchive(port, network.token(site));
    }

    @AfterEach
    void theNextHonestFilmIsTaken() {
        assertThat(archive.store(TestFilm.of(30, 40).bytes()).statusCode()).isEqualTo(200);
    }

    private int sends(String body) {
        return archive.store(MULTIPART, body.getBytes(StandardCharsets.ISO_8859_1))
                .statusCode();
    }

    private long kept() {
        return network.owner()
                .sql("select count(*) from film where site_id = ?")
                .param(site)
                .query(Long.class)
                .single();
    }

    @Test
    void aPageOfScriptIsNoFilm() {
        var page = "--x\r\nContent-Type: application/dicom\r\n\r\n<html><script>alert(1)</script></html>\r\n--x--\r\n";
        assertThat(sends(page)).isBetween(400, 499);
        assertThat(sends(page.replace("application/dicom", "text/html"))).isEqualTo(400);
        assertThat(kept()).isZero();
    }

    @Test
    void aThousandEmptyPartsAreRefusedOneByOneAndKeepNothing() {
        assertThat(sends("--x\r\nContent-Type: application/dicom\r\n\r\n\r\n".repeat(1_000) + "--x--\r\n"))
                .isBetween(400, 499);
        assertThat(kept()).isZero();
    }

    @Test
    void headersWithoutEndAreCutOff() {
        assertThat(sends("--x\r\nContent-Type: application/dicom\r\nX: " + "y".repeat(200_000)
                        + "\r\n\r\nz\r\n--x--\r\n"))
                .isBetween(400, 499);
        assertThat(kept()).isZero();
    }

    @Test
    void aNameThatClimbsOutOfTheFolderIsNotRead() {
        var climbing = "--x\r\nContent-Type: application/dicom\r\n"
                + "Content-Disposition: attachment; filename=\"../../../../evil.jsp\"\r\n\r\nnothing\r\n--x--\r\n";
        assertThat(sends(climbing)).isBetween(400, 499);
        assertThat(kept()).isZero();
    }
}
