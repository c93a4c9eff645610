package org.riseandgel.progress;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestPath;
import org.riseandgel.account.CohortView;
import org.riseandgel.account.Roles;
import org.riseandgel.account.Viewer;
import org.riseandgel.practice.StandingView;

/** Cohorts and their progress for programs: an instructor's own cohorts, all for the office. */
@Path("/api/v1/cohorts")
@RolesAllowed({Roles.INSTRUCTOR, Roles.OFFICE})
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Progress", description = "Where people stand, from practice alone. It is no test and clears nobody.")
public class ProgressApi {
    private final Boards boards;
    private final Viewer viewer;

    ProgressApi(Boards boards, Viewer viewer) {
        this.boards = boards;
        this.viewer = viewer;
    }

    /** A cohort. */
    @Schema(name = "CohortLine")
    public record CohortLine(UUID id, String name, int learners) {}

    /** A cohort's board. */
    @Schema(name = "CohortProgress")
    public record CohortProgress(CohortLine cohort, List<PersonLine> people) {}

    /** One person with the skills that were begun. */
    @Schema(name = "PersonProgress")
    public record PersonLine(
            UUID person,
            String name,
            String signInName,
            Instant lastAnswerAt,
            List<String> needsAWord,
            List<SkillLine> skills) {}

    /** A standing in a skill. */
    @Schema(name = "SkillProgress")
    public record SkillLine(
            String skill,
            @Schema(description = "begun, growing, mastered or stuck.") String state,
            int answers,
            int right,
            int days,
            Instant lastAnswerAt,
            LocalDate masteredOn,
            LocalDate dueOn) {
        static SkillLine of(StandingView standing) {
            return new SkillLine(
                    standing.skill(),
                    standing.state().words(),
                    standing.answers(),
                    standing.rightAnswers(),
                    standing.days(),
                    standing.lastAt(),
                    standing.masteredOn(),
                    standing.returns().dueOn());
        }
    }

    @GET
    @Operation(operationId = "cohorts", summary = "The cohorts that you may see")
    public List<CohortLine> cohorts() {
        return boards.cohorts(asker()).stream().map(ProgressApi::line).toList();
    }

    @GET
    @Path("/{cohort}/progress")
    @Operation(operationId = "cohortProgress", summary = "Where everybody of a cohort stands")
    @APIResponse(responseCode = "404", description = "There is no such cohort, or it is not yours.")
    public CohortProgress progress(@RestPath UUID cohort) {
        return boards.board(asker(), cohort)
                .map(board -> new CohortProgress(
                        line(board.cohort()),
                        board.rows().stream().map(row -> line(board, row)).toList()))
                .orElseThrow(NotFoundException::new);
    }

    private static PersonLine line(Boards.Board board, Boards.PersonRow row) {
        return new PersonLine(
                row.id(),
                row.name(),
                row.signInName(),
                row.lastAt(),
                board.words().stream()
                        .filter(word -> word.person().equals(row.id()))
                        .map(word -> word.skill() + ": " + word.why())
                        .toList(),
                row.cells().stream()
                        .filter(cell -> cell.answers() > 0)
                        .map(SkillLine::of)
                        .toList());
    }

    private static CohortLine line(CohortView cohort) {
        return new CohortLine(cohort.id(), cohort.name(), cohort.learners());
    }

    private Boards.Asker asker() {
        return new Boards.Asker(viewer.getId(), viewer.isOffice());
    }
}
