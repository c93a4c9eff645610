package org.riseandgel.practice;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.riseandgel.Browserless;
import org.riseandgel.SignedIn;
import org.riseandgel.account.DemoPeople;
import org.riseandgel.account.TestPeople;
import org.riseandgel.course.CourseContent;
import org.riseandgel.course.Lesson;
import org.riseandgel.platform.sql.Sql;

/** The first page of an apprentice says one thing to do, whatever went before; and the demo school has a past. */
@QuarkusTest
class TodayPageTest {
    @Inject
    Sql sql;

    @Inject
    DrawStore store;

    @Inject
    Drawings drawings;

    @Inject
    CourseContent content;

    @Inject
    Standings standings;

    @Inject
    ReturnDates dates;

    private static Document today(UUID person) {
        return SignedIn.asPerson(person).get("/today").page();
    }

    private static String next(Document page) {
        assertThat(page.select("section[aria-labelledby=next] .button:not(.quiet)"))
                .hasSize(1);
        return page.select("#next").text();
    }

    private void closeDraws(UUID person) {
        sql.change("UPDATE draw SET finished_at = now() WHERE person_id = ? AND finished_at IS NULL", person);
    }

    @Test
    void whoeverHasNotBegunStartsWithALesson() {
        Browserless newcomer = TestPeople.signIn(TestPeople.settled("apprentice"));
        Document page = newcomer.get("/today").page();
        assertThat(next(page)).isEqualTo("Start with a lesson");
        assertThat(page.select(".state").eachText()).contains("not begun");
        assertThat(page.select("section[aria-labelledby=last] .empty")).hasSize(1);
        int minutes = content
                .current()
                .lessonsOf(content.current().course().stages().get(0))
                .stream()
                .mapToInt(Lesson::minutes)
                .sum();
        assertThat(page.select("section[aria-labelledby=lessons] p").text())
                .isEqualTo("About " + minutes + " minutes of reading are left in this stage.");
    }

    @Test
    void anOpenDrawComesFirst() {
        UUID person = DemoPeople.ESME;
        SignedIn.asPerson(person).post("/practice/rise-record/draw", Map.of("level", "2"));
        Document page = today(person);
        assertThat(next(page)).isEqualTo("Go on where you stopped");
        String draw = page.select("section[aria-labelledby=next] a.button").attr("href");
        assertThat(SignedIn.asPerson(person).get(draw).status()).isEqualTo(200);
        closeDraws(person);
        assertThat(next(today(person)))
                .as("what was begun on earlier days comes mixed")
                .isEqualTo("Mixed practice");
    }

    @Test
    void whoeverWasWrongThreeTimesIsSentToTheWorkedExampleFirst() {
        closeDraws(DemoPeople.CELESTE);
        Document page = today(DemoPeople.CELESTE);
        assertThat(next(page)).isEqualTo("Look at it again first");
        assertThat(page.select("section[aria-labelledby=next] a.button").attr("href"))
                .startsWith("/practice/examples/");
    }

    @Test
    void whatIsDueIsNamed() {
        closeDraws(DemoPeople.ESME);
        Document page = today(DemoPeople.ESME);
        assertThat(page.select("section[aria-labelledby=due] li").eachText()).contains("Weighing since today");
        assertThat(page.select("section[aria-labelledby=due] p").text())
                .as("and how long it takes")
                .matches("Mixed practice brings these up by itself: \\d+ items, about \\d+ minutes\\.");
        assertThat(dates.eventsFor(DemoPeople.ESME))
                .as("and stands in the calendar")
                .anySatisfy(event -> {
                    assertThat(event.title()).isEqualTo("Practise again: Weighing");
                    assertThat(event.day()).contains(standings.today());
                });
    }

    @Test
    void whoeverWasSureAndWrongLooksAtThatFirst() {
        Learner learner = Newcomer.at(sql, "04-whipping").learner(store, drawings);
        UUID draw = learner.drawOf(
                content.exercises().find("stick-marks-straight-beaker").orElseThrow(), 7);
        learner.post(draw, 0, "987 cm", "987 cm", "sure");
        Document page = learner.browser.get("/today").page();
        assertThat(next(page)).isEqualTo("Look at this first");
        String why = page.select("section[aria-labelledby=next] a.button").attr("href");
        assertThat(learner.browser.get(why).page().select("#look-at").text()).isEqualTo("You were sure");
    }

    @Test
    void theDemoSchoolHasAPast() {
        assertThat(standings.of(DemoPeople.BASTIAN).in("expansion").state()).isEqualTo(SkillState.MASTERED);
        assertThat(standings.of(DemoPeople.CELESTE).in("stick-marks-tapered").state())
                .isEqualTo(SkillState.STUCK);
        assertThat(count("person_id = '" + DemoPeople.FINTAN + "' AND answered_at < now() - interval '20 hours'"))
                .isZero();
        assertThat(count("verdict = 'RIGHT'")).isGreaterThan(20);
        assertThat(count("verdict = 'SLIP'")).isGreaterThan(3);
        assertThat(count("verdict = 'POWER_OF_TEN'")).isPositive();
        assertThat(count("verdict = 'WRONG_UNIT'")).isPositive();
        assertThat(count("hints > 0")).isPositive();
        assertThat(count("answered_at < now() - interval '20 days'")).isPositive();
        assertThat(count("answered_at > now() + interval '1 minute'")).isZero();
        assertThat(count("shown_at > answered_at")).isZero();
    }

    @Test
    void inTheDemoSchoolOnePersonIsStuckInOneSkill() {
        List<String> stuck = sql.list(
                """
                SELECT person_id || ' ' || skill AS who FROM (
                    SELECT a.person_id, d.skill, a.verdict, row_number() OVER (
                        PARTITION BY a.person_id, d.skill ORDER BY a.answered_at DESC, a.part DESC) AS back
                    FROM answer a JOIN draw d ON d.id = a.draw_id
                    WHERE a.answered_at < now() - interval '20 hours') history
                WHERE back <= 3
                GROUP BY person_id, skill
                HAVING count(*) = 3 AND bool_and(verdict <> 'RIGHT')""",
                row -> row.text("who"));
        assertThat(stuck).containsExactly(DemoPeople.CELESTE + " stick-marks-tapered");
    }

    private int count(String which) {
        return sql.first(
                        "SELECT count(*) AS n FROM answer WHERE person_id::text LIKE '00000000-0000-4000-8000-%' AND "
                                + which,
                        row -> row.number("n"))
                .orElseThrow();
    }
}
