package org.riseandgel.platform.start;

import io.quarkus.vertx.http.HttpServer;
import io.quarkus.vertx.http.HttpServerStart;
import io.quarkus.vertx.http.HttpsServerStart;
import jakarta.enterprise.event.ObservesAsync;
import jakarta.inject.Singleton;
import java.util.concurrent.locks.LockSupport;
import java.util.function.IntSupplier;
import org.jboss.logging.Logger;

/** Tells the person at the console where the program answers. */
@Singleton
class ReadyLine {
    private static final Logger LOG = Logger.getLogger("org.riseandgel");

    private static final int TRIES = 500;
    private static final long PAUSE_NANOS = 10_000_000;

    private final HttpServer server;

    ReadyLine(HttpServer server) {
        this.server = server;
    }

    void plain(@ObservesAsync HttpServerStart start) {
        LOG.infof("Rise and Gel is ready at http://%s:%d", start.options().getHost(), once(server::getPort));
    }

    void encrypted(@ObservesAsync HttpsServerStart start) {
        LOG.infof("Rise and Gel is ready at https://%s:%d", start.options().getHost(), once(server::getSecurePort));
    }

    /** The event may come a moment before the server tells its port. */
    private static int once(IntSupplier port) {
        for (int i = 0; i < TRIES && port.getAsInt() <= 0; i++) {
            LockSupport.parkNanos(PAUSE_NANOS);
        }
        return port.getAsInt();
    }
}
