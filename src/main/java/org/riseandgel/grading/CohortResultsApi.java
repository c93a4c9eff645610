package org.riseandgel.grading;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestPath;
import org.riseandgel.account.Roles;

/** What the graded sets of a cohort came to, for programs: the same table as on its page. */
@Path("/api/v1/cohorts/{cohort}/results")
@RolesAllowed({Roles.INSTRUCTOR, Roles.OFFICE})
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Graded sets", description = "What was set for a cohort, and what came of it.")
public class CohortResultsApi {
    private final GradingAccess access;
    private final CohortResults results;

    CohortResultsApi(GradingAccess access, CohortResults results) {
        this.access = access;
        this.results = results;
    }

    /** People by sets. */
    @Schema(name = "CohortResults")
    public record Table(
            UUID cohort,
            String name,
            @Schema(
                            description =
                                    "The published sets, those that close first at the head; a withdrawn one counts for nothing.")
                    List<GradedSetLine> sets,
            List<PersonResults> people) {}

    /** A person with every set. */
    @Schema(name = "PersonResults")
    public record PersonResults(
            UUID person,
            String name,
            String signInName,
            @Schema(description = "Whether the person learns in the cohort now; what was earned stays with it.")
                    boolean here,
            @Schema(description = "In the order of the sets.") List<SetResult> results) {}

    /** What a set came to for a person: the best try. Points are null where none was begun. */
    @Schema(name = "SetResult")
    public record SetResult(
            UUID set,
            @Schema(description = "How many tries were begun.") int tries,
            boolean handedIn,
            BigDecimal points,
            Integer outOf,
            BigDecimal percent) {}

    @GET
    @Operation(
            operationId = "cohortResults",
            summary = "The results of all sets of a cohort as they are now, person by person")
    @APIResponse(responseCode = "404", description = "There is no such cohort, or it is not yours.")
    public Table results(@RestPath UUID cohort) {
        CohortResults.View view = access.cohort(cohort).map(results::of).orElseThrow(NotFoundException::new);
        return new Table(
                view.cohort().id(),
                view.cohort().name(),
                view.sets().stream()
                        .map(column -> GradedSetLine.of(column.set(), column.state()))
                        .toList(),
                view.rows().stream().map(row -> person(view, row)).toList());
    }

    private static PersonResults person(CohortResults.View view, CohortResults.PersonRow row) {
        List<SetResult> cells = new ArrayList<>();
        for (int i = 0; i < view.sets().size(); i++) {
            cells.add(cell(view.sets().get(i).set().id(), row.cells().get(i)));
        }
        return new PersonResults(row.id(), row.name(), row.signInName(), row.here(), cells);
    }

    private static SetResult cell(UUID set, CohortResults.Cell cell) {
        Score score = cell.score();
        return score == null
                ? new SetResult(set, cell.tries(), cell.handedIn(), null, null, null)
                : new SetResult(
                        set,
                        cell.tries(),
                        cell.handedIn(),
                        Score.written(score.points()),
                        score.outOf(),
                        score.percent());
    }
}
