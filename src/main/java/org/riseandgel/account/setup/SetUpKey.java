package org.riseandgel.account.setup;

import io.quarkus.vertx.http.HttpServer;
import io.quarkus.vertx.http.HttpServerStart;
import io.quarkus.vertx.http.HttpsServerStart;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.ObservesAsync;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.concurrent.atomic.AtomicReference;

/**
 * The one key that opens the set-up page: 128 random bits, made anew at each start while there is no school, kept in
 * memory alone and shown on the console alone. It is dead as soon as there is a school.
 */
@ApplicationScoped
class SetUpKey {
    private static final int BYTES = 16;
    private static final SecureRandom RANDOM = new SecureRandom();

    private final HttpServer server;
    private final AtomicReference<String> key = new AtomicReference<>();
    private volatile String base = "";

    SetUpKey(HttpServer server) {
        this.server = server;
    }

    /** Makes a key, and shows it if the address is known yet. */
    void make() {
        byte[] bytes = new byte[BYTES];
        RANDOM.nextBytes(bytes);
        key.set(Base64.getUrlEncoder().withoutPadding().encodeToString(bytes));
        print();
    }

    void kill() {
        key.set(null);
    }

    boolean opens(String tried) {
        String real = key.get();
        return real != null
                && MessageDigest.isEqual(real.getBytes(StandardCharsets.UTF_8), tried.getBytes(StandardCharsets.UTF_8));
    }

    /** The address to open; empty while there is a school or nothing listens yet. */
    String address() {
        String real = key.get();
        return real == null || base.isEmpty() ? "" : base + "/set-up?key=" + real;
    }

    void listening(@ObservesAsync HttpServerStart event) {
        base = "http://127.0.0.1:" + server.getPort();
        print();
    }

    void listeningEncrypted(@ObservesAsync HttpsServerStart event) {
        base = "https://localhost:" + server.getSecurePort();
        print();
    }

    private void print() {
        String address = address();
        if (!address.isEmpty()) {
            System.out.println("There is no school yet. Set it up once at " + address);
        }
    }
}
