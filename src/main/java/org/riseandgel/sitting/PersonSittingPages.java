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
import java.util.Optional;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestPath;
import org.riseandgel.account.People;
import org.riseandgel.account.PersonView;
import org.riseandgel.account.Roles;
import org.riseandgel.account.Viewer;
import org.riseandgel.platform.web.Choice;
import org.riseandgel.platform.web.Problem;
import org.riseandgel.platform.web.SeeOther;

/**
 * A person's sittings, for whoever teaches that person now, for the safety lead and for the office. The first two may
 * note a talk.
 */
@Path("/people/{person}/sittings")
@RolesAllowed({Roles.INSTRUCTOR, Roles.SAFETY_LEAD, Roles.OFFICE})
public class PersonSittingPages {
    private static final int LONGEST_WORDS = 1_000;

    private final People people;
    private final PersonSittings sittings;
    private final Viewer viewer;

    PersonSittingPages(People people, PersonSittings sittings, Viewer viewer) {
        this.people = people;
        this.sittings = sittings;
        this.viewer = viewer;
    }

    /** The form for a talk: the checks that wait for one, and what was typed. */
    record TalkForm(List<Choice> checks, String check, String words, List<Problem> problems) {}

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance sittings(PersonView person, List<PersonSittings.OfCheck> checks, TalkForm talk);

        static native TemplateInstance sitting(PersonView person, SittingViews.Marked sitting);

        private Templates() {}
    }

    @GET
    public TemplateInstance sittings(@RestPath UUID person) {
        return page(seen(person), "", "", List.of());
    }

    @GET
    @Path("/{sitting}")
    public TemplateInstance sitting(@RestPath UUID person, @RestPath UUID sitting) {
        PersonView seen = seen(person);
        return sittings.marked(person, sitting)
                .map(marked -> Templates.sitting(seen, marked))
                .orElseThrow(NotFoundException::new);
    }

    /** Notes a talk after failed sittings, so that the next may be begun. */
    @POST
    @Path("/talk")
    @RolesAllowed({Roles.INSTRUCTOR, Roles.SAFETY_LEAD})
    public Response talk(
            @RestPath UUID person, @RestForm @DefaultValue("") String check, @RestForm @DefaultValue("") String words) {
        PersonView seen = seen(person);
        if (!mayNote(person)) {
            throw new NotFoundException();
        }
        String written = words.strip();
        if (written.isEmpty() || written.length() > LONGEST_WORDS) {
            String message = written.isEmpty()
                    ? "Write in a sentence what you talked about and what was agreed."
                    : "These are %d characters; at most %d fit.".formatted(written.length(), LONGEST_WORDS);
            return Response.status(422)
                    .entity(page(seen, check, words, List.of(new Problem("words", message))))
                    .build();
        }
        if (!sittings.noteTalk(person, check, viewer.getId(), written)) {
            throw new NotFoundException();
        }
        return SeeOther.page("/people/" + person + "/sittings");
    }

    private TemplateInstance page(PersonView person, String check, String words, List<Problem> problems) {
        List<PersonSittings.OfCheck> checks = sittings.of(person.id());
        List<Choice> waiting = checks.stream()
                .filter(one -> one.talkFirst() && mayNote(person.id()))
                .map(one -> new Choice(one.id(), one.title()))
                .toList();
        return Templates.sittings(person, checks, new TalkForm(waiting, check, words, problems));
    }

    /** Nobody notes a talk with themselves. */
    private boolean mayNote(UUID person) {
        return !viewer.getId().equals(person)
                && (viewer.isSafetyLead() || viewer.isInstructor() && people.teaches(viewer.getId(), person));
    }

    /** The person, if the viewer may see their sittings. */
    private PersonView seen(UUID person) {
        boolean may = viewer.isOffice() || viewer.isSafetyLead() || people.teaches(viewer.getId(), person);
        return Optional.of(person).filter(one -> may).flatMap(people::find).orElseThrow(NotFoundException::new);
    }
}
