package org.riseandgel.grading;

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
import org.riseandgel.account.Roles;
import org.riseandgel.account.Viewer;
import org.riseandgel.platform.web.Problem;
import org.riseandgel.platform.web.SeeOther;

/** Judging a set's answers again after an exercise was mended: looking first, doing it, watching it, undoing it. */
@Path("/graded-sets/{set}/judge-again")
@RolesAllowed({Roles.INSTRUCTOR, Roles.OFFICE})
public class RegradePages {
    private static final int CONFLICT = 409;
    private static final int WRONG = 422;

    private final GradingAccess access;
    private final Regrades regrades;
    private final RegradeStore store;
    private final RegradeWorker worker;
    private final Viewer viewer;

    RegradePages(GradingAccess access, Regrades regrades, RegradeStore store, RegradeWorker worker, Viewer viewer) {
        this.access = access;
        this.regrades = regrades;
        this.store = store;
        this.worker = worker;
        this.viewer = viewer;
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance list(GradedSet set, List<Regrades.Mended> mended, List<RegradeStore.Job> jobs);

        static native TemplateInstance preview(
                GradedSet set,
                Regrades.Mended mended,
                List<Regrades.Change> changes,
                long changed,
                String reason,
                boolean busy,
                List<Problem> problems);

        static native TemplateInstance job(GradedSet set, RegradeStore.Job job, boolean busy);

        static native TemplateInstance progress(GradedSet set, RegradeStore.Job job);

        private Templates() {}
    }

    @GET
    public TemplateInstance list(@RestPath UUID set) {
        GradedSet found = find(set);
        return Templates.list(found, regrades.mended(found), store.ofSet(set));
    }

    /** What would change, before anything does. */
    @GET
    @Path("/exercises/{exercise}")
    public TemplateInstance preview(@RestPath UUID set, @RestPath String exercise) {
        GradedSet found = find(set);
        return preview(found, mended(found, exercise), "", false, List.of());
    }

    @POST
    @Path("/exercises/{exercise}")
    public Response start(
            @RestPath UUID set,
            @RestPath String exercise,
            @RestForm @DefaultValue("") String version,
            @RestForm @DefaultValue("") String reason) {
        GradedSet found = find(set);
        Regrades.Mended mended = mended(found, exercise);
        List<Problem> problems = Reasons.problems("reason", reason);
        if (!problems.isEmpty()) {
            return page(WRONG, preview(found, mended, reason, false, problems));
        }
        Optional<UUID> job = regrades.start(found, exercise, version, reason.strip(), viewer.getId());
        job.ifPresent(worker::goOn);
        return job.map(id -> SeeOther.page("/graded-sets/" + set + "/judge-again/jobs/" + id))
                .orElseGet(() -> page(CONFLICT, preview(found, mended, reason, true, List.of())));
    }

    @GET
    @Path("/jobs/{job}")
    public TemplateInstance job(@RestPath UUID set, @RestPath UUID job) {
        return Templates.job(find(set), watched(set, job), false);
    }

    /** How far the job is: a piece of its page. */
    @GET
    @Path("/jobs/{job}/progress")
    public TemplateInstance progress(@RestPath UUID set, @RestPath UUID job) {
        return Templates.progress(find(set), watched(set, job));
    }

    @POST
    @Path("/jobs/{job}/undo")
    public Response undo(@RestPath UUID set, @RestPath UUID job) {
        GradedSet found = find(set);
        RegradeStore.Job watched = watched(set, job);
        if (!regrades.undo(watched, viewer.getId())) {
            return page(CONFLICT, Templates.job(found, watched, true));
        }
        worker.goOn(job);
        return SeeOther.page("/graded-sets/" + set + "/judge-again/jobs/" + job);
    }

    /** The job; one that no node is at any more is taken up by being looked at. */
    private RegradeStore.Job watched(UUID set, UUID job) {
        find(set);
        RegradeStore.Job found =
                store.find(job).filter(one -> one.set().equals(set)).orElseThrow(NotFoundException::new);
        if (found.isAtWork()) {
            worker.goOn(job);
        }
        return found;
    }

    private TemplateInstance preview(
            GradedSet set, Regrades.Mended mended, String reason, boolean busy, List<Problem> problems) {
        List<Regrades.Change> changes = regrades.preview(set, mended.exercise());
        long changed = changes.stream().filter(Regrades.Change::isChange).count();
        return Templates.preview(set, mended, changes, changed, reason, busy, problems);
    }

    private Regrades.Mended mended(GradedSet set, String exercise) {
        return regrades.mended(set).stream()
                .filter(one -> one.exercise().equals(exercise))
                .findFirst()
                .orElseThrow(NotFoundException::new);
    }

    private GradedSet find(UUID set) {
        return access.set(set)
                .map(GradingAccess.Seen::set)
                .filter(one -> !one.isDraft())
                .orElseThrow(NotFoundException::new);
    }

    private static Response page(int status, TemplateInstance template) {
        return Response.status(status).entity(template).build();
    }
}
