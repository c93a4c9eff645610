package org.riseandgel.practice;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.Map;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.riseandgel.Browserless;
import org.riseandgel.SignedIn;
import org.riseandgel.account.DemoPeople;
import org.riseandgel.account.TestPeople;
import org.riseandgel.course.Content;
import org.riseandgel.course.CourseContent;
import org.riseandgel.course.Lesson;
import org.riseandgel.course.Stage;
import org.riseandgel.platform.audit.AuditLog;
import org.riseandgel.platform.sql.Sql;

/** A stage that is shut says what it waits for, and an instructor opens it by hand with a reason. */
@QuarkusTest
class StagePagesTest {
    @Inject
    Sql sql;

    @Inject
    CourseContent content;

    @Inject
    AuditLog audit;

    /** The last stage with lessons: shut to whoever has not begun. */
    private Stage late() {
        Content now = content.current();
        return now.course().stages().stream()
                .filter(stage -> !now.lessonsOf(stage).isEmpty())
                .reduce((earlier, later) -> later)
                .orElseThrow();
    }

    @Test
    void aShutStageSaysWhatIsMissingAndItsLessonsLeadThere() {
        Content now = content.current();
        Stage late = late();
        Lesson lesson = now.lessonsOf(late).get(0);
        Browserless newcomer = TestPeople.signIn(Newcomer.in(sql).added());

        Browserless.Answer answer = newcomer.get(lesson.key().address());
        assertThat(answer.status()).isEqualTo(303);
        assertThat(answer.location()).isEqualTo("/course/" + late.id());
        Document page = answer.follow().page();
        assertThat(page.select("#missing").text()).isEqualTo("Not open yet");
        assertThat(page.select("section[aria-labelledby=missing] li")).isNotEmpty();
        assertThat(newcomer.post(lesson.key().address() + "/read").location()).isEqualTo("/course/" + late.id());
        assertThat(sql.first(
                        "SELECT count(*) AS n FROM lesson_read WHERE lesson_id = ? AND person_id <> ?",
                        row -> row.number("n"),
                        lesson.key().id(),
                        DemoPeople.BASTIAN))
                .contains(0);
        assertThat(newcomer.get("/course").page().select("#" + late.id()).text())
                .contains("not open yet");
        assertThat(SignedIn.as("instructor").get(lesson.key().address()).status())
                .as("whoever teaches reads everything")
                .isEqualTo(200);
        assertThat(newcomer.get("/course/no-such-stage").status()).isEqualTo(404);
    }

    @Test
    void anInstructorOpensAStageWithAReasonOnRecord() {
        Stage late = late();
        Newcomer newcomer = Newcomer.in(sql);
        Browserless ines = SignedIn.as("instructor");
        String address = "/people/" + newcomer.id() + "/stages";
        Document form = ines.get(address).page();
        assertThat(form.select("select[name=stage] option").eachAttr("value")).contains(late.id());

        Browserless.Answer refused = ines.post(address, Map.of("stage", late.id(), "reason", " "));
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.page().select(".error-summary a").attr("href")).isEqualTo("#reason");
        assertThat(ines.post(address, Map.of("stage", "01-bench-and-hazards", "reason", "Knows it"))
                        .status())
                .as("a stage that is open already")
                .isEqualTo(422);

        assertThat(ines.post(address, Map.of("stage", late.id(), "reason", "Showed it at the bench"))
                        .status())
                .isEqualTo(303);
        ines.post(address, Map.of("stage", late.id(), "reason", "Pressed twice"));
        Document opened = ines.get(address).page();
        assertThat(opened.text()).contains("Opened by Ines Calloway").contains("Showed it at the bench");
        assertThat(audit.about(newcomer.id().toString(), 10))
                .filteredOn(entry -> entry.action().equals("stage-opened"))
                .singleElement()
                .satisfies(entry -> assertThat(entry.detail()).contains(late.id(), "Showed it at the bench"));
        Browserless learner = TestPeople.signIn(newcomer.added());
        assertThat(learner.get(content.current().lessonsOf(late).get(0).key().address())
                        .status())
                .isEqualTo(200);
    }

    @Test
    void whoDoesNotTeachThePersonFindsNothing() {
        TestPeople.Added stranger = TestPeople.settled("apprentice");
        String address = "/people/" + stranger.id() + "/stages";
        assertThat(SignedIn.as("instructor").get(address).status()).isEqualTo(404);
        assertThat(SignedIn.as("instructor")
                        .post(address, Map.of("stage", late().id(), "reason", "I want to"))
                        .status())
                .isEqualTo(404);
        assertThat(TestPeople.signIn(stranger).get(address).status()).isEqualTo(404);
    }
}
