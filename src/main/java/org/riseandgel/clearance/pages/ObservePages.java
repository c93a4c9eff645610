package org.riseandgel.clearance.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;
import org.riseandgel.account.People;
import org.riseandgel.account.PersonView;
import org.riseandgel.account.Roles;
import org.riseandgel.account.Viewer;
import org.riseandgel.clearance.EvidenceDesk;
import org.riseandgel.clearance.Register;
import org.riseandgel.clearance.RegisterDenied;
import org.riseandgel.clearance.RegisterProblem;
import org.riseandgel.clearance.rule.Act;
import org.riseandgel.clearance.rule.Checklist;
import org.riseandgel.clearance.rule.Evidence;
import org.riseandgel.clearance.rule.Scope;
import org.riseandgel.clearance.rule.StepSeen;
import org.riseandgel.platform.school.SchoolSettings;
import org.riseandgel.platform.web.Choice;
import org.riseandgel.platform.web.Problem;
import org.riseandgel.platform.web.SeeOther;

/** A practical, written down at the bench on a phone while it is watched, or afterwards from the paper form. */
@Path("/register/observe/{person}/{scope}/{checklist}")
@RolesAllowed({Roles.INSTRUCTOR, Roles.SAFETY_LEAD})
public class ObservePages {
    private final Register register;
    private final EvidenceDesk desk;
    private final EvidenceForms forms;
    private final EvidenceChoices choices;
    private final People people;
    private final Viewer viewer;
    private final SchoolSettings settings;
    private final Clock clock;

    ObservePages(
            Register register,
            EvidenceDesk desk,
            EvidenceForms forms,
            EvidenceChoices choices,
            People people,
            Viewer viewer,
            SchoolSettings settings,
            Clock clock) {
        this.register = register;
        this.desk = desk;
        this.forms = forms;
        this.choices = choices;
        this.people = people;
        this.viewer = viewer;
        this.settings = settings;
        this.clock = clock;
    }

    /** Who does which practical for which scope, before whom. */
    public record Practical(
            PersonView person, Scope scope, Checklist checklist, List<Choice> observers, List<Choice> hows) {}

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance observe(
                Practical practical, List<Choice> outcomes, Filled filled, List<Problem> problems);

        private Templates() {}
    }

    @GET
    public TemplateInstance form(@RestPath UUID person, @RestPath UUID scope, @RestPath String checklist) {
        Practical practical = find(person, scope, checklist);
        String now = LocalDateTime.ofInstant(clock.instant(), settings.zone())
                .truncatedTo(ChronoUnit.MINUTES)
                .toString();
        return Templates.observe(
                practical,
                outcomes(),
                Filled.with(Map.of(
                        "startedAt",
                        now,
                        "language",
                        "English",
                        "place",
                        practical.scope().room(),
                        "observer",
                        viewer.getId().toString())),
                List.of());
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response write(
            @RestPath UUID person,
            @RestPath UUID scope,
            @RestPath String checklist,
            MultivaluedMap<String, String> form) {
        Practical practical = find(person, scope, checklist);
        Filled filled = Filled.of(form);
        try {
            desk.practical(viewer.getId(), read(practical, filled));
        } catch (RegisterProblem e) {
            return Response.status(422)
                    .entity(Templates.observe(practical, outcomes(), filled, e.problems()))
                    .build();
        } catch (RegisterDenied e) {
            throw new NotFoundException(e);
        }
        return SeeOther.page("/register/people/%s?done=written".formatted(person));
    }

    private EvidenceDesk.Practical read(Practical practical, Filled form) {
        return new EvidenceDesk.Practical(
                practical.person().id(),
                practical.scope().id(),
                form.id("observer"),
                forms.moment(form, "startedAt"),
                forms.moment(form, "endedAt"),
                form.get("place"),
                form.constant("material", Evidence.ObservationRecorded.Material.class)
                        .orElse(null),
                practical.checklist().id(),
                practical.checklist().steps().stream()
                        .map(step -> new StepSeen(
                                step.id(),
                                step.critical(),
                                form.constant("step-" + step.id(), StepSeen.Outcome.class)
                                        .orElse(null)))
                        .toList(),
                form.get("comment"),
                forms.means(practical.person().id(), form));
    }

    private Practical find(UUID person, UUID scope, String checklist) {
        PersonView found = people.find(person).orElseThrow(NotFoundException::new);
        Scope where = register.scopes().stream()
                .filter(one -> one.id().equals(scope))
                .findFirst()
                .orElseThrow(NotFoundException::new);
        Checklist list = register.policy()
                .flatMap(policy -> policy.checklist(checklist))
                .filter(one -> one.isFor(where))
                .orElseThrow(NotFoundException::new);
        return new Practical(found, where, list, choices.qualified(Act.OBSERVE, person), choices.hows(person));
    }

    private static List<Choice> outcomes() {
        return java.util.Arrays.stream(StepSeen.Outcome.values())
                .map(outcome -> new Choice(outcome.name(), RegisterExtensions.outcomeWord(outcome)))
                .toList();
    }
}
