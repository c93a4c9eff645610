package org.riseandgel.practice;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestPath;
import org.riseandgel.account.People;
import org.riseandgel.account.PersonView;
import org.riseandgel.account.Roles;
import org.riseandgel.account.Viewer;
import org.riseandgel.platform.web.Choice;
import org.riseandgel.platform.web.Problem;
import org.riseandgel.platform.web.SeeOther;

/** Which stages are open to a person, and opening one by hand, for whoever teaches that person now. */
@Path("/people/{person}/stages")
@RolesAllowed(Roles.INSTRUCTOR)
public class StagePages {
    private static final int UNPROCESSABLE = 422;
    private static final int SHORTEST_REASON = 3;
    private static final int LONGEST_REASON = 300;

    private final StageDoors doors;
    private final People people;
    private final Viewer viewer;

    StagePages(StageDoors doors, People people, Viewer viewer) {
        this.doors = doors;
        this.people = people;
        this.viewer = viewer;
    }

    /** What was filled in. */
    public record Filled(String stage, String reason) {
        static final Filled NOTHING = new Filled("", "");
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance stages(
                PersonView person,
                List<StageDoors.DoorLine> doors,
                List<Choice> shut,
                Filled filled,
                List<Problem> problems);

        private Templates() {}
    }

    @GET
    public TemplateInstance stages(@RestPath UUID person) {
        return page(taught(person), Filled.NOTHING, List.of());
    }

    @POST
    public Response open(
            @RestPath UUID person,
            @RestForm @DefaultValue("") String stage,
            @RestForm @DefaultValue("") String reason) {
        PersonView learner = taught(person);
        Filled filled = new Filled(stage, reason.strip());
        List<Problem> problems = problems(person, filled);
        if (!problems.isEmpty()) {
            return Response.status(UNPROCESSABLE)
                    .entity(page(learner, filled, problems))
                    .build();
        }
        doors.open(person, stage, viewer.getId(), filled.reason);
        return SeeOther.page("/people/" + person + "/stages");
    }

    private List<Problem> problems(UUID person, Filled filled) {
        List<Problem> problems = new ArrayList<>();
        if (shut(doors.lines(person)).stream()
                .noneMatch(choice -> choice.value().equals(filled.stage))) {
            problems.add(new Problem("stage", "Choose a stage that is not open yet."));
        }
        int length = filled.reason.codePointCount(0, filled.reason.length());
        if (length < SHORTEST_REASON || length > LONGEST_REASON) {
            problems.add(new Problem(
                    "reason",
                    "Write why in 3 to 300 characters, such as “Did this stage at the bench with me in spring”."));
        }
        return problems;
    }

    private TemplateInstance page(PersonView learner, Filled filled, List<Problem> problems) {
        List<StageDoors.DoorLine> lines = doors.lines(learner.id());
        return Templates.stages(learner, lines, shut(lines), filled, problems);
    }

    private static List<Choice> shut(List<StageDoors.DoorLine> lines) {
        return lines.stream()
                .filter(line -> !line.gate().open())
                .map(line -> new Choice(line.gate().stage(), line.number() + " " + line.title()))
                .toList();
    }

    private PersonView taught(UUID person) {
        return Optional.of(person)
                .filter(one -> people.teaches(viewer.getId(), one))
                .flatMap(people::find)
                .orElseThrow(NotFoundException::new);
    }
}
