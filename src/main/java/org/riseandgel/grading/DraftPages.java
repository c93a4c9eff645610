package org.riseandgel.grading;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.BeanParam;
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
import org.riseandgel.account.Roles;
import org.riseandgel.account.Viewer;
import org.riseandgel.course.CourseContent;
import org.riseandgel.exercise.NumericTemplate;
import org.riseandgel.platform.school.SchoolSettings;
import org.riseandgel.platform.web.Problem;
import org.riseandgel.platform.web.SeeOther;

/** Drafting a graded set: saving it, narrowing ranges, looking at draws and publishing. */
@Path("/graded-sets/{set}/draft")
@RolesAllowed({Roles.INSTRUCTOR, Roles.OFFICE})
public class DraftPages {
    private static final int CONFLICT = 409;
    private static final int WRONG = 422;

    private final GradingAccess access;
    private final SetDesk desk;
    private final SetEditor editor;
    private final Previews previews;
    private final CourseContent content;
    private final SchoolSettings school;
    private final Viewer viewer;

    DraftPages(
            GradingAccess access,
            SetDesk desk,
            SetEditor editor,
            Previews previews,
            CourseContent content,
            SchoolSettings school,
            Viewer viewer) {
        this.access = access;
        this.desk = desk;
        this.editor = editor;
        this.previews = previews;
        this.content = content;
        this.school = school;
        this.viewer = viewer;
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance draft(SetEditor.Editor editor, List<Problem> problems);

        static native TemplateInstance ranges(
                GradedSet set,
                UUID line,
                String title,
                List<RangesReader.Row> rows,
                boolean moved,
                List<Problem> problems);

        static native TemplateInstance preview(
                GradedSet set, String cohort, List<Previews.Draw> draws, List<Problem> toMend, boolean moved);

        private Templates() {}
    }

    @GET
    public Response draft(@RestPath UUID set) {
        GradedSet found = find(set);
        return found.isDraft()
                ? page(200, editor(found, SetForm.of(found), false), List.of())
                : SeeOther.page("/graded-sets/" + set);
    }

    @POST
    public Response save(@RestPath UUID set, @BeanParam SetForm sent) {
        GradedSet stored = find(set);
        SetForm form = sent.whole();
        SetDesk.Done done = desk.save(stored, form, access.cohorts(), viewer.getId());
        if (done instanceof SetDesk.Done.Wrong wrong) {
            return page(WRONG, editor(stored, form, false), wrong.problems());
        }
        if (done instanceof SetDesk.Done.Moved && !isSecondPress(find(set), form)) {
            return page(CONFLICT, editor(find(set), form, true), List.of());
        }
        // A set that was moved to a cohort of one's own can still be seen; to no other can it be moved.
        return SeeOther.page("/graded-sets/" + set + "/draft");
    }

    /** Whether this is what the same person has saved just now, by another press of the same button. */
    private boolean isSecondPress(GradedSet now, SetForm form) {
        return now.isDraft()
                && viewer.getId().equals(now.changedBy())
                && form.seenRevision() == now.revision() - 1
                && form.isSavedIn(now);
    }

    @GET
    @Path("/lines/{line}")
    public TemplateInstance ranges(@RestPath UUID set, @RestPath UUID line) {
        GradedSet found = find(set);
        Line asked = line(found, line);
        NumericTemplate template = template(asked);
        List<RangesReader.Row> rows = RangesReader.rows(template, Narrowing.parse(asked.ranges()));
        return Templates.ranges(found, line, template.title(), rows, false, List.of());
    }

