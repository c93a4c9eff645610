package org.riseandgel.practice;

import io.quarkus.arc.All;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import java.util.List;
import org.riseandgel.account.Roles;
import org.riseandgel.account.Viewer;
import org.riseandgel.account.feed.NoticeSource;
import org.riseandgel.course.ReadingPlaces;

/** Where an apprentice begins: one thing to do next, and what else there is. */
@Path("/today")
@RolesAllowed(Roles.APPRENTICE)
public class TodayPage {
    private final Today today;
    private final ReadingPlaces places;
    private final List<NoticeSource> notices;
    private final Viewer viewer;

    TodayPage(Today today, ReadingPlaces places, @All List<NoticeSource> notices, Viewer viewer) {
        this.today = today;
        this.places = places;
        this.notices = notices;
        this.viewer = viewer;
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance today(
                Today.Home home, String name, ReadingPlaces.Place place, List<NoticeSource.Notice> notices);

        private Templates() {}
    }

    @GET
    public TemplateInstance today() {
        return Templates.today(
                today.of(viewer.getId()),
                viewer.getDisplayName(),
                places.last(viewer.getId()).orElse(null),
                notices.stream()
                        .flatMap(source -> source.noticesFor(viewer.getId()).stream())
                        .toList());
    }
}
