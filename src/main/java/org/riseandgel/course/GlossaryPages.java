package org.riseandgel.course;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;

/** The words of the trade, for everybody who is signed in. */
@Path("/course/glossary")
@Authenticated
public class GlossaryPages {
    private final CourseContent content;

    GlossaryPages(CourseContent content) {
        this.content = content;
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance glossary(GlossaryView view);

        private Templates() {}
    }

    @GET
    public TemplateInstance glossary() {
        return Templates.glossary(GlossaryView.of(content.current()));
    }
}
