package org.espalier;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** A browser's session over plain HTTP: keeps cookies, follows no redirect, and sends the token that pages carry. */
public final class TestSession {

    private static final Pattern TOKEN = Pattern.compile("name=\"_csrf\" content=\"([^\"]+)\"");

    private final CookieManager cookies = new CookieManager();
    private final HttpClient client =
            HttpClient.newBuilder().cookieHandler(cookies).build();
    private final URI root;
    private @Nullable String token;

    public TestSession(int port) {
        root = URI.create("http://localhost:" + port + "/");
    }

    /** Signs in through the login page and fails the test when it does not work. */
    public TestSession signIn(String login, String password) {
        var answer = trySignIn(login, password);
        var where = answer.headers().firstValue("Location").orElse("");
        if (answer.statusCode() != 302 || where.contains("/login")) {
            throw new AssertionError("not signed in: " + answer.statusCode() + " " + where);
        }
        token = null;
        return this;
    }

    public HttpResponse<String> trySignIn(String login, String password) {
        openPage();
        return form("login", Map.of("username", login, "password", password));
    }

    public HttpResponse<String> get(String path) {
        return send(HttpRequest.newBuilder(root.resolve(path)).GET());
    }

    public HttpResponse<String> form(String path, Map<String, String> fields) {
        var body = fields.entrySet().stream()
                .map(field -> field.getKey() + "=" + URLEncoder.encode(field.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
        return send(post(path, "application/x-www-form-urlencoded", body));
    }

    public HttpResponse<String> json(String path, String body) {
        return send(post(path, "application/json", body));
    }

    /** Sends any request; those of this session's root only. */
    public HttpResponse<String> send(HttpRequest.Builder request) {
        return send(request, BodyHandlers.ofString());
    }

    /** Fetches what is no text. */
    public HttpResponse<byte[]> bytes(String path) {
        return send(HttpRequest.newBuilder(root.resolve(path)).GET(), BodyHandlers.ofByteArray());
    }

    private <T> HttpResponse<T> send(HttpRequest.Builder request, HttpResponse.BodyHandler<T> body) {
        try {
            return client.send(request.build(), body);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    public URI address(String path) {
        return root.resolve(path);
    }

    public CookieManager cookies() {
        return cookies;
    }

    /** Forgets the token, as a forged page would not have it. */
    public TestSession withoutToken() {
        token = "";
        return this;
    }

    /** A request with the token of the page, to be given its method. */
    public HttpRequest.Builder request(String path) {
        return request(path, "application/json");
    }

    private HttpRequest.Builder post(String path, String type, String body) {
        return request(path, type).POST(BodyPublishers.ofString(body));
    }

    private HttpRequest.Builder request(String path, String type) {
        if (token == null) {
            openPage();
        }
        return HttpRequest.newBuilder(root.resolve(path))
                .header("Content-Type", type)
                .header("X-CSRF-TOKEN", token == null ? "" : token);
    }

    private void openPage() {
        var page = TOKEN.matcher(get("login").body());
        token = page.find() ? page.group(1) : "";
    }
}
