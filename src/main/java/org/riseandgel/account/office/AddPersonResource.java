package org.riseandgel.account.office;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.BeanParam;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.riseandgel.account.CohortView;
import org.riseandgel.account.People;
import org.riseandgel.account.Roles;
import org.riseandgel.account.Viewer;
import org.riseandgel.account.office.OfficeDesk.Added;
import org.riseandgel.account.signin.PasswordCheck;
import org.riseandgel.platform.web.Choice;
import org.riseandgel.platform.web.Problem;

/** Adding one person. */
@Path("/office/people/new")
@RolesAllowed(Roles.OFFICE)
public class AddPersonResource {
    private final Directory directory;
    private final OfficeDesk desk;
    private final People people;
    private final PasswordCheck check;
    private final Viewer viewer;

    AddPersonResource(Directory directory, OfficeDesk desk, People people, PasswordCheck check, Viewer viewer) {
        this.directory = directory;
        this.desk = desk;
        this.people = people;
        this.check = check;
        this.viewer = viewer;
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance add(
                PersonForm form, List<String> roles, List<Choice> cohorts, List<Problem> problems);

        static native TemplateInstance oneTime(Added added, String title);

        private Templates() {}
    }

    @GET
    public TemplateInstance add() {
        return addPage(PersonForm.empty(), List.of());
    }

    @POST
    public Response added(@BeanParam PersonForm sent) {
        PersonForm form = sent.whole();
        List<Problem> problems = problems(form);
        if (!problems.isEmpty()) {
            return Response.status(422).entity(addPage(form, problems)).build();
        }
        Added added = desk.add(form, cohort(form), viewer.getId());
        return Response.ok(oneTimePage(added, "Added")).build();
    }

    static TemplateInstance oneTimePage(Added added, String title) {
        return Templates.oneTime(added, title);
    }

    private List<Problem> problems(PersonForm form) {
        List<Problem> problems = new ArrayList<>(form.problems());
        if (!directory.withSignInNames(List.of(form.normalSignInName())).isEmpty()) {
            problems.add(new Problem(
                    "sign-in-name", "This sign-in name is taken. Add a letter or a digit to tell them apart."));
        }
        if (!form.cohort.isEmpty() && cohort(form).isEmpty()) {
            problems.add(new Problem("cohort", "Pick a cohort from the list, or none."));
        }
        boolean canJoin = Stream.of(Roles.APPRENTICE, Roles.INSTRUCTOR).anyMatch(form.getRoles()::contains);
        if (!form.cohort.isEmpty() && !canJoin) {
            problems.add(new Problem("cohort", "Only apprentices and instructors are in cohorts. Pick none."));
        }
        if (problems.isEmpty()) {
            check.problemWith(viewer.getId(), form.password, "password").ifPresent(problems::add);
        }
        return problems;
    }

    private Optional<UUID> cohort(PersonForm form) {
        return people.allCohorts().stream()
                .map(CohortView::id)
                .filter(id -> id.toString().equals(form.cohort))
                .findFirst();
    }

    private TemplateInstance addPage(PersonForm form, List<Problem> problems) {
        return Templates.add(form, RoleForm.ALL, OfficeChoices.cohorts(people.allCohorts()), problems);
    }
}
