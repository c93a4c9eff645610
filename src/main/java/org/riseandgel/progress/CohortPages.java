package org.riseandgel.progress;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.io.IOException;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.riseandgel.account.CohortView;
import org.riseandgel.account.Roles;
import org.riseandgel.account.Viewer;
import org.riseandgel.platform.audit.AuditLog;
import org.riseandgel.platform.table.TableFile;
import org.riseandgel.platform.web.Choice;
import org.riseandgel.platform.web.Problem;

/** Cohorts and their boards: an instructor's own, and all of them for the office. */
@Path("/cohorts")
@RolesAllowed({Roles.INSTRUCTOR, Roles.OFFICE})
public class CohortPages {
    private final Boards boards;
    private final CohortHistories histories;
    private final CohortEffects effects;
    private final AuditLog audit;
    private final Viewer viewer;

    CohortPages(Boards boards, CohortHistories histories, CohortEffects effects, AuditLog audit, Viewer viewer) {
        this.boards = boards;
        this.histories = histories;
        this.effects = effects;
        this.audit = audit;
        this.viewer = viewer;
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance cohorts(List<CohortView> cohorts, boolean office);

        static native TemplateInstance board(
                Boards.Board board,
                List<BoardLine> lines,
                List<Choice> stages,
                String stage,
                boolean words,
                List<Problem> problems);

        static native TemplateInstance history(CohortHistories.History history);

        static native TemplateInstance effect(CohortEffects.Effect effect);

        private Templates() {}
    }

    @GET
    public TemplateInstance cohorts() {
        return Templates.cohorts(boards.cohorts(asker()), viewer.isOffice());
    }

    @GET
    @Path("/{cohort}")
    public TemplateInstance board(
            @RestPath UUID cohort,
            @RestQuery @DefaultValue("") String stage,
            @RestQuery @DefaultValue("") String words) {
        Boards.Board whole = boards.board(asker(), cohort).orElseThrow(NotFoundException::new);
        Boards.Board shown = stage.matches("[0-9]{1,2}") ? whole.ofStage(Integer.parseInt(stage)) : whole;
        boolean only = words.equals("only");
        Boards.Board asked = only ? shown.ofWords() : shown;
        return Templates.board(asked, BoardLine.of(asked), stages(whole), stage, only, List.of());
    }

    private static List<Choice> stages(Boards.Board board) {
        return Stream.concat(
                        Stream.of(new Choice("", "All stages")),
                        board.stages().stream()
                                .map(one -> new Choice(String.valueOf(one.number()), one.number() + " " + one.title())))
                .toList();
    }

    /** Who learned in the cohort over time. */
    @GET
    @Path("/{cohort}/history")
    public TemplateInstance history(@RestPath UUID cohort) {
        return Templates.history(histories.of(asker(), cohort).orElseThrow(NotFoundException::new));
    }

    /** What was still right weeks after people began. */
    @GET
    @Path("/{cohort}/effect")
    public TemplateInstance effect(@RestPath UUID cohort) {
        return Templates.effect(effects.of(asker(), cohort).orElseThrow(NotFoundException::new));
    }

    /** Progress as a table that leaves; each download is noted. */
    @GET
    @Path("/{cohort}/progress.{format}")
    public Response export(@RestPath UUID cohort, @RestPath String format) throws IOException {
        Boards.Board board = boards.board(asker(), cohort).orElseThrow(NotFoundException::new);
        TableFile.Format wanted = TableFile.Format.byEnding(format).orElseThrow(NotFoundException::new);
        TableFile file = TableFile.write(ProgressTable.of(board), wanted);
        audit.note(viewer.getId(), "progress-exported", cohort.toString(), format + " " + file.digest());
        return file.download("progress", wanted);
    }

    private Boards.Asker asker() {
        return new Boards.Asker(viewer.getId(), viewer.isOffice());
    }
}
