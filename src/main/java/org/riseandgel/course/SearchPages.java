package org.riseandgel.course;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import java.util.List;
import org.jboss.resteasy.reactive.RestQuery;

/** Looking for words in the lessons, for everybody who is signed in. */
@Path("/course/search")
@Authenticated
public class SearchPages {
    private static final int LONGEST = 100;

    private final CourseContent content;

    SearchPages(CourseContent content) {
        this.content = content;
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance search(String asked, List<LessonSearch.Found> found);

        private Templates() {}
    }

    /** Nothing can be asked wrongly: what is too long is cut, and what has no word in it finds nothing. */
    @GET
    public TemplateInstance search(@RestQuery("words") @DefaultValue("") String words) {
        String asked = words.length() > LONGEST ? words.substring(0, LONGEST) : words;
        return Templates.search(asked.strip(), content.current().search().find(asked));
    }
}
