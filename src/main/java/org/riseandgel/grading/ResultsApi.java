package org.riseandgel.grading;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.math.BigDecimal;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestPath;
import org.riseandgel.account.Roles;

/** Graded sets and their results for programs: an instructor's own cohorts, all for the office. */
@Path("/api/v1/cohorts/{cohort}/graded-sets")
@RolesAllowed({Roles.INSTRUCTOR, Roles.OFFICE})
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Graded sets", description = "What was set for a cohort, and what came of it.")
public class ResultsApi {
    private final GradingAccess access;
    private final SetStore store;
    private final Results results;
    private final Clock clock;

    ResultsApi(GradingAccess access, SetStore store, Results results, Clock clock) {
        this.access = access;
        this.store = store;
        this.results = results;
        this.clock = clock;
    }

    /** A set with its results. */
    @Schema(name = "GradedSetResults")
    public record SetResults(GradedSetLine set, List<TryLine> results) {}

    /** One try, or a person who has not begun: then everything about the try is null. */
    @Schema(name = "GradedTry")
    public record TryLine(
            UUID person,
            String name,
            String signInName,
            Integer nth,
            @Schema(description = "Whether this try is the one that counts.") boolean counts,
            Instant begunAt,
            Instant handedInAt,
            List<BigDecimal> itemPoints,
            BigDecimal points,
            BigDecimal percent) {}

    @GET
    @Operation(operationId = "gradedSets", summary = "The sets that were published for a cohort, the latest first")
    @APIResponse(responseCode = "404", description = "There is no such cohort, or it is not yours.")
    public List<GradedSetLine> sets(@RestPath UUID cohort) {
        access.cohort(cohort).orElseThrow(NotFoundException::new);
        return store.ofCohorts(List.of(cohort)).stream()
                .filter(set -> set.publishedAt() != null)
                .map(this::line)
                .toList();
    }

    @GET
    @Path("/{set}")
    @Operation(operationId = "gradedSetResults", summary = "The results of a set as they are now, person by person")
    @APIResponse(responseCode = "404", description = "There is no such set of this cohort, or it is not yours.")
    public SetResults results(@RestPath UUID cohort, @RestPath UUID set) {
        GradedSet found = access.set(set)
                .map(GradingAccess.Seen::set)
                .filter(one -> one.cohort().equals(cohort) && one.publishedAt() != null)
                .orElseThrow(NotFoundException::new);
        return new SetResults(
                line(found),
                results.rows(found).stream().flatMap(row -> tries(row).stream()).toList());
    }

    private GradedSetLine line(GradedSet set) {
        return GradedSetLine.of(set, SetLists.state(set, clock.instant()));
    }

    private static List<TryLine> tries(Results.PersonRow row) {
        if (row.tries().isEmpty()) {
            return List.of(
                    new TryLine(row.id(), row.name(), row.signInName(), null, false, null, null, null, null, null));
        }
        return row.tries().stream()
                .map(one -> new TryLine(
                        row.id(),
                        row.name(),
                        row.signInName(),
                        one.work().nth(),
                        row.tries().size() == 1 || one.best(),
                        one.work().begunAt(),
                        one.work().handedInAt(),
                        one.itemPoints(),
                        Score.written(one.score().points()),
                        one.score().percent()))
                .toList();
    }
}