    @POST
    @Path("/lines/{line}")
    public Response narrow(
            @RestPath UUID set,
            @RestPath UUID line,
            @RestForm @DefaultValue("0") int revision,
            @RestForm List<String> from,
            @RestForm List<String> to) {
        GradedSet found = find(set);
        Line asked = line(found, line);
        NumericTemplate template = template(asked);
        List<RangesReader.Row> rows = RangesReader.typed(template, from, to);
        if (revision != found.revision() || !found.isDraft()) {
            return Response.status(CONFLICT)
                    .entity(Templates.ranges(found, line, template.title(), rows, true, List.of()))
                    .build();
        }
        RangesReader.Read read = RangesReader.read(template, rows, school.decimalMark());
        List<Problem> problems = read.problems().isEmpty()
                ? PublishCheck.drawProblem(template, read.ranges(), content.exercises()).stream()
                        .map(why -> new Problem("from-" + rows.get(0).name(), why))
                        .toList()
                : read.problems();
        if (!problems.isEmpty()) {
            return Response.status(WRONG)
                    .entity(Templates.ranges(found, line, template.title(), rows, false, problems))
                    .build();
        }
        SetDesk.Done done = desk.narrow(found, asked, read.ranges().text(), viewer.getId());
        return done instanceof SetDesk.Done.Stored
                ? SeeOther.page("/graded-sets/" + set + "/draft")
                : Response.status(CONFLICT)
                        .entity(Templates.ranges(find(set), line, template.title(), rows, true, List.of()))
                        .build();
    }

    /** Five draws with their answers, and the way out. */
    @GET
    @Path("/preview")
    public TemplateInstance preview(@RestPath UUID set) {
        return preview(find(set), false);
    }

    @POST
    @Path("/publish")
    public Response publish(@RestPath UUID set, @RestForm @DefaultValue("0") int revision) {
        GradedSet found = find(set);
        SetDesk.Done done = desk.publish(found, revision, viewer.getId());
        if (done instanceof SetDesk.Done.Wrong) {
            return Response.status(WRONG).entity(preview(found, false)).build();
        }
        if (done instanceof SetDesk.Done.Moved && find(set).isDraft()) {
            return Response.status(CONFLICT).entity(preview(find(set), true)).build();
        }
        return SeeOther.page("/graded-sets/" + set);
    }

    /** Puts a draft away that is not wanted any more, unless somebody saved or published it meanwhile. */
    @POST
    @Path("/discard")
    public Response discard(@RestPath UUID set, @RestForm @DefaultValue("0") int revision) {
        GradedSet found = find(set);
        if (found.isDraft() && !desk.discard(found, revision, viewer.getId())) {
            GradedSet now = find(set);
            return page(CONFLICT, editor(now, SetForm.of(now), true), List.of());
        }
        return SeeOther.page(find(set).isDropped() ? "/graded-sets?done=discarded" : "/graded-sets/" + set);
    }

    private TemplateInstance preview(GradedSet set, boolean moved) {
        String cohort = access.set(set.id())
                .orElseThrow(NotFoundException::new)
                .cohort()
                .name();
        List<Problem> toMend = set.isDraft() ? desk.toMend(set) : List.of();
        return Templates.preview(set, cohort, previews.of(set), toMend, moved);
    }

    private GradedSet find(UUID set) {
        return access.set(set).map(GradingAccess.Seen::set).orElseThrow(NotFoundException::new);
    }

    private static Line line(GradedSet set, UUID line) {
        return set.lines().stream()
                .filter(one -> one.id().equals(line))
                .findFirst()
                .orElseThrow(NotFoundException::new);
    }

    /** The numeric exercise of a line; others have nothing to narrow. */
    private NumericTemplate template(Line line) {
        return Optional.ofNullable(line.exercise())
                .flatMap(id -> content.exercises().find(id))
                .filter(NumericTemplate.class::isInstance)
                .map(NumericTemplate.class::cast)
                .orElseThrow(NotFoundException::new);
    }

    private SetEditor.Editor editor(GradedSet set, SetForm form, boolean moved) {
        return editor.editor(set, form, access.cohorts(), moved);
    }

    private static Response page(int status, SetEditor.Editor editor, List<Problem> problems) {
        return Response.status(status).entity(Templates.draft(editor, problems)).build();
    }
}
