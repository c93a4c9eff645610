package org.riseandgel.progress;

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
import org.riseandgel.clearance.Register;
import org.riseandgel.course.CourseContent;
import org.riseandgel.course.Skill;
import org.riseandgel.grading.GradedResults;
import org.riseandgel.platform.web.PlainText;
import org.riseandgel.platform.web.Problem;
import org.riseandgel.platform.web.SeeOther;
import org.riseandgel.practice.AnswerHistory;
import org.riseandgel.practice.Calibration;
import org.riseandgel.practice.Calibrations;
import org.riseandgel.practice.StandingView;
import org.riseandgel.practice.Standings;

/** All of one person's progress, for whoever teaches that person now and for the office. */
@Path("/people/{person}/progress")
@RolesAllowed({Roles.INSTRUCTOR, Roles.OFFICE})
public class PersonPages {
    private static final int SLIPS_SHOWN = 12;
    private static final int WEEKS_SHOWN = 12;
    private static final int LONGEST_NOTE = 1_000;

    private final People people;
    private final Boards boards;
    private final Standings standings;
    private final AnswerHistory history;
    private final Calibrations calibrations;
    private final GradedResults graded;
    private final ClearanceFacts clearance;
    private final WordsGiven given;
    private final CourseContent content;
    private final Viewer viewer;

    PersonPages(
            People people,
            Boards boards,
            Standings standings,
            AnswerHistory history,
            Calibrations calibrations,
            GradedResults graded,
            ClearanceFacts clearance,
            WordsGiven given,
            CourseContent content,
            Viewer viewer) {
        this.people = people;
        this.boards = boards;
        this.standings = standings;
        this.history = history;
        this.calibrations = calibrations;
        this.graded = graded;
        this.clearance = clearance;
        this.given = given;
        this.content = content;
        this.viewer = viewer;
    }

    /** A skill with the person's standing in it. */
    record SkillLine(String title, StandingView standing) {}

    /** A word that was given. */
    record GivenLine(Instant at, String by, String about, String why, String note) {}

    /** Everything on the page. */
    record PersonProgress(
            PersonView person,
            List<SkillLine> skills,
            List<Boards.Word> words,
            List<GivenLine> given,
            List<AnswerHistory.Week> weeks,
            List<AnswerHistory.SlipCount> slips,
            Calibration calibration,
            List<GradedResults.Line> sets,
            List<Register.BoardRow> clearance,
            List<ClearanceFacts.Observation> observations,
            List<People.Membership> cohorts) {}

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance person(
                PersonProgress progress, String about, String note, String done, List<Problem> problems);

        private Templates() {}
    }

    @GET
    public TemplateInstance person(@RestPath UUID person, @RestQuery @DefaultValue("") String done) {
        return Templates.person(progress(seen(person)), "", "", done, List.of());
    }

    /** Notes that a word was given that the person needed. */
    @POST
    @Path("/words")
    public Response word(
            @RestPath UUID person, @RestForm @DefaultValue("") String skill, @RestForm @DefaultValue("") String note) {
        PersonView seen = seen(person);
        Optional<Boards.Word> needed = boards.words(seen).stream()
                .filter(word -> word.skill().equals(skill))
                .findFirst();
        if (needed.isEmpty() || viewer.getId().equals(person)) {
            return SeeOther.page("/people/" + person + "/progress");
        }
        List<Problem> problems = problems("note-" + skill, note.strip());
        if (!problems.isEmpty()) {
            return Response.status(422)
                    .entity(Templates.person(progress(seen), skill, note, "", problems))
                    .build();
        }
        given.add(person, skill, needed.get().why(), note.strip(), viewer.getId());
        return SeeOther.page("/people/" + person + "/progress?done=noted");
    }

    private static List<Problem> problems(String field, String note) {
        if (note.length() > LONGEST_NOTE) {
            return List.of(
                    new Problem(field, "The note has %d characters; at most 1,000 fit.".formatted(note.length())));
        }
        return PlainText.isPlain(note) ? List.of() : List.of(new Problem(field, PlainText.INVISIBLE));
    }

    private PersonProgress progress(PersonView person) {
        Standings.Begun begun = standings.of(person.id());
        return new PersonProgress(
                person,
                content.current().course().skills().stream()
                        .map(skill -> new SkillLine(skill.title(), begun.in(skill.id())))
                        .filter(line -> line.standing().answers() > 0)
                        .toList(),
                boards.words(person),
                given.to(person.id()).stream().map(this::line).toList(),
                history.weeks(person.id(), WEEKS_SHOWN),
                history.slips(person.id(), SLIPS_SHOWN),
                calibrations.of(person.id()),
                graded.of(person.id(), viewer.getId(), viewer.isOffice()),
                clearance.standings(person.id()),
                clearance.observations(person.id()),
                people.cohortsOverTime(person.id()));
    }

    private GivenLine line(WordsGiven.Given one) {
        return new GivenLine(
                one.at(),
                people.find(one.by()).map(PersonView::displayName).orElse("Somebody who left"),
                content.current().course().skill(one.skill()).map(Skill::title).orElse(one.skill()),
                one.why(),
                one.note());
    }

    /** The person, if the viewer may see their progress. */
    private PersonView seen(UUID person) {
        boolean may = viewer.isOffice() || people.teaches(viewer.getId(), person);
        return Optional.of(person).filter(one -> may).flatMap(people::find).orElseThrow(NotFoundException::new);
    }
}
