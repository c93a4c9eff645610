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
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.riseandgel.account.People;
import org.riseandgel.account.PersonView;
import org.riseandgel.account.Roles;
import org.riseandgel.account.Viewer;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.platform.school.SchoolSettings;
import org.riseandgel.platform.web.Problem;
import org.riseandgel.platform.web.SeeOther;

/** A try as those who teach see it, and each of its marks, which can be corrected. */
@Path("/graded-sets/{set}/works/{work}")
@RolesAllowed({Roles.INSTRUCTOR, Roles.OFFICE})
public class MarkPages {
    private static final int CONFLICT = 409;
    private static final int WRONG = 422;

    private final GradingAccess access;
    private final WorkStore works;
    private final PartViews parts;
    private final Corrections corrections;
    private final People people;
    private final SchoolSettings school;
    private final Viewer viewer;

    MarkPages(
            GradingAccess access,
            WorkStore works,
            PartViews parts,
            Corrections corrections,
            People people,
            SchoolSettings school,
            Viewer viewer) {
        this.access = access;
        this.works = works;
        this.parts = parts;
        this.corrections = corrections;
        this.people = people;
        this.school = school;
        this.viewer = viewer;
    }

    /** A try with everything. */
    record TryView(GradedSet set, Work work, String name, String points, List<ItemTold> items) {}

    /** An item with its parts. */
    record ItemTold(int number, String title, int weight, String story, List<PartTold> parts) {}

    /**
     * A mark with its history.
     *
     * @param seen stands for the answer and the mark as they are shown
     */
    record MarkView(
            GradedSet set,
            Work work,
            String name,
            int item,
            String title,
            String story,
            PartTold told,
            ItemAnswer answer,
            String seen,
            List<ChangeLine> history) {}

    /** A change of the mark, as the page tells it. */
    record ChangeLine(Instant at, String by, String what, String reason) {}

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance work(TryView view, String done);

        static native TemplateInstance mark(
                MarkView view, String credit, String reason, boolean moved, List<Problem> problems);

        private Templates() {}
    }

    @GET
    public TemplateInstance work(@RestPath UUID set, @RestPath UUID work, @RestQuery @DefaultValue("") String done) {
        GradedSet found = set(set);
        Work seen = work(found, work);
        DecimalMark mark = school.decimalMark();
        return Templates.work(
                new TryView(
                        found,
                        seen,
                        name(seen.person()),
                        parts.score(seen).words(mark),
                        seen.items().stream()
                                .map(item -> new ItemTold(
                                        item.number(),
                                        parts.drawn(item).template().title(),
                                        item.weight(),
                                        parts.drawn(item).story(mark),
                                        parts.told(item)))
                                .toList()),
                done);
    }

    @GET
    @Path("/items/{number}/parts/{part}")
    public TemplateInstance mark(@RestPath UUID set, @RestPath UUID work, @RestPath int number, @RestPath int part) {
        GradedSet found = set(set);
        Work seen = work(found, work);
        Work.Item item = item(seen, number, part);
        return Templates.mark(
                view(found, seen, item, part), String.valueOf(item.credit(part - 1)), "", false, List.of());
    }

    @POST
    @Path("/items/{number}/parts/{part}")
    public Response correct(
            @RestPath UUID set,
            @RestPath UUID work,
            @RestPath int number,
            @RestPath int part,
            @RestForm @DefaultValue("") String seen,
            @RestForm @DefaultValue("") String credit,
            @RestForm @DefaultValue("") String reason) {
        GradedSet found = set(set);
        item(work(found, work), number, part);
        Corrections.Correction typed = new Corrections.Correction(seen, credit, reason);
        Corrections.Done done = corrections.correct(work, number, part - 1, typed, viewer.getId());
        if (done == Corrections.Done.KEPT) {
            return SeeOther.page("/graded-sets/" + set + "/works/" + work + "?done=corrected");
        }
        boolean moved = done == Corrections.Done.MOVED;
        List<Problem> problems = done == Corrections.Done.OWN
                ? List.of(new Problem("credit", "This is your own work. Somebody else has to correct it."))
                : Corrections.problems(credit, reason);
        Work now = work(found, work);
        MarkView view = view(found, now, item(now, number, part), part);
        return Response.status(moved ? CONFLICT : WRONG)
                .entity(Templates.mark(view, credit, reason, moved, problems))
                .build();
    }

    private MarkView view(GradedSet set, Work work, Work.Item item, int part) {
        return new MarkView(
                set,
                work,
                name(work.person()),
                item.number(),
                parts.drawn(item).template().title(),
                parts.drawn(item).story(school.decimalMark()),
                parts.told(item, part - 1),
                item.answer(part - 1).orElse(null),
                item.seen(part - 1),
                works.history(work.id(), item.number(), part - 1).stream()
                        .map(change -> line(change, item.answer(part - 1)))
                        .toList());
    }

    private ChangeLine line(MarkChange change, Optional<ItemAnswer> answer) {
        String what =
                switch (change.kind()) {
                    case CORRECTION -> "Corrected by hand: counts " + change.credit() + " %";
                    case REGRADE -> "Judged again by the mended exercise: counts " + change.credit() + " %";
                    case UNDO -> "That was undone: counts " + change.credit() + " %";
                };
        String stands = change.isFor(answer) ? what : what + ", for an answer that was changed since";
        return new ChangeLine(change.at(), name(change.by()), stands, change.reason());
    }

    private String name(UUID person) {
        return people.find(person).map(PersonView::displayName).orElse("Somebody who left");
    }

    private GradedSet set(UUID set) {
        return access.set(set).map(GradingAccess.Seen::set).orElseThrow(NotFoundException::new);
    }

    private Work work(GradedSet set, UUID work) {
        return works.find(work).filter(found -> found.set().equals(set.id())).orElseThrow(NotFoundException::new);
    }

    private Work.Item item(Work work, int number, int part) {
        return work.item(number)
                .filter(item -> part >= 1 && part <= parts.parts(item))
                .orElseThrow(NotFoundException::new);
    }
}
