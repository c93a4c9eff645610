package org.riseandgel.platform.web;

import io.quarkus.security.ForbiddenException;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import java.sql.SQLException;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Stream;
import org.jboss.logging.Logger;
import org.jboss.resteasy.reactive.server.ServerExceptionMapper;

/** Turns what was thrown into the page that tells it. What somebody may not see looks like what is not there. */
public class ErrorMappers {
    private static final Logger LOG = Logger.getLogger(ErrorMappers.class);
    private static final int RETRY_AFTER_SECONDS = 30;
    private static final int BAD_REQUEST = 400;
    private static final int TOO_LARGE = 413;
    private static final int CAUSES_LOOKED_AT = 20;
    /** {@code character_not_in_repertoire}, PostgreSQL's appendix on error codes. */
    private static final String NO_SUCH_TEXT = "22021";

    /** How the form reader of the library begins to say it; it has no exception of its own for that. */
    private static final String TOO_MANY_FIELDS = "Param limit of ";

    private final ErrorPages pages;

    ErrorMappers(ErrorPages pages) {
        this.pages = pages;
    }

    @ServerExceptionMapper
    public Response notFound(NotFoundException e) {
        return pages.notFound();
    }

    @ServerExceptionMapper
    public Response notAllowed(ForbiddenException e) {
        return pages.notFound();
    }

    @ServerExceptionMapper
    public Response tooBusy(TooBusyException e) {
        LOG.warn(e.getMessage());
        return Response.fromResponse(pages.refused(503))
                .header(HttpHeaders.RETRY_AFTER, RETRY_AFTER_SECONDS)
                .build();
    }

    @ServerExceptionMapper
    public Response refused(WebApplicationException e) {
        Response own = e.getResponse();
        if (own.getStatus() < 400 || own.hasEntity()) {
            return own;
        }
        return own.getStatus() >= 500 ? broken(e) : pages.refused(own.getStatus());
    }

    @ServerExceptionMapper
    public Response broken(Throwable e) {
        if (isFormOfTooManyFields(e)) {
            return pages.refused(TOO_LARGE);
        }
        if (isTextThatCannotBeStored(e)) {
            return pages.refused(BAD_REQUEST);
        }
        String incident = UUID.randomUUID().toString().substring(0, 8);
        LOG.errorf(e, "Incident %s", incident);
        return pages.broken(incident);
    }

    /** PostgreSQL stores every character but the one with the number zero, which no keyboard has. */
    private static boolean isTextThatCannotBeStored(Throwable e) {
        return Stream.iterate(e, Objects::nonNull, Throwable::getCause)
                .limit(CAUSES_LOOKED_AT)
                .anyMatch(one -> one instanceof SQLException refused && NO_SUCH_TEXT.equals(refused.getSQLState()));
    }

    private static boolean isFormOfTooManyFields(Throwable e) {
        return e.getClass() == RuntimeException.class
                && e.getMessage() != null
                && e.getMessage().startsWith(TOO_MANY_FIELDS);
    }
}
