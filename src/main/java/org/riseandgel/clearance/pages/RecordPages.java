package org.riseandgel.clearance.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestQuery;
import org.riseandgel.account.Viewer;
import org.riseandgel.clearance.Decisions;
import org.riseandgel.clearance.EvidenceDesk;
import org.riseandgel.clearance.PersonRecord;
import org.riseandgel.clearance.Register;
import org.riseandgel.clearance.RegisterProblem;
import org.riseandgel.clearance.Reminders;
import org.riseandgel.clearance.rule.Evidence;
import org.riseandgel.clearance.rule.Scope;
import org.riseandgel.clearance.rule.Setting;
import org.riseandgel.platform.web.Problem;
import org.riseandgel.platform.web.SeeOther;

/** The own record in the register: everybody reads all that is written about them, takes it along, and may appeal. */
@Path("/register/mine")
@Authenticated
public class RecordPages {
    private static final int UNPROCESSABLE = 422;

    private final Register register;
    private final Reminders reminders;
    private final PersonRecord records;
    private final Decisions decisions;
    private final EvidenceDesk desk;
    private final OwnRecordFile file;
    private final Viewer viewer;

    RecordPages(
            Register register,
            Reminders reminders,
            PersonRecord records,
            Decisions decisions,
            EvidenceDesk desk,
            OwnRecordFile file,
            Viewer viewer) {
        this.register = register;
        this.reminders = reminders;
        this.records = records;
        this.decisions = decisions;
        this.desk = desk;
        this.file = file;
        this.viewer = viewer;
    }

    /** The current sheet of a substance that somebody can be cleared for, and whether its reader has read it. */
    public record SheetView(Setting.SdsFiled sheet, boolean read) {}

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance mine(
                List<Register.BoardRow> standings,
                List<Register.Coming> coming,
                List<LineView> lines,
                List<OwnPractical> practicals,
                List<SheetView> sheets,
                String against,
                String reason,
                String done,
                List<Problem> problems);

        private Templates() {}
    }

    @GET
    public TemplateInstance mine(@RestQuery @DefaultValue("") String done) {
        return page("", "", done, List.of());
    }

    /** Everything on record about oneself, with names, free texts and the questions at doors, one JSON object a line. */
    @GET
    @Path("lines")
    public Response lines() {
        return Response.ok(file.of(viewer.getId()))
                .header(HttpHeaders.CONTENT_TYPE, "application/jsonl; charset=UTF-8")
                .header(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"own-record.jsonl\"")
                .build();
    }

    @POST
    @Path("appeals")
    public Response appeal(@RestForm @DefaultValue("") String against, @RestForm @DefaultValue("") String reason) {
        try {
            decisions.appeal(viewer.getId(), id(against).orElse(null), reason);
        } catch (RegisterProblem e) {
            return Response.status(UNPROCESSABLE)
                    .entity(page(against, reason, "", e.problems()))
                    .build();
        }
        return SeeOther.page("/register/mine?done=appealed");
    }

    /** Whoever was watched says that what the observer wrote was seen. */
    @POST
    @Path("practicals")
    public Response acknowledge(@RestForm @DefaultValue("") String practical) {
        try {
            desk.acknowledge(viewer.getId(), id(practical).orElse(null));
        } catch (RegisterProblem e) {
            return Response.status(UNPROCESSABLE)
                    .entity(page("", "", "", e.problems()))
                    .build();
        }
        return SeeOther.page("/register/mine?done=acknowledged");
    }

    private TemplateInstance page(String against, String reason, String done, List<Problem> problems) {
        List<PersonRecord.RecordLine> lines = records.of(viewer.getId());
        return Templates.mine(
                register.standings(viewer.getId()),
                reminders.before(viewer.getId(), LocalDate.MAX),
                lines.stream().map(LineView::of).toList(),
                OwnPractical.waiting(lines, register.policy()),
                sheets(lines),
                against,
                reason,
                done,
                problems);
    }

    private List<SheetView> sheets(List<PersonRecord.RecordLine> lines) {
        Set<UUID> read = lines.stream()
                .map(PersonRecord.RecordLine::said)
                .filter(Evidence.SdsRead.class::isInstance)
                .map(said -> ((Evidence.SdsRead) said).revision())
                .collect(Collectors.toSet());
        return register.scopes().stream()
                .map(Scope::substance)
                .distinct()
                .flatMap(substance -> register.sheet(substance).stream())
                .map(sheet -> new SheetView(sheet, read.contains(sheet.revision())))
                .toList();
    }

    private static Optional<UUID> id(String text) {
        try {
            return Optional.of(UUID.fromString(text));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }
}
