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
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;
import org.riseandgel.account.People;
import org.riseandgel.account.PersonView;
import org.riseandgel.account.Roles;
import org.riseandgel.account.Viewer;
import org.riseandgel.clearance.Register;
import org.riseandgel.clearance.RegisterDenied;
import org.riseandgel.clearance.RegisterProblem;
import org.riseandgel.clearance.rule.Checklist;
import org.riseandgel.clearance.rule.Policy;
import org.riseandgel.clearance.rule.Scope;
import org.riseandgel.platform.web.Problem;
import org.riseandgel.platform.web.SeeOther;

/** What is written down about somebody: training, equipment, papers. A practical has a page of its own. */
@Path("/register/evidence/{person}")
@RolesAllowed({Roles.INSTRUCTOR, Roles.SAFETY_LEAD})
public class EvidencePages {
    private final Register register;
    private final EvidenceForms forms;
    private final EvidenceChoices choices;
    private final People people;
    private final Viewer viewer;

    EvidencePages(Register register, EvidenceForms forms, EvidenceChoices choices, People people, Viewer viewer) {
        this.register = register;
        this.forms = forms;
        this.choices = choices;
        this.people = people;
        this.viewer = viewer;
    }

    /** One scope with the practicals that it needs. */
    public record ScopePracticals(Scope scope, List<Checklist> checklists) {}

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance menu(
                PersonView person, List<ScopePracticals> practicals, List<EvidenceKind> kinds);

        static native TemplateInstance write(
                PersonView person,
                EvidenceKind kind,
                EvidenceChoices.Lists lists,
                Filled filled,
                List<Problem> problems);

        private Templates() {}
    }

    @GET
    public TemplateInstance menu(@RestPath UUID person) {
        Policy policy = register.policy().orElse(null);
        return Templates.menu(
                find(person),
                register.scopes().stream()
                        .map(scope ->
                                new ScopePracticals(scope, policy == null ? List.of() : policy.checklistsFor(scope)))
                        .toList(),
                EvidenceKind.open(viewer.isSafetyLead()));
    }

    @GET
    @Path("{what}")
    public TemplateInstance form(@RestPath UUID person, @RestPath String what) {
        return page(
                find(person),
                kind(what),
                Filled.with(Map.of(
                        "language", "English",
                        "trainer", viewer.getId().toString(),
                        "observer", viewer.getId().toString())),
                List.of());
    }

    @POST
    @Path("{what}")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response write(@RestPath UUID person, @RestPath String what, MultivaluedMap<String, String> form) {
        PersonView found = find(person);
        EvidenceKind kind = kind(what);
        Filled filled = Filled.of(form);
        try {
            forms.write(viewer.getId(), person, kind, filled);
        } catch (RegisterProblem e) {
            return Response.status(422)
                    .entity(page(found, kind, filled, e.problems()))
                    .build();
        } catch (RegisterDenied e) {
            throw new NotFoundException(e);
        }
        return SeeOther.page("/register/people/%s?done=written".formatted(person));
    }

    private TemplateInstance page(PersonView person, EvidenceKind kind, Filled filled, List<Problem> problems) {
        return Templates.write(person, kind, choices.about(person.id()), filled, problems);
    }

    private EvidenceKind kind(String what) {
        return EvidenceKind.find(what)
                .filter(EvidenceKind.open(viewer.isSafetyLead())::contains)
                .orElseThrow(NotFoundException::new);
    }

    private PersonView find(UUID person) {
        return people.find(person).orElseThrow(NotFoundException::new);
    }
}
