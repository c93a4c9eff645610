package org.riseandgel.progress;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.riseandgel.account.People;
import org.riseandgel.account.PersonView;
import org.riseandgel.account.Roles;
import org.riseandgel.account.Viewer;
import org.riseandgel.platform.web.Problem;
import org.riseandgel.practice.AnswerHistory;
import org.riseandgel.practice.Answered;
import org.riseandgel.practice.Practice;
import org.riseandgel.practice.SkillLists;

/** A person's answers, for whoever teaches that person now and for the office. */
@Path("/people/{person}/answers")
@RolesAllowed({Roles.INSTRUCTOR, Roles.OFFICE})
public class AnswerPages {
    private final People people;
    private final AnswerHistory history;
    private final Practice practice;
    private final SkillLists skills;
    private final Viewer viewer;

    AnswerPages(People people, AnswerHistory history, Practice practice, SkillLists skills, Viewer viewer) {
        this.people = people;
        this.history = history;
        this.practice = practice;
        this.skills = skills;
        this.viewer = viewer;
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance answers(
                PersonView person,
                AnswerHistory.Page history,
                int page,
                String skill,
                List<SkillLists.Choice> choices,
                List<Problem> problems);

        static native TemplateInstance answer(PersonView person, Answered answered, String story);

        private Templates() {}
    }

    @GET
    public TemplateInstance answers(
            @RestPath UUID person, @RestQuery @DefaultValue("1") int page, @RestQuery @DefaultValue("") String skill) {
        PersonView seen = seen(person);
        int asked = Math.max(1, page);
        AnswerHistory.Page found = history.of(person, Optional.of(skill).filter(one -> !one.isEmpty()), asked);
        return Templates.answers(seen, found, asked, skill, skills.choices(), List.of());
    }

    @GET
    @Path("/{draw}/{part}")
    public TemplateInstance answer(@RestPath UUID person, @RestPath UUID draw, @RestPath int part) {
        PersonView seen = seen(person);
        return practice.view(person, draw)
                .flatMap(view -> Optional.ofNullable(view.answered(part - 1))
                        .map(answered -> Templates.answer(seen, answered, view.story())))
                .orElseThrow(NotFoundException::new);
    }

    /** The person, if the viewer may see their answers. */
    private PersonView seen(UUID person) {
        boolean may = viewer.isOffice() || people.teaches(viewer.getId(), person);
        return Optional.of(person).filter(one -> may).flatMap(people::find).orElseThrow(NotFoundException::new);
    }
}
