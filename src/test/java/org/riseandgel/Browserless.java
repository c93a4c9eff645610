package org.riseandgel;

import io.restassured.RestAssured;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/**
 * What a browser does, without a screen: keeps cookies, sends the Origin header, and puts the form token into what it
 * posts. It does not follow redirects unless told to, so that a test sees them.
 *
 * <pre>{@code
 * Browserless apprentice = SignedIn.as("apprentice");
 * Answer page = apprentice.get("/today");
 * Answer done = apprentice.post("/practice/123", Map.of("answer", "12 g"));
 * assertThat(done.status()).isEqualTo(303);
 * assertThat(done.follow().page().select("h1").text()).isEqualTo("Right");
 * }</pre>
 */
public final class Browserless {
    private static final HttpClient CLIENT =
            HttpClient.newBuilder().followRedirects(HttpClient.Redirect.NEVER).build();

    private final Map<String, String> cookies = new LinkedHashMap<>();
    private final String base;
    private String token;

    private Browserless(String base) {
        this.base = base;
    }

    /** One that nobody has signed in with. */
    public static Browserless anonymous() {
        return new Browserless(origin());
    }

    /** One for a server of its own process, such as {@code http://127.0.0.1:8123}. */
    public static Browserless at(URI server) {
        return new Browserless(server.toString().replaceFirst("/$", ""));
    }

    /** Opens an address of the server. */
    public Answer get(String path) {
        return send(request(path).GET());
    }

    /** Sends a form with its token. The token is fetched from a page of this person when it is not known yet. */
    public Answer post(String path, Map<String, String> fields) {
        Map<String, String> all = new LinkedHashMap<>(fields);
        all.put("form-token", token());
        return postAsIs(path, all, base);
    }

    /** Sends a form with its token in which one field stands once for each of its values, as tick boxes do. */
    public Answer post(String path, Map<String, String> fields, String name, List<String> values) {
        Map<String, String> all = new LinkedHashMap<>(fields);
        all.put("form-token", token());
        String more =
                values.stream().map(value -> "&" + encoded(Map.of(name, value))).collect(Collectors.joining());
        return send(request(path)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .header("Origin", base)
                .POST(BodyPublishers.ofString(encoded(all) + more)));
    }

    /** Sends a form that has no field but the token. */
    public Answer post(String path) {
        return post(path, Map.of());
    }

    /** Sends exactly these fields, without a token: the server must refuse it. */
    public Answer postWithoutToken(String path, Map<String, String> fields) {
        return postAsIs(path, fields, base);
    }

    /** Sends a right form as if a page of another site had sent it: the server must refuse it. */
    public Answer postFrom(String foreignOrigin, String path, Map<String, String> fields) {
        Map<String, String> all = new LinkedHashMap<>(fields);
        all.put("form-token", token());
        return postAsIs(path, all, foreignOrigin);
    }

    /** Sends exactly these fields with this Origin header; none when it is null. */
    public Answer postAsIs(String path, Map<String, String> fields, String origin) {
        HttpRequest.Builder request = request(path)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(BodyPublishers.ofString(encoded(fields)));
        if (origin != null) {
            request.header("Origin", origin);
        }
        return send(request);
    }

    /** Sends a form with its token as multipart, as a form with a file does. */
    public Answer postMultipart(String path, Map<String, String> fields) {
        return postMultipart(path, fields, "", new byte[0]);
    }

    /** Sends a form with its token and a file in the field {@code file}. */
    public Answer postMultipart(String path, Map<String, String> fields, String fileName, byte[] content) {
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        Map<String, String> all = new LinkedHashMap<>(fields);
        all.put("form-token", token());
        all.forEach((name, value) -> body.writeBytes(
                ("--edge\r\nContent-Disposition: form-data; name=\"" + name + "\"\r\n\r\n" + value + "\r\n")
                        .getBytes(StandardCharsets.UTF_8)));
        if (!fileName.isEmpty()) {
            body.writeBytes(("--edge\r\nContent-Disposition: form-data; name=\"file\"; filename=\"" + fileName
                            + "\"\r\nContent-Type: text/csv\r\n\r\n")
                    .getBytes(StandardCharsets.UTF_8));
            body.writeBytes(content);
            body.writeBytes("\r\n".getBytes(StandardCharsets.UTF_8));
        }
        body.writeBytes("--edge--\r\n".getBytes(StandardCharsets.UTF_8));
        return send(request(path)
                .header("Content-Type", "multipart/form-data; boundary=edge")
                .header("Origin", base)
                .POST(BodyPublishers.ofByteArray(body.toByteArray())));
    }

