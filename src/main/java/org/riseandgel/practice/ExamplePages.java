package org.riseandgel.practice;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.Optional;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;
import org.riseandgel.account.Roles;
import org.riseandgel.account.Viewer;
import org.riseandgel.platform.web.SeeOther;

/** Worked examples: an exercise solved from beginning to end, before one's own try or after three that went wrong. */
@Path("/practice/examples")
@RolesAllowed({Roles.APPRENTICE, Roles.INSTRUCTOR})
public class ExamplePages {
    private final Examples examples;
    private final Practice practice;
    private final Viewer viewer;

    ExamplePages(Examples examples, Practice practice, Viewer viewer) {
        this.examples = examples;
        this.practice = practice;
        this.viewer = viewer;
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance example(WorkedExample example);

        static native TemplateInstance lookUp(String exercise, UUID draw);

        private Templates() {}
    }

    @GET
    @Path("/{exercise}")
    public Response example(@RestPath String exercise) {
        Optional<Begin> shut = practice.shutExample(viewer.getId(), exercise);
        if (shut.isPresent()) {
            return SeeOther.page(shut.get().address());
        }
        Optional<UUID> open = examples.toldFirst(viewer.getId(), exercise);
        TemplateInstance page = open.isPresent()
                ? Templates.lookUp(exercise, open.get())
                : examples.of(viewer.getId(), exercise).map(Templates::example).orElseThrow(NotFoundException::new);
        return Response.ok(page).build();
    }

    /** Looks the example up although the exercise is open: its open draw does not count from then on. */
    @POST
    @Path("/{exercise}/look-up")
    public Response lookUp(@RestPath String exercise) {
        examples.lookUp(viewer.getId(), exercise);
        return SeeOther.page(new Begin.Example(exercise).address());
    }

    /** Goes on with fresh numbers, having seen the example. */
    @POST
    @Path("/{exercise}/seen")
    public Response seen(@RestPath String exercise) {
        return practice.afterExample(viewer.getId(), exercise)
                .map(begin -> SeeOther.page(begin.address()))
                .orElseThrow(NotFoundException::new);
    }
}
