package org.riseandgel.platform.web;

import io.quarkus.vertx.http.runtime.CurrentVertxRequest;
import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Named;

/** Where in the program the open page is, so that the main links can say so. */
@RequestScoped
@Named("here")
public class Here {
    private final CurrentVertxRequest request;

    Here(CurrentVertxRequest request) {
        this.request = request;
    }

    /** Whether the page lies at this address or below it. */
    public boolean at(String place) {
        String path = request.getCurrent() == null
                ? ""
                : request.getCurrent().request().path();
        return path.equals(place) || path.startsWith(place + "/");
    }
}
