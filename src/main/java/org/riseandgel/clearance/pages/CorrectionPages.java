package org.riseandgel.clearance.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestPath;
import org.riseandgel.account.Roles;
import org.riseandgel.account.Viewer;
import org.riseandgel.clearance.CorrectionDesk;
import org.riseandgel.clearance.PersonRecord;
import org.riseandgel.clearance.RegisterProblem;
import org.riseandgel.platform.school.SchoolSettings;
import org.riseandgel.platform.web.Problem;

/** A line that is wrong: one person says what is right, another one looks at it and confirms. */
@Path("/register/corrections/{line}")
@RolesAllowed({Roles.INSTRUCTOR, Roles.SAFETY_LEAD})
public class CorrectionPages {
    private static final String DONE = "/register/waiting?done=";

    private final CorrectionDesk desk;
    private final PersonRecord records;
    private final SchoolSettings school;
    private final Viewer viewer;
    private final Clock clock;

    CorrectionPages(CorrectionDesk desk, PersonRecord records, SchoolSettings school, Viewer viewer, Clock clock) {
        this.desk = desk;
        this.records = records;
        this.school = school;
        this.viewer = viewer;
        this.clock = clock;
    }

    /**
     * A line and what may be done about it.
     *
     * @param hindrance why the viewer may not correct it; empty when they may
     * @param movable whether its time may be put right
     * @param waiting what was asked for and waits; null when nothing does
     * @param own whether the viewer has asked for it, and so another confirms
     */
    public record CorrectionView(LineView line, String hindrance, boolean movable, WaitingView waiting, boolean own) {}

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance correction(
                CorrectionView correction, String what, String when, String reason, List<Problem> problems);

        private Templates() {}
    }

    @GET
    public TemplateInstance correction(@RestPath UUID line) {
        return page(line, "", "", "", List.of());
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response ask(@RestPath UUID line, MultivaluedMap<String, String> form) {
        Filled filled = Filled.of(form);
        find(line);
        return Acted.then(
                DONE + "asked",
                () -> desk.ask(viewer.getId(), line, time(filled), filled.get("reason")),
                problems -> page(line, filled.get("what"), filled.get("when"), filled.get("reason"), problems));
    }

    @POST
    @Path("confirm")
    public Response confirm(@RestPath UUID line) {
        UUID waiting = waiting(line);
        return Acted.then(
                DONE + "confirmed",
                () -> desk.confirm(viewer.getId(), waiting),
                problems -> page(line, "", "", "", problems));
    }

    @POST
    @Path("decline")
    public Response decline(@RestPath UUID line, @RestForm @DefaultValue("") String reason) {
        UUID waiting = waiting(line);
        return Acted.then(
                DONE + "declined",
                () -> desk.decline(viewer.getId(), waiting, reason),
                problems -> page(line, "", "", reason, problems));
    }

    private Instant time(Filled filled) {
        if (filled.has("what", "never")) {
            return null;
        }
        if (!filled.has("what", "moved")) {
            throw RegisterProblem.with("what", "Choose what is wrong with the line.");
        }
        List<Problem> problems = new ArrayList<>();
        Moment when = Moment.read("when", filled.get("when"), school.zone(), clock.instant(), problems);
        if (!problems.isEmpty()) {
            throw new RegisterProblem(problems);
        }
        return when.instant()
                .orElseThrow(() -> RegisterProblem.with("when", "Give the day and time at which it happened."));
    }

    private TemplateInstance page(UUID line, String what, String when, String reason, List<Problem> problems) {
        PersonRecord.RecordLine record = find(line);
        WaitingView waiting = desk.open().stream()
                .filter(one -> one.said().event().equals(line))
                .findFirst()
                .flatMap(one -> records.line(one.id()).map(own -> WaitingView.of(own, LineView.of(record))))
                .orElse(null);
        String hindrance = desk.event(line)
                .flatMap(event -> desk.hindrance(viewer.getId(), event))
                .orElse("");
        return Templates.correction(
                new CorrectionView(
                        LineView.of(record),
                        hindrance,
                        CorrectionDesk.mayMove(record.said()),
                        waiting,
                        waiting != null && viewer.getId().equals(waiting.by())),
                what,
                when,
                reason,
                problems);
    }

    private UUID waiting(UUID line) {
        find(line);
        return desk.open().stream()
                .filter(one -> one.said().event().equals(line))
                .map(CorrectionDesk.Waiting::id)
                .findFirst()
                .orElse(line);
    }

    private PersonRecord.RecordLine find(UUID line) {
        return records.line(line).orElseThrow(NotFoundException::new);
    }
}
