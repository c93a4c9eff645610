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
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.riseandgel.account.Roles;
import org.riseandgel.account.Viewer;
import org.riseandgel.course.CourseContent;
import org.riseandgel.course.Simulation;
import org.riseandgel.platform.web.Problem;
import org.riseandgel.platform.web.SeeOther;

/** One run of a simulation: the scene that is asked now, what a choice led to, and the way as a whole at the end. */
@Path("/simulations/runs")
@RolesAllowed({Roles.APPRENTICE, Roles.INSTRUCTOR})
public class RunPages {
    private static final int UNPROCESSABLE = 422;

    private final CourseContent content;
    private final Simulations simulations;
    private final RunStore store;
    private final Viewer viewer;

    RunPages(CourseContent content, Simulations simulations, RunStore store, Viewer viewer) {
        this.content = content;
        this.simulations = simulations;
        this.store = store;
        this.viewer = viewer;
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance scene(Run run, Simulation.Scene scene, List<Problem> problems);

        static native TemplateInstance consequence(Run run, Run.Step step);

        static native TemplateInstance ended(Run run, Simulation.Scene scene);

        static native TemplateInstance gone(Run run);

        private Templates() {}
    }

    /** The scene that is asked now, the consequence of an earlier choice, or the end. */
    @GET
    @Path("/{run}")
    public TemplateInstance run(@RestPath UUID run, @RestQuery Integer step) {
        Run found = find(run);
        if (step != null) {
            return found.step(step)
                    .map(one -> Templates.consequence(found, one))
                    .orElseThrow(NotFoundException::new);
        }
        Simulation.Scene scene = scene(found).orElse(null);
        if (!found.isOpen()) {
            return Templates.ended(found, scene);
        }
        return scene == null ? Templates.gone(found) : Templates.scene(found, scene, List.of());
    }

    /** Makes a choice. Whatever is pressed or sent twice, a scene has one stored choice: the first one. */
    @POST
    @Path("/{run}/choose")
    public Response choose(
            @RestPath UUID run, @RestForm @DefaultValue("0") int step, @RestForm @DefaultValue("") String choice) {
        Simulations.Chosen chosen =
                simulations.choose(viewer.getId(), run, step, choice).orElseThrow(NotFoundException::new);
        if (chosen instanceof Simulations.Chosen.Unknown) {
            Run found = find(run);
            Problem problem = new Problem("choice", "Choose what you would do.");
            return Response.status(UNPROCESSABLE)
                    .entity(Templates.scene(found, scene(found).orElseThrow(), List.of(problem)))
                    .build();
        }
        return SeeOther.page(
                chosen instanceof Simulations.Chosen.Stored stored
                        ? address(run) + "?step=" + stored.step()
                        : address(run));
    }

    /** Goes on to the next scene, where time is looked at. */
    @POST
    @Path("/{run}/go-on")
    public Response goOn(@RestPath UUID run) {
        find(run);
        simulations.goOn(viewer.getId(), run);
        return SeeOther.page(address(run));
    }

    private Optional<Simulation.Scene> scene(Run run) {
        return content.current().simulation(run.simulation()).flatMap(run::at);
    }

    private Run find(UUID run) {
        return store.load(viewer.getId(), run).orElseThrow(NotFoundException::new);
    }

    static String address(UUID run) {
        return "/simulations/runs/" + run;
    }
}