    /** Sends JSON with the token in the header. */
    public Answer postJson(String path, String json) {
        return send(request(path)
                .header("Content-Type", "application/json")
                .header("Origin", base)
                .header("X-Form-Token", token())
                .POST(BodyPublishers.ofString(json)));
    }

    /** Sends JSON without the token: the server must refuse it. */
    public Answer postJsonWithoutToken(String path, String json) {
        return send(request(path)
                .header("Content-Type", "application/json")
                .header("Origin", base)
                .POST(BodyPublishers.ofString(json)));
    }

    /** Asks with an access token, as a program does: no cookie, no Origin. */
    public Answer getWithToken(String path, String accessToken) {
        return send(HttpRequest.newBuilder(URI.create(base + path))
                .header("Authorization", "Bearer " + accessToken)
                .GET());
    }

    /** Sends JSON with an access token, as a program does. */
    public Answer postJsonWithToken(String path, String json, String accessToken) {
        return send(HttpRequest.newBuilder(URI.create(base + path))
                .header("Authorization", "Bearer " + accessToken)
                .header("Content-Type", "application/json")
                .POST(BodyPublishers.ofString(json)));
    }

    /** The token that forms of this browser carry. */
    public String token() {
        if (token == null) {
            Answer page = get("/account").followAll();
            Element field = page.page().selectFirst("input[name=form-token]");
            token = Optional.ofNullable(field)
                    .map(f -> f.attr("value"))
                    .orElseThrow(() -> new AssertionError("no form token on " + page));
        }
        return token;
    }

    /** Signs in; the answer is the redirect, or the page that refuses. */
    public Answer signIn(String name, String password) {
        return post("/sign-in", Map.of("name", name, "password", password));
    }

    /** The value of a cookie, if the browser has it. */
    public Optional<String> cookie(String name) {
        return Optional.ofNullable(cookies.get(name));
    }

    /** Puts a cookie into the browser, as a thief would. */
    public Browserless withCookie(String name, String value) {
        cookies.put(name, value);
        return this;
    }

    /** The scheme, host and port of the server under test. */
    public static String origin() {
        return "http://localhost:" + RestAssured.port;
    }

    private HttpRequest.Builder request(String path) {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(base + path));
        if (!cookies.isEmpty()) {
            request.header(
                    "Cookie",
                    cookies.entrySet().stream()
                            .map(c -> c.getKey() + "=" + c.getValue())
                            .collect(Collectors.joining("; ")));
        }
        return request;
    }

    private Answer send(HttpRequest.Builder request) {
        try {
            HttpResponse<String> response = CLIENT.send(request.build(), BodyHandlers.ofString(StandardCharsets.UTF_8));
            response.headers().allValues("Set-Cookie").forEach(this::keep);
            return new Answer(response);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    private void keep(String setCookie) {
        String pair = setCookie.split(";", 2)[0];
        String name = pair.substring(0, pair.indexOf('='));
        String value = pair.substring(pair.indexOf('=') + 1);
        if (name.endsWith("rg-form") && !value.equals(cookies.get(name))) {
            token = null;
        }
        if (setCookie.toLowerCase(Locale.ROOT).contains("max-age=0")) {
            cookies.remove(name);
        } else {
            cookies.put(name, value);
        }
    }

    private static String encoded(Map<String, String> fields) {
        return fields.entrySet().stream()
                .map(f -> URLEncoder.encode(f.getKey(), StandardCharsets.UTF_8) + "="
                        + URLEncoder.encode(f.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
    }

    /** What the server answered. */
    public final class Answer {
        private final HttpResponse<String> response;

        private Answer(HttpResponse<String> response) {
            this.response = response;
        }

        public int status() {
            return response.statusCode();
        }

        public String body() {
            return response.body();
        }

        /** The first header of that name; empty when there is none. */
        public String header(String name) {
            return response.headers().firstValue(name).orElse("");
        }

        public List<String> headers(String name) {
            return response.headers().allValues(name);
        }

        /** All headers as one text. */
        public String headerText() {
            return response.headers().map().toString();
        }

        /** Where the answer sends the browser, as a path. */
        public String location() {
            return header("Location").replaceFirst("^https?://[^/]+", "");
        }

        /** The answer read as a page. */
        public Document page() {
            return Jsoup.parse(body());
        }

        /** Goes where the answer sends the browser. */
        public Answer follow() {
            return get(location());
        }

        /** Follows redirects until there is a page. */
        public Answer followAll() {
            Answer answer = this;
            for (int i = 0; i < 5 && answer.status() == 303; i++) {
                answer = answer.follow();
            }
            return answer;
        }

        @Override
        public String toString() {
            return response.request().uri() + " → " + status() + " " + location() + "\n" + body();
        }
    }
}
