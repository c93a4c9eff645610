package org.riseandgel.clearance.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestQuery;
import org.riseandgel.account.People;
import org.riseandgel.account.PersonView;
import org.riseandgel.account.Roles;
import org.riseandgel.account.Viewer;
import org.riseandgel.clearance.Register;
import org.riseandgel.clearance.RegisterProblem;
import org.riseandgel.clearance.SettingsDesk;
import org.riseandgel.clearance.rule.Act;
import org.riseandgel.clearance.rule.DeltaKind;
import org.riseandgel.clearance.rule.Scope;
import org.riseandgel.platform.web.Choice;
import org.riseandgel.platform.web.Problem;

/** Who may train, observe and decide, and the additional trainings that are asked for. */
@Path("/register/settings/people")
@RolesAllowed({Roles.INSTRUCTOR, Roles.SAFETY_LEAD, Roles.OFFICE})
public class QualificationPages {
    private final Register register;
    private final SettingsDesk desk;
    private final People people;
    private final Viewer viewer;

    QualificationPages(Register register, SettingsDesk desk, People people, Viewer viewer) {
        this.register = register;
        this.desk = desk;
        this.people = people;
        this.viewer = viewer;
    }

    /** What the page's forms let one choose. */
    public record Lists(List<Choice> acts, List<Choice> given, List<Choice> kinds, List<Choice> scopes) {}

    /** Which of the page's forms somebody may use. */
    public record May(boolean give, boolean end) {}

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance people(
                List<Register.Qualified> qualified,
                Lists lists,
                May may,
                Filled filled,
                String done,
                List<Problem> problems);

        private Templates() {}
    }

    @GET
    public TemplateInstance people(@RestQuery @DefaultValue("") String done) {
        return page(Filled.with(Map.of()), done, List.of());
    }

    @POST
    @RolesAllowed({Roles.SAFETY_LEAD, Roles.OFFICE})
    @Path("give")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response give(MultivaluedMap<String, String> form) {
        Filled filled = Filled.of(form);
        return Acted.then(
                "/register/settings/people?done=given",
                () -> desk.qualify(
                        viewer.getId(),
                        named(filled, "person"),
                        filled.constant("act", Act.class).orElse(null),
                        filled.day("through"),
                        filled.get("basis")),
                problems -> page(filled, "", problems));
    }

    @POST
    @RolesAllowed({Roles.INSTRUCTOR, Roles.SAFETY_LEAD})
    @Path("end")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response end(MultivaluedMap<String, String> form) {
        Filled filled = Filled.of(form);
        return Acted.then(
                "/register/settings/people?done=ended",
                () -> {
                    Register.Qualified which = register.qualified().stream()
                            .filter(one -> value(one).equals(filled.get("which")))
                            .findFirst()
                            .orElseThrow(() -> RegisterProblem.with("which", "Choose what ends."));
                    desk.endQualification(
                            viewer.getId(),
                            which.person(),
                            which.act(),
                            filled.has("cause", "yes"),
                            filled.get("reason"));
                },
                problems -> page(filled, "", problems));
    }

    /** Asks one person or everybody for an additional training. */
    @POST
    @RolesAllowed({Roles.INSTRUCTOR, Roles.SAFETY_LEAD})
    @Path("training")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response training(MultivaluedMap<String, String> form) {
        Filled filled = Filled.of(form);
        return Acted.then(
                "/register/settings/people?done=asked",
                () -> desk.askDelta(
                        viewer.getId(),
                        filled.get("who").isBlank() ? null : named(filled, "who"),
                        filled.id("scope"),
                        filled.constant("kind", DeltaKind.class).orElse(null),
                        filled.day("due"),
                        filled.get("what")),
                problems -> page(filled, "", problems));
    }

    private TemplateInstance page(Filled filled, String done, List<Problem> problems) {
        List<Register.Qualified> qualified = register.qualified();
        List<Choice> scopes = new java.util.ArrayList<>(List.of(new Choice("", "Every scope")));
        register.scopes().stream().map(QualificationPages::choice).forEach(scopes::add);
        return Templates.people(
                qualified,
                new Lists(
                        EvidenceChoices.choose(Arrays.stream(Act.values())
                                .map(act -> new Choice(act.name(), RegisterExtensions.actWord(act)))),
                        EvidenceChoices.choose(qualified.stream()
                                .map(one -> new Choice(
                                        value(one), one.name() + ": " + RegisterExtensions.actWord(one.act())))),
                        EvidenceChoices.choose(Arrays.stream(DeltaKind.values())
                                .map(kind -> new Choice(kind.name(), EvidenceChoices.of(kind)))),
                        scopes),
                new May(viewer.isSafetyLead() || viewer.isOffice(), viewer.isSafetyLead() || viewer.isInstructor()),
                filled,
                done,
                problems);
    }

    private UUID named(Filled filled, String field) {
        return people.withSignInName(filled.get(field).strip())
                .map(PersonView::id)
                .orElseThrow(() -> RegisterProblem.with(field, "Nobody in this school has that sign-in name."));
    }

    private static Choice choice(Scope scope) {
        return new Choice(scope.id().toString(), scope.title());
    }

    private static String value(Register.Qualified one) {
        return one.person() + " " + one.act();
    }
}
