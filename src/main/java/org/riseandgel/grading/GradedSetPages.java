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
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.riseandgel.account.CohortView;
import org.riseandgel.account.Roles;
import org.riseandgel.account.Viewer;
import org.riseandgel.platform.web.Choice;
import org.riseandgel.platform.web.Problem;
import org.riseandgel.platform.web.SeeOther;

/** The graded sets of the cohorts that whoever looks may see. */
@Path("/graded-sets")
@RolesAllowed({Roles.INSTRUCTOR, Roles.OFFICE})
public class GradedSetPages {
    private static final int WRONG = 422;

    private final GradingAccess access;
    private final SetDesk desk;
    private final SetLists lists;
    private final Results results;
    private final Viewer viewer;

    GradedSetPages(GradingAccess access, SetDesk desk, SetLists lists, Results results, Viewer viewer) {
        this.access = access;
        this.desk = desk;
        this.lists = lists;
        this.results = results;
        this.viewer = viewer;
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance sets(List<SetLists.Group> groups, String done);

        static native TemplateInstance fresh(SetForm form, List<Choice> cohorts, List<Problem> problems);

        static native TemplateInstance set(
                Results.View view, List<Choice> cohorts, ManageForm form, String done, List<Problem> problems);

        private Templates() {}
    }

    @GET
    public TemplateInstance sets(@RestQuery @DefaultValue("") String done) {
        return Templates.sets(lists.groups(), done);
    }

    @GET
    @Path("/new")
    public TemplateInstance fresh(@RestQuery @DefaultValue("") String cohort) {
        SetForm form = SetForm.empty();
        form.cohort = cohort;
        return Templates.fresh(form, cohorts(), List.of());
    }

    /** Makes a draft; the lines of the set that is named come along. */
    @POST
    public Response add(@BeanParam SetForm sent, @RestForm @DefaultValue("") String from) {
        SetForm form = sent.whole();
        List<Line> lines =
                from.isEmpty() ? List.of() : find(setNamed(from)).set().lines();
        SetDesk.Done done = desk.add(form, lines, access.cohorts(), viewer.getId());
        if (done instanceof SetDesk.Done.Wrong wrong) {
            return Response.status(WRONG)
                    .entity(Templates.fresh(form, cohorts(), wrong.problems()))
                    .build();
        }
        return SeeOther.page("/graded-sets/" + ((SetDesk.Done.Stored) done).set() + "/draft");
    }

    /** The results of a set; a draft is shown to be drafted. */
    @GET
    @Path("/{set}")
    public Response set(@RestPath UUID set, @RestQuery @DefaultValue("") String done) {
        GradingAccess.Seen seen = find(set);
        return seen.set().isDraft()
                ? SeeOther.page("/graded-sets/" + set + "/draft")
                : page(200, seen, ManageForm.empty(), done, List.of());
    }

    @POST
    @Path("/{set}/extension")
    public Response extend(@RestPath UUID set, @BeanParam ManageForm sent) {
        GradingAccess.Seen seen = find(set);
        if (seen.set().isDraft()) {
            return SeeOther.page("/graded-sets/" + set + "/draft");
        }
        ManageForm form = sent.whole();
        List<Problem> problems = results.extend(seen.set(), form, viewer.getId());
        return problems.isEmpty()
                ? SeeOther.page("/graded-sets/" + set + "?done=extended")
                : page(WRONG, seen, form, "", problems);
    }

    @POST
    @Path("/{set}/withdraw")
    public Response withdraw(@RestPath UUID set, @BeanParam ManageForm sent) {
        GradingAccess.Seen seen = find(set);
        if (seen.set().isDraft()) {
            return SeeOther.page("/graded-sets/" + set + "/draft");
        }
        ManageForm form = sent.whole();
        List<Problem> problems = Reasons.problems("withdraw-reason", form.withdrawReason);
        if (!problems.isEmpty()) {
            return page(WRONG, seen, form, "", problems);
        }
        desk.withdraw(seen.set(), form.withdrawReason.strip(), viewer.getId());
        return SeeOther.page("/graded-sets/" + set + "?done=withdrawn");
    }

    @POST
    @Path("/{set}/copy")
    public Response copy(@RestPath UUID set, @BeanParam ManageForm sent) {
        GradingAccess.Seen seen = find(set);
        ManageForm form = sent.whole();
        return access.cohorts().stream()
                .map(CohortView::id)
                .filter(cohort -> cohort.toString().equals(form.copyCohort))
                .findFirst()
                .map(cohort ->
                        SeeOther.page("/graded-sets/" + desk.copy(seen.set(), cohort, viewer.getId()) + "/draft"))
                .orElseGet(() -> page(
                        WRONG,
                        seen,
                        form,
                        "",
                        List.of(new Problem("copy-cohort", "Pick the cohort that the copy is for from the list."))));
    }

    private Response page(int status, GradingAccess.Seen seen, ManageForm form, String done, List<Problem> problems) {
        return Response.status(status)
                .entity(Templates.set(results.view(seen), cohorts(), form, done, problems))
                .build();
    }

    private static UUID setNamed(String text) {
        try {
            return UUID.fromString(text);
        } catch (IllegalArgumentException noId) {
            throw new NotFoundException(noId);
        }
    }

    private GradingAccess.Seen find(UUID set) {
        return access.set(set).orElseThrow(NotFoundException::new);
    }

    private List<Choice> cohorts() {
        return access.cohorts().stream()
                .map(cohort -> new Choice(cohort.id().toString(), cohort.name()))
                .toList();
    }
}
