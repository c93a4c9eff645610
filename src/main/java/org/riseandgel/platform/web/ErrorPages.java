package org.riseandgel.platform.web;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.Map;

/** The pages that tell what went wrong, and the same as problem JSON (RFC 9457) under /api. */
@ApplicationScoped
public class ErrorPages {
    private final RoutingContext routing;

    ErrorPages(RoutingContext routing) {
        this.routing = routing;
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance notFound();

        static native TemplateInstance signInFirst(String next);

        static native TemplateInstance foreignOrigin();

        static native TemplateInstance formOutOfDate(String back);

        static native TemplateInstance refused(int status);

        static native TemplateInstance broken(String incident);

        private Templates() {}
    }

    /** 404: there is nothing here for this person. */
    public Response notFound() {
        return page(404, "There is nothing at this address.", Templates.notFound());
    }

    /** 401: the sign-in is over and nothing was changed. */
    public Response signInFirst(String next) {
        return page(401, "Sign in first; nothing was changed.", Templates.signInFirst(next));
    }

    /** 403: another site sent this form. */
    public Response foreignOrigin() {
        return page(403, "The request came from another site; nothing was changed.", Templates.foreignOrigin());
    }

    /** 400: the form has no token, or one from before the last sign-in. */
    public Response formOutOfDate() {
        return page(
                400,
                "The form token is missing or out of date; nothing was changed.",
                Templates.formOutOfDate(routing.normalizedPath()));
    }

    /** Any other refusal, by its HTTP status. */
    public Response refused(int status) {
        return page(status, "The request was refused.", Templates.refused(status));
    }

    /** 500: something broke; the number finds it in the log. */
    public Response broken(String incident) {
        return page(500, "Something broke. Incident " + incident + ".", Templates.broken(incident));
    }

    private Response page(int status, String title, TemplateInstance template) {
        if (routing.normalizedPath().startsWith("/api/")) {
            return Response.status(status)
                    .type("application/problem+json")
                    .entity(Map.of("title", title, "status", status))
                    .build();
        }
        return Response.status(status)
                .type(MediaType.TEXT_HTML_TYPE.withCharset("UTF-8"))
                .entity(template.render())
                .build();
    }
}
