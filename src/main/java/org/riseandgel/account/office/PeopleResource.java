package org.riseandgel.account.office;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import java.util.List;
import org.jboss.resteasy.reactive.RestQuery;
import org.riseandgel.account.Roles;
import org.riseandgel.platform.web.Choice;
import org.riseandgel.platform.web.PlainText;
import org.riseandgel.platform.web.Problem;

/** The list of people. */
@Path("/office/people")
@RolesAllowed(Roles.OFFICE)
public class PeopleResource {
    private final Directory directory;

    PeopleResource(Directory directory) {
        this.directory = directory;
    }

    /** What the list was asked for. */
    record Search(String text, String role, String state) {}

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance people(
                List<Directory.Line> lines,
                Search search,
                List<Choice> roles,
                List<Choice> states,
                boolean more,
                List<Problem> problems);

        private Templates() {}
    }

    @GET
    public TemplateInstance people(
            @RestQuery("q") @DefaultValue("") String text,
            @RestQuery @DefaultValue("") String role,
            @RestQuery @DefaultValue("") String state) {
        String line = PlainText.tidy(text);
        String asked = PlainText.isLine(line, PersonForm.LONGEST_NAME) ? line : "";
        Search search = new Search(
                asked, RoleForm.ALL.contains(role) ? role : "", state.equals("on") || state.equals("off") ? state : "");
        List<Directory.Line> found = directory.search(search.text(), search.role(), search.state());
        return Templates.people(
                found.stream().limit(Directory.MOST).toList(),
                search,
                OfficeChoices.roles(),
                OfficeChoices.states(),
                found.size() > Directory.MOST,
                List.of());
    }
}
