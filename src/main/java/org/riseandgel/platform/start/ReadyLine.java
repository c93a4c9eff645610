package org.riseandgel.platform.start;

import io.quarkus.vertx.http.HttpServer;
import io.quarkus.vertx.http.HttpServerStart;
import io.quarkus.vertx.http.HttpsServerStart;
import jakarta.enterprise.event.ObservesAsync;
import jakarta.inject.Singleton;
import org.jboss.logging.Logger;

/** Tells the person at the console where the program answers. */
@Singleton
class ReadyLine {
    private static final Logger LOG = Logger.getLogger("org.riseandgel");

    private final HttpServer server;

    ReadyLine(HttpServer server) {
        this.server = server;
    }

    void plain(@ObservesAsync HttpServerStart start) {
        LOG.infof("Rise and Gel is ready at http://%s:%d", start.options().getHost(), server.getPort());
    }

    void encrypted(@ObservesAsync HttpsServerStart start) {
        LOG.infof("Rise and Gel is ready at https://%s:%d", start.options().getHost(), server.getSecurePort());
    }
}
