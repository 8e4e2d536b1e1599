package org.espalier.film.internal.dicomweb;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** An archive that speaks plain HTTP with a site token. */
final class TestArchive {

    private static final JsonMapper JSON = new JsonMapper();
    private static final String BOUNDARY = "film-by-film";

    private final HttpClient client = HttpClient.newHttpClient();
    private final String root;
    private final String token;

    TestArchive(int port, String token) {
        root = "http://localhost:" + port + "/dicom-web";
        this.token = token;
    }

    HttpResponse<byte[]> store(byte[]... films) {
        return store("multipart/related; type=\"application/dicom\"; boundary=" + BOUNDARY, body(films));
    }

    HttpResponse<byte[]> store(String type, byte[] body) {
        return send(request("/studies").header("Content-Type", type).POST(BodyPublishers.ofByteArray(body)));
    }

    static byte[] body(byte[]... films) {
        var body = new ByteArrayOutputStream();
        for (var film : films) {
            body.writeBytes(ascii("--" + BOUNDARY + "\r\nContent-Type: application/dicom\r\n\r\n"));
            body.writeBytes(film);
            body.writeBytes(ascii("\r\n"));
        }
        body.writeBytes(ascii("--" + BOUNDARY + "--\r\n"));
        return body.toByteArray();
    }

    HttpResponse<byte[]> get(String path, String accept) {
        return send(request(path).header("Accept", accept));
    }

    /** What a search found. */
    JsonNode find(String path) {
        var answer = get(path, "application/dicom+json");
        return answer.statusCode() == 204 ? JSON.createArrayNode() : json(answer);
    }

    static JsonNode json(HttpResponse<byte[]> answer) {
        return JSON.readTree(answer.body());
    }

    private HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create(path.startsWith("http") ? path : root + path))
                .header("Authorization", "Bearer " + token);
    }

    private HttpResponse<byte[]> send(HttpRequest.Builder request) {
        try {
            return client.send(request.build(), BodyHandlers.ofByteArray());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    private static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }
}
