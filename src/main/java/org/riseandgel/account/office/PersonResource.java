package org.riseandgel.account.office;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.riseandgel.account.People;
import org.riseandgel.account.PersonView;
import org.riseandgel.account.Roles;
import org.riseandgel.account.Viewer;
import org.riseandgel.account.signin.PasswordCheck;
import org.riseandgel.platform.time.SchoolTime;
import org.riseandgel.platform.web.Problem;
import org.riseandgel.platform.web.SeeOther;

/** One person's account, in the hands of the office. */
@Path("/office/people/{id}")
@RolesAllowed(Roles.OFFICE)
public class PersonResource {
    private final Directory directory;
    private final OfficeDesk desk;
    private final People people;
    private final PasswordCheck check;
    private final SchoolTime time;
    private final Viewer viewer;

    PersonResource(
            Directory directory, OfficeDesk desk, People people, PasswordCheck check, SchoolTime time, Viewer viewer) {
        this.directory = directory;
        this.desk = desk;
        this.people = people;
        this.check = check;
        this.time = time;
        this.viewer = viewer;
    }

    /** What the page shows of a person. */
    record Sheet(PersonView person, String addedOn, String disabledOn, List<Directory.Membership> cohorts) {}

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance person(
                Sheet sheet, List<String> ticked, List<String> roles, String done, List<Problem> problems);

        private Templates() {}
    }

    @GET
    public TemplateInstance person(@RestPath UUID id, @RestQuery @DefaultValue("") String done) {
        PersonView person = find(id);
        return page(person, List.copyOf(person.roles()), done, List.of());
    }

    @POST
    @Path("disable")
    public Response disable(@RestPath UUID id) {
        PersonView person = find(id);
        return desk.disable(person, viewer.getId())
                .map(why -> refused(person, new Problem("disable", why)))
                .orElseGet(() -> done(id, "disabled"));
    }

    @POST
    @Path("enable")
    public Response enable(@RestPath UUID id) {
        desk.enable(find(id), viewer.getId());
        return done(id, "enabled");
    }

    @POST
    @Path("one-time-password")
    public Response oneTimePassword(
            @RestPath UUID id, @RestForm("password-for-one-time") @DefaultValue("") String password) {
        PersonView person = find(id);
        Optional<Problem> wrong = check.problemWith(viewer.getId(), password, "password-for-one-time");
        return wrong.map(problem -> refused(person, problem)).orElseGet(() -> Response.ok(AddPersonResource.oneTimePage(
                        desk.giveOneTime(person, viewer.getId()), "New one-time password"))
                .build());
    }

    @POST
    @Path("roles")
    public Response roles(
            @RestPath UUID id,
            @RestForm("role") List<String> roles,
            @RestForm("password-for-roles") @DefaultValue("") String password) {
        PersonView person = find(id);
        Optional<Problem> wrong = RoleForm.problem(roles)
                .or(() -> check.problemWith(viewer.getId(), password, "password-for-roles"))
                .or(() -> desk.changeRoles(person, roles, viewer.getId()).map(why -> new Problem("role-office", why)));
        return wrong.map(problem -> status422(page(person, roles == null ? List.of() : roles, "", List.of(problem))))
                .orElseGet(() -> done(id, "roles"));
    }

    private PersonView find(UUID id) {
        return people.find(id).orElseThrow(NotFoundException::new);
    }

    private Response refused(PersonView person, Problem problem) {
        return status422(page(person, List.copyOf(person.roles()), "", List.of(problem)));
    }

    private static Response status422(TemplateInstance page) {
        return Response.status(422).entity(page).build();
    }

    private static Response done(UUID id, String what) {
        return SeeOther.page("/office/people/" + id + "?done=" + what);
    }

    private TemplateInstance page(PersonView person, List<String> ticked, String done, List<Problem> problems) {
        Sheet sheet = new Sheet(
                person,
                time.date(person.createdAt()),
                person.isDisabled() ? time.dateAndTime(person.disabledAt()) : "",
                directory.cohortsOf(person.id()));
        return Templates.person(sheet, ticked, RoleForm.ALL, done, problems);
    }
}
