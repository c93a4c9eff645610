package org.riseandgel.course;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.riseandgel.account.Roles;
import org.riseandgel.account.Viewer;
import org.riseandgel.exercise.ContentProblem;
import org.riseandgel.platform.web.SeeOther;

/** The course, its lessons and their recall questions, for everybody who is signed in. */
@Path("/course")
@Authenticated
public class CoursePages {
    private static final int UNPROCESSABLE = 422;

    private final CourseContent content;
    private final CourseViews views;
    private final LessonsRead read;
    private final ReadingPlaces places;
    private final Viewer viewer;

    CoursePages(CourseContent content, CourseViews views, LessonsRead read, ReadingPlaces places, Viewer viewer) {
        this.content = content;
        this.views = views;
        this.read = read;
        this.places = places;
        this.viewer = viewer;
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance course(CourseView view, String done);

        static native TemplateInstance stage(CourseView.StageLine stage);

        static native TemplateInstance lesson(LessonView view);

        static native TemplateInstance questionsAgain(String lesson, String address, QuestionSet set);

        static native TemplateInstance answers(
                String lesson, String address, QuestionSet set, List<QuestionSet.Checked> checked, long right);

        static native TemplateInstance problems(String where, List<ContentProblem> problems);

        private Templates() {}
    }

    @GET
    public TemplateInstance course(@RestQuery @DefaultValue("") String done) {
        return Templates.course(views.course(), done);
    }

    /** What is wrong with the files of the school's own folder, for those who can mend them. */
    @GET
    @Path("problems")
    @RolesAllowed({Roles.INSTRUCTOR, Roles.OFFICE})
    public TemplateInstance problems() {
        return Templates.problems(content.where(), content.problems());
    }

    /** One stage: its lessons, or what it waits for. */
    @GET
    @Path("{stage}")
    public TemplateInstance stage(@RestPath String stage) {
        return views.stage(stage).map(Templates::stage).orElseThrow(NotFoundException::new);
    }

    /** A lesson; of a stage that is not open yet, the page that says what is missing. */
    @GET
    @Path("{stage}/{lesson}")
    public Response lesson(@RestPath String stage, @RestPath String lesson) {
        Content now = content.current();
        Lesson found = find(now, stage, lesson);
        return views.isShut(stage)
                ? whatIsMissing(stage)
                : Response.ok(Templates.lesson(views.lesson(now, found))).build();
    }

    private static Response whatIsMissing(String stage) {
        return SeeOther.page("/course/" + stage);
    }

    /** Checks the answers to a lesson's questions. Nothing is stored, so the page may answer directly. */
    @POST
    @Path("{stage}/{lesson}/{kind: recall|self-check}")
    public Response check(
            @RestPath String stage,
            @RestPath String lesson,
            @RestPath String kind,
            MultivaluedMap<String, String> form) {
        Lesson found = find(content.current(), stage, lesson);
        QuestionKind asked = QuestionKind.byId(kind).orElseThrow(NotFoundException::new);
        List<Question> questions = asked.of(found);
        if (questions.isEmpty()) {
            throw new NotFoundException();
        }
        if (views.isShut(stage)) {
            return whatIsMissing(stage);
        }
        QuestionSet set = QuestionSet.sent(found.key(), asked.id(), asked.title(), questions, first(form));
        String address = found.key().address();
        if (!set.problems().isEmpty()) {
            return Response.status(UNPROCESSABLE)
                    .entity(Templates.questionsAgain(found.title(), address, set))
                    .build();
        }
        List<QuestionSet.Checked> checked = set.checked(questions);
        long right = checked.stream().filter(QuestionSet.Checked::isRight).count();
        return Response.ok(Templates.answers(found.title(), address, set, checked, right))
                .build();
    }

    /** Notes that the lesson was read and goes on to the next. */
    @POST
    @Path("{stage}/{lesson}/read")
    @RolesAllowed(Roles.APPRENTICE)
    public Response markRead(@RestPath String stage, @RestPath String lesson) {
        Content now = content.current();
        Lesson found = find(now, stage, lesson);
        if (views.isShut(stage)) {
            return whatIsMissing(stage);
        }
        read.note(viewer.getId(), found.key());
        return SeeOther.page(now.after(found).map(next -> next.key().address()).orElse("/course?done=read"));
    }

    /**
     * Keeps how far somebody has read. A form goes on to that place, or to the lesson when a changed lesson has it no
     * more; a script asks for no page.
     */
    @POST
    @Path("{stage}/{lesson}/place")
    public Response keepPlace(
            @RestPath String stage,
            @RestPath String lesson,
            @RestForm @DefaultValue("") String anchor,
            @RestForm @DefaultValue("") String quiet) {
        Lesson found = find(content.current(), stage, lesson);
        Optional<ReadingPlaces.Place> place = places.keep(viewer.getId(), found, anchor);
        if (quiet.isEmpty()) {
            return SeeOther.page(
                    place.map(ReadingPlaces.Place::address).orElse(found.key().address()));
        }
        return place.map(kept -> Response.noContent().build()).orElseThrow(NotFoundException::new);
    }

    private static Lesson find(Content now, String stage, String lesson) {
        return now.lesson(stage, lesson).orElseThrow(NotFoundException::new);
    }

    private static Map<String, String> first(MultivaluedMap<String, String> form) {
        Map<String, String> first = new HashMap<>();
        form.forEach((name, values) -> first.put(name, values.isEmpty() ? "" : values.get(0)));
        return first;
    }
}
