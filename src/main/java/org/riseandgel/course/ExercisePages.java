package org.riseandgel.course;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.riseandgel.account.Roles;

/** All exercises with what is behind them, for those who set them. */
@Path("/exercises")
@RolesAllowed({Roles.INSTRUCTOR, Roles.OFFICE})
public class ExercisePages {
    private final CourseContent content;
    private final ExercisePreviews previews;

    ExercisePages(CourseContent content, ExercisePreviews previews) {
        this.content = content;
        this.previews = previews;
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance exercises(ExerciseList list);

        static native TemplateInstance preview(ExercisePreviews.Preview preview);

        private Templates() {}
    }

    @GET
    public TemplateInstance exercises() {
        return Templates.exercises(ExerciseList.of(content.current()));
    }

    /** Ten draws of one exercise. A number that cannot be a first seed begins at the beginning. */
    @GET
    @Path("/{exercise}")
    public TemplateInstance preview(@RestPath String exercise, @RestQuery @DefaultValue("1") String from) {
        return previews.of(exercise, from).map(Templates::preview).orElseThrow(NotFoundException::new);
    }
}
