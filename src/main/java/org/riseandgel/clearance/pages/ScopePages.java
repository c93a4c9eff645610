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
import java.util.Set;
import java.util.stream.Collectors;
import org.jboss.resteasy.reactive.RestQuery;
import org.riseandgel.account.Roles;
import org.riseandgel.account.Viewer;
import org.riseandgel.clearance.Register;
import org.riseandgel.clearance.RegisterProblem;
import org.riseandgel.clearance.SettingsDesk;
import org.riseandgel.clearance.TaskWords;
import org.riseandgel.clearance.rule.Form;
import org.riseandgel.clearance.rule.Scope;
import org.riseandgel.clearance.rule.Substance;
import org.riseandgel.clearance.rule.Task;
import org.riseandgel.platform.web.Choice;
import org.riseandgel.platform.web.Problem;

/** What people can be cleared for: scopes are defined and closed, never changed. */
@Path("/register/settings/scopes")
@RolesAllowed(Roles.SAFETY_LEAD)
public class ScopePages {
    private final Register register;
    private final SettingsDesk desk;
    private final Viewer viewer;

    ScopePages(Register register, SettingsDesk desk, Viewer viewer) {
        this.register = register;
        this.desk = desk;
        this.viewer = viewer;
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance scopes(
                List<Scope> scopes,
                List<Choice> closable,
                List<Choice> forms,
                List<Choice> tasks,
                Filled filled,
                String done,
                List<Problem> problems);

        private Templates() {}
    }

    @GET
    public TemplateInstance scopes(@RestQuery @DefaultValue("") String done) {
        return page(Filled.with(Map.of("name", "Sodium hexafluorosilicate", "cas", "16893-85-9")), done, List.of());
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response define(MultivaluedMap<String, String> form) {
        Filled filled = Filled.of(form);
        return Acted.then(
                "/register/settings/scopes?done=defined",
                () -> desk.defineScope(
                        viewer.getId(),
                        need(filled, "title", "Name the scope, such as “Dispersion, foaming room”."),
                        substance(filled),
                        filled.constant("form", Form.class)
                                .orElseThrow(() -> RegisterProblem.with("form", "Choose the form of the salt.")),
                        tasks(filled),
                        need(filled, "room", "Name the room as its door does."),
                        filled.has("respirator", "yes")),
                problems -> page(filled, "", problems));
    }

    @POST
    @Path("close")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response close(MultivaluedMap<String, String> form) {
        Filled filled = Filled.of(form);
        return Acted.then(
                "/register/settings/scopes?done=closed",
                () -> desk.closeScope(viewer.getId(), filled.id("scope"), filled.get("reason")),
                problems -> page(filled, "", problems));
    }

    private TemplateInstance page(Filled filled, String done, List<Problem> problems) {
        List<Scope> scopes = register.scopes();
        return Templates.scopes(
                scopes,
                EvidenceChoices.choose(
                        scopes.stream().map(scope -> new Choice(scope.id().toString(), scope.title()))),
                EvidenceChoices.choose(
                        Arrays.stream(Form.values()).map(form -> new Choice(form.name(), TaskWords.of(form)))),
                Arrays.stream(Task.values())
                        .map(task -> new Choice(task.name(), TaskWords.of(task)))
                        .toList(),
                filled,
                done,
                problems);
    }

    private static Substance substance(Filled filled) {
        String cas = filled.get("cas").strip();
        if (!Substance.isCas(cas)) {
            throw RegisterProblem.with(
                    "cas", "Write the CAS number like 16893-85-9; its last digit checks the others.");
        }
        return new Substance(
                need(filled, "name", "Name the substance as the sheet does."),
                cas,
                need(filled, "supplier", "Name the supplier."));
    }

    private static Set<Task> tasks(Filled filled) {
        Set<Task> tasks = Arrays.stream(Task.values())
                .filter(task -> filled.has("tasks", task.name()))
                .collect(Collectors.toSet());
        if (tasks.isEmpty()) {
            throw RegisterProblem.with("tasks", "Tick at least one task.");
        }
        return tasks;
    }

    static String need(Filled filled, String field, String message) {
        String text = filled.get(field).strip();
        if (text.isEmpty() || text.length() > 200) {
            throw RegisterProblem.with(field, message + " At most 200 characters.");
        }
        return text;
    }
}
