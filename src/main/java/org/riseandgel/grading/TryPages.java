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
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.riseandgel.account.Roles;
import org.riseandgel.account.Viewer;
import org.riseandgel.platform.web.Problem;
import org.riseandgel.platform.web.SeeOther;

/** One try at a graded set: its items, one after the other or in any order, and handing it in. */
@Path("/set-work/tries/{work}")
@RolesAllowed(Roles.APPRENTICE)
public class TryPages {
    private static final int CONFLICT = 409;

    private final WorkStore works;
    private final SetStore sets;
    private final WorkViews views;
    private final WorkDesk desk;
    private final Viewer viewer;

    TryPages(WorkStore works, SetStore sets, WorkViews views, WorkDesk desk, Viewer viewer) {
        this.works = works;
        this.sets = sets;
        this.views = views;
        this.desk = desk;
        this.viewer = viewer;
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance overview(WorkViews.Overview work, boolean late);

        static native TemplateInstance item(
                WorkViews.ItemView item, WorkDesk.ReadBack echo, boolean late, List<Problem> problems);

        static native TemplateInstance readBack(WorkDesk.ReadBack echo);

        private Templates() {}
    }

    static String address(UUID work) {
        return "/set-work/tries/" + work;
    }

    @GET
    public TemplateInstance overview(@RestPath UUID work) {
        Work found = find(work);
        return Templates.overview(views.overview(found, set(found)), false);
    }

    /** An item; an answered part may be asked for again where answers can still be changed. */
    @GET
    @Path("/items/{number}")
    public TemplateInstance item(@RestPath UUID work, @RestPath int number, @RestQuery @DefaultValue("0") int part) {
        Work found = find(work);
        return Templates.item(views.item(found, set(found), item(found, number), part - 1, ""), null, false, List.of());
    }

    /** What a typed answer is read as, while it is being typed: a piece of the page. */
    @POST
    @Path("/items/{number}/read")
    public TemplateInstance read(
            @RestPath UUID work,
            @RestPath int number,
            @RestForm @DefaultValue("0") int part,
            @RestForm @DefaultValue("") String answer) {
        Work.Item item = item(find(work), number);
        if (part < 1 || part > item.answers().size() + 1) {
            throw new NotFoundException();
        }
        return Templates.readBack(desk.read(item, part - 1, answer));
    }

    /** Hands the answer to a part in, once the person has seen what it is read as. */
    @POST
    @Path("/items/{number}")
    public Response answer(
            @RestPath UUID work,
            @RestPath int number,
            @RestForm @DefaultValue("0") int part,
            @RestForm List<String> answer,
            @RestForm @DefaultValue("") String echoed,
            @RestForm @DefaultValue("") String change) {
        Work found = find(work);
        GradedSet set = set(found);
        Work.Item item = item(found, number);
        String typed = String.join(" ", answer);
        WorkViews.ItemView view = views.item(found, set, item, part - 1, typed);
        if (view.asked() != null && view.answering() == part && !echoed.equals(typed)) {
            WorkDesk.ReadBack unseen = desk.read(item, part - 1, typed);
            if (!change.isEmpty() || unseen.isToBeSeen()) {
                return page(200, Templates.item(view, change.isEmpty() ? unseen : null, false, List.of()));
            }
        }
        WorkDesk.Handed handed = desk.answer(found, set, item, part - 1, typed);
        if (handed instanceof WorkDesk.Handed.AskAgain again) {
            return page(422, Templates.item(view, null, false, List.of(new Problem("answer", again.question()))));
        }
        if (handed instanceof WorkDesk.Handed.TooLate) {
            Work now = find(work);
            return page(
                    CONFLICT,
                    Templates.item(views.item(now, set(now), item(now, number), -1, typed), null, true, List.of()));
        }
        return SeeOther.page(address(work) + "/items/" + number);
    }

    @POST
    @Path("/hand-in")
    public Response handIn(@RestPath UUID work) {
        Work found = find(work);
        if (desk.handIn(found) || !found.isOpen()) {
            return SeeOther.page(address(work));
        }
        return page(CONFLICT, Templates.overview(views.overview(found, set(found)), true));
    }

    private Work find(UUID work) {
        return works.find(work)
                .filter(found -> found.person().equals(viewer.getId()))
                .orElseThrow(NotFoundException::new);
    }

    private GradedSet set(Work work) {
        return sets.find(work.set()).orElseThrow(NotFoundException::new);
    }

    private static Work.Item item(Work work, int number) {
        return work.item(number).orElseThrow(NotFoundException::new);
    }

    private static Response page(int status, TemplateInstance template) {
        return Response.status(status).entity(template).build();
    }
}
