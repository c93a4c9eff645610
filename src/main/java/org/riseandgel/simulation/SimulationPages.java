package org.riseandgel.simulation;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestPath;
import org.riseandgel.account.Roles;
import org.riseandgel.account.Viewer;
import org.riseandgel.course.Content;
import org.riseandgel.course.CourseContent;
import org.riseandgel.course.Simulation;
import org.riseandgel.course.StageGates;
import org.riseandgel.platform.web.SeeOther;

/** The simulations there are: what each is about, and where it is begun. Of a stage that is shut none can be begun. */
@Path("/simulations")
@RolesAllowed({Roles.APPRENTICE, Roles.INSTRUCTOR})
public class SimulationPages {
    private static final int PAST_SHOWN = 5;

    private final CourseContent content;
    private final Simulations simulations;
    private final RunStore store;
    private final StageGates gates;
    private final Viewer viewer;

    SimulationPages(CourseContent content, Simulations simulations, RunStore store, StageGates gates, Viewer viewer) {
        this.content = content;
        this.simulations = simulations;
        this.store = store;
        this.gates = gates;
        this.viewer = viewer;
    }

    /** A simulation with what its person has played of it; open is null when no run is. */
    public record Sheet(Simulation simulation, UUID open, List<PastRun> past) {}

    /** A run that came to an end. */
    public record PastRun(UUID id, Instant endedAt, long safe, int steps) {}

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance simulations(List<Simulation> simulations);

        static native TemplateInstance simulation(Sheet sheet);

        private Templates() {}
    }

    @GET
    public TemplateInstance simulations() {
        return Templates.simulations(content.current().simulations().stream()
                .filter(one -> shutBy(one).isEmpty())
                .toList());
    }

    @GET
    @Path("/{simulation}")
    public Response simulation(@RestPath String simulation) {
        Simulation found = find(simulation);
        return shutBy(found)
                .orElseGet(() -> Response.ok(Templates.simulation(sheet(found))).build());
    }

    /** Begins it, or goes on with the open run; "afresh" leaves the open run, "timed" looks at the time of each scene. */
    @POST
    @Path("/{simulation}/begin")
    public Response begin(
            @RestPath String simulation,
            @RestForm @DefaultValue("") String timed,
            @RestForm @DefaultValue("") String afresh) {
        Simulation found = find(simulation);
        return shutBy(found)
                .orElseGet(() -> SeeOther.page(RunPages.address(
                        simulations.begin(viewer.getId(), found, !timed.isEmpty(), !afresh.isEmpty()))));
    }

    private Sheet sheet(Simulation simulation) {
        UUID person = viewer.getId();
        return new Sheet(
                simulation,
                store.open(person, simulation.id()).orElse(null),
                store.ended(person, simulation.id(), PAST_SHOWN).stream()
                        .map(run -> new PastRun(
                                run.id(), run.endedAt(), run.safe(), run.steps().size()))
                        .toList());
    }

    private Simulation find(String id) {
        return content.current().simulation(id).orElseThrow(NotFoundException::new);
    }

    /** Where somebody is led to whom its stage is not open; gates are for those who learn and do not teach. */
    private Optional<Response> shutBy(Simulation simulation) {
        Content now = content.current();
        return Optional.of(simulation)
                .filter(one -> viewer.isApprentice() && !viewer.isInstructor())
                .flatMap(one -> now.course().skill(one.skill()))
                .filter(skill -> !gates.isOpen(viewer.getId(), skill.stage()))
                .map(skill -> SeeOther.page("/course/" + skill.stage()));
    }
}
