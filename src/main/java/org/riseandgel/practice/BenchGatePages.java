package org.riseandgel.practice;

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
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestPath;
import org.riseandgel.account.Roles;
import org.riseandgel.account.Viewer;
import org.riseandgel.clearance.BenchGate;
import org.riseandgel.platform.web.Problem;
import org.riseandgel.platform.web.SeeOther;

/** The gate before an exercise that is done at the bench with the salt itself: the register decides who goes on. */
@Path("/practice/at-the-bench")
@RolesAllowed({Roles.APPRENTICE, Roles.INSTRUCTOR})
public class BenchGatePages {
    private static final int UNPROCESSABLE = 422;

    private final BenchExercises exercises;
    private final Practice practice;
    private final Viewer viewer;

    BenchGatePages(BenchExercises exercises, Practice practice, Viewer viewer) {
        this.exercises = exercises;
        this.practice = practice;
        this.viewer = viewer;
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance gate(
                BenchExercises.AtBench bench, List<BenchGate.Cleared> others, List<Problem> problems);

        private Templates() {}
    }

    @GET
    @Path("/{exercise}")
    public Response gate(@RestPath String exercise) {
        Optional<Begin> shut = practice.shut(viewer.getId(), exercise);
        return shut.isPresent() ? SeeOther.page(shut.get().address()) : page(200, exercise, List.of());
    }

    /** Begins, if the register says so; who may only under supervision says that the supervisor is there. */
    @POST
    @Path("/{exercise}/begin")
    public Response begin(@RestPath String exercise, @RestForm @DefaultValue("") String supervisor) {
        BenchExercises.AtBench bench = exercises.ask(viewer.getId(), exercise).orElseThrow(NotFoundException::new);
        if (bench.told().isSupervised() && !"here".equals(supervisor)) {
            Problem problem = new Problem(
                    "supervisor",
                    "Say that %s is there; without that, do not begin."
                            .formatted(bench.told().supervisor()));
            return page(UNPROCESSABLE, exercise, List.of(problem));
        }
        return practice.startAtBench(viewer.getId(), exercise)
                .map(begin -> SeeOther.page(begin.address()))
                .orElseThrow(NotFoundException::new);
    }

    private Response page(int status, String exercise, List<Problem> problems) {
        BenchExercises.AtBench bench = exercises.ask(viewer.getId(), exercise).orElseThrow(NotFoundException::new);
        List<BenchGate.Cleared> others = bench.told().isCleared() ? List.of() : exercises.whoMay(exercise);
        return Response.status(status)
                .entity(Templates.gate(bench, others, problems))
                .build();
    }

    static String address(String exercise) {
        return "/practice/at-the-bench/" + exercise;
    }
}
