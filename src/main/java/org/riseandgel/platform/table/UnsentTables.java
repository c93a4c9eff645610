package org.riseandgel.platform.table;

import jakarta.ws.rs.HttpMethod;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.container.ContainerResponseContext;
import org.jboss.resteasy.reactive.server.ServerResponseFilter;

/** Removes tables that were written and are not sent, because only their headers were asked for: they hold names. */
public class UnsentTables {
    @ServerResponseFilter
    public void remove(ContainerRequestContext request, ContainerResponseContext response) {
        remove(request.getMethod(), response.getEntity());
    }

    static void remove(String method, Object entity) {
        if (HttpMethod.HEAD.equals(method) && entity instanceof TableFile.Content unsent) {
            unsent.file().remove();
        }
    }
}
