package org.riseandgel.clearance.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jboss.resteasy.reactive.RestQuery;
import org.riseandgel.account.People;
import org.riseandgel.account.Roles;
import org.riseandgel.account.Viewer;
import org.riseandgel.clearance.Register;
import org.riseandgel.clearance.SettingsDesk;
import org.riseandgel.clearance.WhatIf;
import org.riseandgel.platform.web.Choice;
import org.riseandgel.platform.web.Problem;

/** What the school lays down for its register, and the policy: what is in force, what the file proposes, whom it costs what. */
@Path("/register/settings")
@RolesAllowed({Roles.INSTRUCTOR, Roles.SAFETY_LEAD, Roles.OFFICE})
public class SettingsPages {
    private final SettingsDesk desk;
    private final WhatIf whatIf;
    private final Register register;
    private final People people;
    private final Viewer viewer;

    SettingsPages(SettingsDesk desk, WhatIf whatIf, Register register, People people, Viewer viewer) {
        this.desk = desk;
        this.whatIf = whatIf;
        this.register = register;
        this.people = people;
        this.viewer = viewer;
    }

    /** Somebody whose clearance the proposed policy would no longer grant. */
    public record FallenView(UUID person, String name, String scope, LocalDate due) {}

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance settings(
                WhatIf.Preview preview,
                List<FallenView> fallen,
                List<Choice> periods,
                boolean mayPut,
                String done,
                List<Problem> problems);

        private Templates() {}
    }

    @GET
    public TemplateInstance settings(@RestQuery @DefaultValue("") String done) {
        return page(done, List.of());
    }

    /** Puts the file's policy in force. */
    @POST
    @RolesAllowed(Roles.SAFETY_LEAD)
    @Path("policy")
    public Response putInForce() {
        return Acted.then(
                "/register/settings?done=policy",
                () -> desk.putPolicyInForce(viewer.getId()),
                problems -> page("", problems));
    }

    private TemplateInstance page(String done, List<Problem> problems) {
        WhatIf.Preview preview = whatIf.preview();
        Map<UUID, String> names = people.names(
                preview.fallen().stream().map(WhatIf.NoLonger::person).collect(Collectors.toSet()));
        return Templates.settings(
                preview,
                preview.fallen().stream()
                        .map(one -> new FallenView(
                                one.person(),
                                names.getOrDefault(one.person(), "Unknown person"),
                                one.scopeTitle(),
                                one.due()))
                        .toList(),
                register.policy().map(PolicyFacts::of).orElse(List.of()),
                viewer.isSafetyLead(),
                done,
                problems);
    }
}
