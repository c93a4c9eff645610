package org.riseandgel.clearance.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
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
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.riseandgel.account.People;
import org.riseandgel.account.PersonView;
import org.riseandgel.account.Roles;
import org.riseandgel.account.Viewer;
import org.riseandgel.clearance.Leaving;
import org.riseandgel.clearance.RegisterProblem;
import org.riseandgel.platform.web.Problem;

/** People who have left: written down, anonymised, held where the law asks for it, and erased when their time is over. */
@Path("/register/leavers")
@RolesAllowed({Roles.SAFETY_LEAD, Roles.OFFICE})
public class LeaverPages {
    private final Leaving leaving;
    private final People people;
    private final Viewer viewer;
    private final PasswordAgain passwordAgain;

    LeaverPages(Leaving leaving, People people, Viewer viewer, PasswordAgain passwordAgain) {
        this.leaving = leaving;
        this.people = people;
        this.viewer = viewer;
        this.passwordAgain = passwordAgain;
    }

    /**
     * How long lines are kept.
     *
     * @param years after the last day; null while no policy says so
     * @param due how many people's time is over
     */
    public record Keeping(Integer years, int due) {}

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance leavers(
                List<Leaving.Leaver> leavers,
                Keeping keeping,
                boolean lead,
                Filled filled,
                String done,
                List<Problem> problems);

        static native TemplateInstance leaver(
                Leaving.Leaver leaver, boolean lead, String reason, String done, List<Problem> problems);

        private Templates() {}
    }

    @GET
    public TemplateInstance leavers(@RestQuery @DefaultValue("") String done) {
        return listPage(Filled.with(Map.of()), done, List.of());
    }

    /** Somebody has left; every clearance goes. */
    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response end(MultivaluedMap<String, String> form) {
        Filled filled = Filled.of(form);
        return Acted.then(
                "/register/leavers?done=left",
                () -> leaving.end(
                        viewer.getId(),
                        people.withSignInName(filled.get("person").strip())
                                .map(PersonView::id)
                                .orElseThrow(() ->
                                        RegisterProblem.with("person", "Nobody in this school has that sign-in name.")),
                        filled.day("on")),
                problems -> listPage(filled, "", problems));
    }

    /** Erases what the lines said about those whose time is over. */
    @POST
    @RolesAllowed(Roles.SAFETY_LEAD)
    @Path("purge")
    public Response purge(
            @RestForm @DefaultValue("") String sure, @RestForm(PasswordAgain.FIELD) @DefaultValue("") String password) {
        return Acted.then(
                "/register/leavers?done=purged",
                () -> {
                    needSure(sure);
                    passwordAgain.need(password);
                    leaving.purge(viewer.getId());
                },
                problems -> listPage(Filled.with(Map.of()), "", problems));
    }

    @GET
    @Path("{person}")
    public TemplateInstance leaver(@RestPath UUID person, @RestQuery @DefaultValue("") String done) {
        return leaverPage(person, "", done, List.of());
    }

    @POST
    @Path("{person}/anonymise")
    public Response anonymise(@RestPath UUID person, @RestForm @DefaultValue("") String sure) {
        find(person);
        return Acted.then(
                "/register/leavers/%s?done=anonymised".formatted(person),
                () -> {
                    needSure(sure);
                    leaving.anonymise(viewer.getId(), person);
                },
                problems -> leaverPage(person, "", "", problems));
    }

    @POST
    @RolesAllowed(Roles.SAFETY_LEAD)
    @Path("{person}/hold")
    public Response hold(
            @RestPath UUID person, @RestForm @DefaultValue("") String on, @RestForm @DefaultValue("") String reason) {
        find(person);
        return Acted.then(
                "/register/leavers/%s?done=%s".formatted(person, "yes".equals(on) ? "held" : "lifted"),
                () -> leaving.hold(viewer.getId(), person, "yes".equals(on), reason),
                problems -> leaverPage(person, reason, "", problems));
    }

    private TemplateInstance listPage(Filled filled, String done, List<Problem> problems) {
        List<Leaving.Leaver> leavers = leaving.leavers();
        int over = (int) leavers.stream().filter(Leaving.Leaver::over).count();
        return Templates.leavers(
                leavers,
                new Keeping(leaving.years().orElse(null), over),
                viewer.isSafetyLead(),
                filled,
                done,
                problems);
    }

    private TemplateInstance leaverPage(UUID person, String reason, String done, List<Problem> problems) {
        return Templates.leaver(find(person), viewer.isSafetyLead(), reason, done, problems);
    }

    private Leaving.Leaver find(UUID person) {
        return leaving.leavers().stream()
                .filter(one -> one.person().equals(person))
                .findFirst()
                .orElseThrow(NotFoundException::new);
    }

    /** What is erased does not come back, so it takes a tick besides the button. */
    private static void needSure(String sure) {
        if (!"yes".equals(sure)) {
            throw RegisterProblem.with("sure", "Tick that you mean it: what is erased does not come back.");
        }
    }
}
