package org.riseandgel.platform.web;

import com.fasterxml.jackson.annotation.JsonInclude;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** What went wrong with a request under /api, as problem JSON (RFC 9457). */
@Schema(name = "Problem", description = "What went wrong, as problem JSON (RFC 9457).")
public record ApiProblem(
        @Schema(description = "What kind of problem, in a few words.") String title,
        @Schema(description = "The HTTP status.", examples = "400") int status,
        @JsonInclude(JsonInclude.Include.NON_NULL) @Schema(description = "What would be right.") String detail,
        @JsonInclude(JsonInclude.Include.NON_NULL) @Schema(description = "Each value that is wrong, all at once.")
                List<FieldError> errors) {
    /** Its media type. */
    public static final String MEDIA_TYPE = "application/problem+json";

    /** One value that is wrong: its name, empty when the values are wrong only together, and what would be right. */
    @Schema(description = "One value that is wrong and what would be right.")
    public record FieldError(
            @Schema(description = "The name of the value; empty when the values are wrong only together.") String field,
            @Schema(description = "What was wrong and what would be right, in plain words.") String detail) {}

    /** The request as a whole cannot be used. */
    public static ApiProblem of(int status, String title, String detail) {
        return new ApiProblem(title, status, detail, null);
    }

    /** Some values of the request cannot be used. */
    public static ApiProblem of(int status, String title, List<FieldError> errors) {
        return new ApiProblem(title, status, null, List.copyOf(errors));
    }

    /** The answer that tells it. */
    public Response response() {
        return Response.status(status).type(MEDIA_TYPE).entity(this).build();
    }
}
