package org.riseandgel.sitting;

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
import org.riseandgel.sitting.SittingDesk.Saved;
import org.riseandgel.sitting.SittingViews.Item;

/** One's own sitting: its items one by one, all of it from above, handing it in, and its result. */
@Path("/sittings/{sitting}")
@RolesAllowed({Roles.APPRENTICE, Roles.INSTRUCTOR, Roles.SAFETY_LEAD})
public class SittingPages {
    private final SittingStore store;
    private final SittingDesk desk;
    private final SittingViews views;
    private final WaitingChecks waiting;
    private final Viewer viewer;

    SittingPages(SittingStore store, SittingDesk desk, SittingViews views, WaitingChecks waiting, Viewer viewer) {
        this.store = store;
        this.desk = desk;
        this.views = views;
        this.waiting = waiting;
        this.viewer = viewer;
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance overview(SittingViews.Overview sitting);

        static native TemplateInstance item(Item item, Item saved, String typed, List<Problem> problems);

        static native TemplateInstance handIn(SittingViews.Overview sitting);

        static native TemplateInstance result(SittingViews.Marked sitting);

        private Templates() {}
    }

    /** All items with what is saved for them or, once it is handed in, the result. */
    @GET
    public TemplateInstance sitting(@RestPath UUID sitting) {
        StoredSitting stored = stored(sitting);
        return stored.isOpen() ? Templates.overview(views.overview(stored)) : Templates.result(views.marked(stored));
    }

    /** The first item that has no answer yet. */
    @GET
    @Path("/items/next")
    public Response next(@RestPath UUID sitting) {
        StoredSitting stored = stored(sitting);
        return SeeOther.page(stored.isOpen() ? address(sitting) + after(stored, 0) : address(sitting));
    }

    @GET
    @Path("/items/{number: [0-9]+}")
    public Response item(@RestPath UUID sitting, @RestPath int number, @RestQuery @DefaultValue("0") int saved) {
        StoredSitting stored = stored(sitting);
        StoredItem item = stored.item(number).orElseThrow(NotFoundException::new);
        if (!stored.isOpen()) {
            return SeeOther.page(address(sitting) + "#item-" + number);
        }
        Item before = stored.item(saved)
                .filter(StoredItem::isAnswered)
                .map(one -> views.item(stored, one))
                .orElse(null);
        Item shown = views.item(stored, item);
        return page(200, Templates.item(shown, before, shown.typed(), List.of()));
    }

    /** Saves the answer to an item; the page that follows is shown after it is stored. */
    @POST
    @Path("/items/{number: [0-9]+}")
    public Response save(@RestPath UUID sitting, @RestPath int number, @RestForm List<String> answer) {
        String typed = String.join(" ", answer);
        Saved saved = desk.save(viewer.getId(), sitting, number, typed).orElseThrow(NotFoundException::new);
        StoredSitting stored = stored(sitting);
        if (saved instanceof Saved.AskAgain again) {
            Item shown = views.item(stored, stored.item(number).orElseThrow());
            return page(422, Templates.item(shown, null, typed, List.of(new Problem("answer", again.question()))));
        }
        return SeeOther.page(
                stored.isOpen() ? address(sitting) + after(stored, number) : address(sitting) + "#item-" + number);
    }

    /** What handing in means, before it is done. */
    @GET
    @Path("/hand-in")
    public Response confirm(@RestPath UUID sitting) {
        StoredSitting stored = stored(sitting);
        return stored.isOpen() ? page(200, Templates.handIn(views.overview(stored))) : SeeOther.page(address(sitting));
    }

    /** Hands in; pressed twice, the first press counts. */
    @POST
    @Path("/hand-in")
    public Response handIn(@RestPath UUID sitting) {
        stored(sitting);
        desk.handIn(viewer.getId(), sitting);
        waiting.forget(viewer.getId());
        return SeeOther.page(address(sitting));
    }

    /** Where to go after an item: to the next that is open, or to the overview when none is. */
    private static String after(StoredSitting sitting, int number) {
        String saved = number == 0 ? "" : "?saved=" + number;
        return sitting.nextOpen(number).map(next -> "/items/" + next + saved).orElse("");
    }

    private StoredSitting stored(UUID sitting) {
        return store.load(viewer.getId(), sitting).orElseThrow(NotFoundException::new);
    }

    private static String address(UUID sitting) {
        return "/sittings/" + sitting;
    }

    private static Response page(int status, TemplateInstance template) {
        return Response.status(status).entity(template).build();
    }
}
