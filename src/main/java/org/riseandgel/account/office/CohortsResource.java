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
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.riseandgel.account.CohortView;
import org.riseandgel.account.People;
import org.riseandgel.account.Roles;
import org.riseandgel.account.Viewer;
import org.riseandgel.account.office.Enrolment.Part;
import org.riseandgel.platform.web.Problem;
import org.riseandgel.platform.web.SeeOther;

/** Cohorts and who is in them. */
@Path("/office/cohorts")
@RolesAllowed(Roles.OFFICE)
public class CohortsResource {
    private final People people;
    private final Directory directory;
    private final CohortDesk desk;
    private final Viewer viewer;

    CohortsResource(People people, Directory directory, CohortDesk desk, Viewer viewer) {
        this.people = people;
        this.directory = directory;
        this.desk = desk;
        this.viewer = viewer;
    }

    /** What was typed to add members. */
    record MembersForm(String names, String part) {}

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance cohorts(
                List<CohortView> cohorts, List<Directory.ClosedCohort> closed, String name, List<Problem> problems);

        static native TemplateInstance cohort(
                CohortView cohort,
                boolean closed,
                List<Directory.Membership> members,
                List<Directory.Past> past,
                MembersForm form,
                String done,
                List<Problem> problems);

        private Templates() {}
    }

    @GET
    public TemplateInstance cohorts() {
        return Templates.cohorts(people.allCohorts(), directory.closedCohorts(), "", List.of());
    }

    @POST
    public Response add(@RestForm @DefaultValue("") String name) {
        List<Problem> problems = desk.problemsOfName(name);
        return problems.isEmpty()
                ? SeeOther.page("/office/cohorts/" + desk.add(name, viewer.getId()) + "?done=added")
                : Response.status(422)
                        .entity(Templates.cohorts(people.allCohorts(), directory.closedCohorts(), name, problems))
                        .build();
    }

    @GET
    @Path("{id}")
    public TemplateInstance cohort(@RestPath UUID id, @RestQuery @DefaultValue("") String done) {
        return page(find(id), new MembersForm("", Part.LEARNS.word()), done, List.of());
    }

    @POST
    @Path("{id}/members")
    public Response join(
            @RestPath UUID id,
            @RestForm @DefaultValue("") String names,
            @RestForm @DefaultValue("learns") String part) {
        CohortView cohort = find(id);
        List<Problem> problems = desk.join(id, names, partOf(part), viewer.getId());
        return problems.isEmpty()
                ? SeeOther.page("/office/cohorts/" + id + "?done=joined")
                : Response.status(422)
                        .entity(page(cohort, new MembersForm(names, part), "", problems))
                        .build();
    }

    @POST
    @Path("{id}/members/remove")
    public Response leave(@RestPath UUID id, @RestForm UUID person, @RestForm @DefaultValue("learns") String part) {
        find(id);
        if (person == null || !desk.leave(id, person, partOf(part), viewer.getId())) {
            throw new NotFoundException();
        }
        return SeeOther.page("/office/cohorts/" + id + "?done=left");
    }

    @POST
    @Path("{id}/close")
    public Response close(@RestPath UUID id) {
        find(id);
        desk.close(id, true, viewer.getId());
        return SeeOther.page("/office/cohorts/" + id + "?done=closed");
    }

    @POST
    @Path("{id}/open")
    public Response open(@RestPath UUID id) {
        find(id);
        desk.close(id, false, viewer.getId());
        return SeeOther.page("/office/cohorts/" + id + "?done=opened");
    }

    private static Part partOf(String word) {
        return word.equals(Part.TEACHES.word()) ? Part.TEACHES : Part.LEARNS;
    }

    private CohortView find(UUID id) {
        return people.cohort(id).orElseThrow(NotFoundException::new);
    }

    private TemplateInstance page(CohortView cohort, MembersForm form, String done, List<Problem> problems) {
        return Templates.cohort(
                cohort,
                directory.isClosed(cohort.id()),
                directory.membersOf(cohort.id()),
                directory.pastOf(cohort.id()),
                form,
                done,
                problems);
    }
}
