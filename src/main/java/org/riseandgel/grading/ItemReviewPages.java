package org.riseandgel.grading;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import java.util.List;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;
import org.riseandgel.account.Roles;

/** How the exercises of a set did, for those who teach. */
@Path("/graded-sets/{set}/items")
@RolesAllowed({Roles.INSTRUCTOR, Roles.OFFICE})
public class ItemReviewPages {
    private final GradingAccess access;
    private final ItemReviews reviews;

    ItemReviewPages(GradingAccess access, ItemReviews reviews) {
        this.access = access;
        this.reviews = reviews;
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance items(GradedSet set, List<ItemReviews.Line> lines, int fewest);

        private Templates() {}
    }

    @GET
    public TemplateInstance items(@RestPath UUID set) {
        GradedSet found = access.set(set)
                .map(GradingAccess.Seen::set)
                .filter(one -> !one.isDraft())
                .orElseThrow(NotFoundException::new);
        return Templates.items(found, reviews.of(found), ItemReview.FEWEST);
    }
}
