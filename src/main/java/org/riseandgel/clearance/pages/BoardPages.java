package org.riseandgel.clearance.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jboss.resteasy.reactive.RestQuery;
import org.riseandgel.account.Roles;
import org.riseandgel.account.Viewer;
import org.riseandgel.clearance.Appeals;
import org.riseandgel.clearance.CorrectionDesk;
import org.riseandgel.clearance.Register;
import org.riseandgel.clearance.Reminders;
import org.riseandgel.clearance.rule.Scope;
import org.riseandgel.platform.school.SchoolSettings;
import org.riseandgel.platform.web.Problem;

/** Who stands where, now or at a past moment, as it is known now or as it was known then. */
@Path("/register")
@RolesAllowed({Roles.INSTRUCTOR, Roles.SAFETY_LEAD, Roles.OFFICE})
public class BoardPages {
    private static final int UNPROCESSABLE = 422;

    private final Register register;
    private final Reminders reminders;
    private final Appeals appeals;
    private final CorrectionDesk corrections;
    private final Viewer viewer;
    private final SchoolSettings settings;
    private final Clock clock;

    BoardPages(
            Register register,
            Reminders reminders,
            Appeals appeals,
            CorrectionDesk corrections,
            Viewer viewer,
            SchoolSettings settings,
            Clock clock) {
        this.register = register;
        this.reminders = reminders;
        this.appeals = appeals;
        this.corrections = corrections;
        this.viewer = viewer;
        this.settings = settings;
        this.clock = clock;
    }

    /** One scope with its people. */
    public record ScopeView(Scope scope, List<Register.BoardRow> rows) {}

    /**
     * The board as the page shows it.
     *
     * @param past whether it is about a past moment
     */
    public record BoardView(Instant at, Instant known, boolean readable, boolean past, List<ScopeView> scopes) {
        static BoardView of(Register.Board board, boolean past) {
            return new BoardView(
                    board.at(),
                    board.known(),
                    board.readable(),
                    past,
                    board.scopes().stream()
                            .map(scope -> new ScopeView(
                                    scope,
                                    board.rows().stream()
                                            .filter(row -> row.scope().id().equals(scope.id()))
                                            .toList()))
                            .toList());
        }
    }

    /**
     * What else the viewer finds in the register.
     *
     * @param waiting how many appeals and corrections wait for a second person
     * @param moment what an address of the same board at the same moment ends with
     */
    public record May(boolean decide, boolean keep, int waiting, String moment) {}

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance board(
                BoardView board,
                List<Reminders.Ending> endings,
                May may,
                String at,
                String known,
                List<Problem> problems);

        private Templates() {}
    }

    @GET
    public Response board(@RestQuery String at, @RestQuery String known) {
        Instant now = clock.instant();
        List<Problem> problems = new ArrayList<>();
        Moment when = Moment.read("at", at, settings.zone(), now, problems);
        Moment knew = Moment.read("known", known, settings.zone(), now, problems);
        boolean past = problems.isEmpty()
                && (when.instant().isPresent() || knew.instant().isPresent());
        Register.Board board = past
                ? register.board(when.instant().orElse(null), knew.instant().orElse(null))
                : register.board(null, null);
        BoardView view = BoardView.of(board, past);
        List<Reminders.Ending> endings =
                past ? List.of() : reminders.on(board, LocalDate.ofInstant(now, settings.zone()));
        return Response.status(problems.isEmpty() ? Response.Status.OK.getStatusCode() : UNPROCESSABLE)
                .entity(Templates.board(
                        view,
                        endings,
                        may(past ? moment(when, knew) : ""),
                        when.typed(),
                        knew.typed(),
                        List.copyOf(problems)))
                .build();
    }

    private May may(String moment) {
        boolean decide = viewer.isInstructor() || viewer.isSafetyLead();
        return new May(
                decide,
                viewer.isSafetyLead() || viewer.isOffice(),
                decide ? appeals.open().size() + corrections.open().size() : 0,
                moment);
    }

    private static String moment(Moment when, Moment knew) {
        return "?at=%s&known=%s"
                .formatted(
                        URLEncoder.encode(when.typed(), StandardCharsets.UTF_8),
                        URLEncoder.encode(knew.typed(), StandardCharsets.UTF_8));
    }
}
