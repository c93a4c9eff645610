package org.riseandgel.account.office;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.io.IOException;
import java.nio.file.Files;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.hibernate.exception.ConstraintViolationException;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import org.riseandgel.account.Roles;
import org.riseandgel.account.Viewer;
import org.riseandgel.account.office.OfficeDesk.Added;
import org.riseandgel.account.signin.PasswordCheck;
import org.riseandgel.platform.web.Problem;

/** Adding many people from a list: first a preview that changes nothing, then all of it at once. */
@Path("/office/people/import")
@RolesAllowed(Roles.OFFICE)
public class ImportResource {
    private final RosterImport roster;
    private final PasswordCheck check;
    private final Viewer viewer;

    ImportResource(RosterImport roster, PasswordCheck check, Viewer viewer) {
        this.roster = roster;
        this.check = check;
        this.viewer = viewer;
    }

    /** How many people a preview writes out; of more it says how many there are. */
    private static final int SHOWN = 500;

    /**
     * What a preview shows of a list.
     *
     * @param shown the first people of the list
     */
    record Preview(int people, List<Roster.Entry> shown, List<Count> counts) {
        static Preview of(Roster roster) {
            List<Roster.Entry> all = roster.entries();
            Map<Group, Long> counted = all.stream()
                    .collect(Collectors.groupingBy(
                            entry -> new Group(entry.cohort(), entry.role()),
                            () -> new TreeMap<>(
                                    Comparator.comparing(Group::cohort).thenComparing(Group::role)),
                            Collectors.counting()));
            return new Preview(
                    all.size(),
                    all.subList(0, Math.min(SHOWN, all.size())),
                    counted.entrySet().stream()
                            .map(one -> new Count(
                                    one.getKey().cohort(), one.getKey().role(), one.getValue()))
                            .toList());
        }

        /** How many people are not written out. */
        public int more() {
            return people - shown.size();
        }
    }

    private record Group(String cohort, String role) {}

    /** How many people of a list have a role in a cohort. */
    record Count(String cohort, String role, long people) {}

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance list(String text, List<Problem> problems);

        static native TemplateInstance preview(
                Preview preview, List<String> newCohorts, String text, List<Problem> problems);

        static native TemplateInstance slips(List<Added> added);

        private Templates() {}
    }

    @GET
    public TemplateInstance list() {
        return Templates.list("", List.of());
    }

    @POST
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    public Response preview(@RestForm @DefaultValue("") String text, @RestForm("file") FileUpload file)
            throws IOException {
        if (text.isBlank() && file != null && file.size() > RosterReader.MOST_BYTES) {
            return faulty("", Roster.wrong(0, RosterReader.TOO_LARGE));
        }
        Optional<String> list = text.isBlank() && file != null && file.size() > 0
                ? RosterReader.text(Files.readAllBytes(file.uploadedFile()))
                : Optional.of(text);
        if (list.isEmpty()) {
            return faulty("", Roster.wrong(0, "The file is not UTF-8 text. Save it as CSV UTF-8 and choose it again."));
        }
        Roster read = roster.read(list.get());
        return read.isRight() ? previewPage(200, read, list.get(), List.of()) : faulty(list.get(), read);
    }

    @POST
    @Path("confirm")
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    public Response confirm(@RestForm @DefaultValue("") String text, @RestForm @DefaultValue("") String password) {
        Roster read = roster.read(text);
        if (!read.isRight()) {
            return faulty(text, read);
        }
        Optional<Problem> wrong = check.problemWith(viewer.getId(), password, "password");
        return wrong.map(problem -> previewPage(422, read, text, List.of(problem)))
                .orElseGet(() -> take(read, text));
    }

    /** Takes the list in. Where somebody else added one of its names since it was read, it is read once more. */
    private Response take(Roster read, String text) {
        try {
            return slips(read);
        } catch (ConstraintViolationException addedMeanwhile) {
            Roster again = roster.read(text);
            return again.isRight() ? slips(again) : faulty(text, again);
        }
    }

    private Response slips(Roster read) {
        return Response.ok(Templates.slips(roster.take(read, viewer.getId()))).build();
    }

    private Response previewPage(int status, Roster read, String text, List<Problem> problems) {
        return Response.status(status)
                .entity(Templates.preview(Preview.of(read), roster.newCohorts(read), text, problems))
                .build();
    }

    private static Response faulty(String text, Roster read) {
        List<Problem> problems = read.faults().stream()
                .map(f -> new Problem("text", f.line() == 0 ? f.message() : "Line " + f.line() + ": " + f.message()))
                .toList();
        return Response.status(422).entity(Templates.list(text, problems)).build();
    }
}
