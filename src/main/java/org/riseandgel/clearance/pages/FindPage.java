package org.riseandgel.clearance.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import java.util.List;
import org.jboss.resteasy.reactive.RestQuery;
import org.riseandgel.account.People;
import org.riseandgel.account.PersonView;
import org.riseandgel.account.Roles;
import org.riseandgel.platform.web.Problem;

/** Finds anybody of the school by name, also who has no line in the register yet: that is where a clearance begins. */
@Path("/register/people")
@RolesAllowed({Roles.INSTRUCTOR, Roles.SAFETY_LEAD, Roles.OFFICE})
public class FindPage {
    private static final int SHOWN = 30;

    private final People people;

    FindPage(People people) {
        this.people = people;
    }

    /**
     * Whom a name led to.
     *
     * @param more whether there are more people with that in their names than are shown
     */
    public record Found(List<PersonView> people, boolean more) {}

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance find(String name, Found found, List<Problem> problems);

        private Templates() {}
    }

    /** An empty name finds everybody, as far as they are shown. */
    @GET
    public TemplateInstance find(@RestQuery @DefaultValue("") String name) {
        List<PersonView> found = people.named(name.strip(), SHOWN + 1);
        return Templates.find(name, new Found(found.stream().limit(SHOWN).toList(), found.size() > SHOWN), List.of());
    }
}
