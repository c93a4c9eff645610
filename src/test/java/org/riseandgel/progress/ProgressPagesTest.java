package org.riseandgel.progress;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.riseandgel.Browserless;
import org.riseandgel.Browserless.Answer;
import org.riseandgel.SignedIn;
import org.riseandgel.account.DemoPeople;
import org.riseandgel.account.TestPeople;
import org.riseandgel.course.CourseContent;
import org.riseandgel.platform.sql.Sql;

/** What an instructor and the office see of people's practice, and that nobody else sees it. */
@QuarkusTest
class ProgressPagesTest {
    private static final UUID FOREIGN_COHORT = UUID.fromString("00000000-0000-4000-8000-0000000f0001");

    @Inject
    Sql sql;

    @Inject
    CourseContent content;

    private static Element row(Document board, String name) {
        return board.select("table.board tbody tr").stream()
                .filter(row -> row.select("th").text().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theBoardShowsEverybodyInWordsAndShapes() {
        Browserless ines = SignedIn.as("instructor");
        Document list = ines.get("/cohorts").page();
        assertThat(list.select(".card a").eachAttr("href")).contains("/cohorts/" + DemoPeople.FIRST_COHORT);

        Document board = ines.get("/cohorts/" + DemoPeople.FIRST_COHORT).page();

        assertThat(board.select("table.board tbody tr")).hasSizeGreaterThanOrEqualTo(4);
        Element bastian = row(board, "Bastian Quill");
        assertThat(bastian.select(".state").eachText()).contains("mastered");
        assertThat(bastian.select(".state use").eachAttr("href")).contains("/img/icons.svg#mastered");
        int columns = board.select("table.board thead tr").last().select("th").size();
        assertThat(bastian.select("td, th")).hasSize(columns);
    }

    @Test
    void whoIsStuckIsNamedWithTheWayToTheirAnswers() {
        Browserless ines = SignedIn.as("instructor");
        Document board = ines.get("/cohorts/" + DemoPeople.FIRST_COHORT).page();
        Element word = board.select("section[aria-labelledby=words] li").stream()
                .filter(line -> line.text().contains("Celeste Marrow"))
                .findFirst()
                .orElseThrow();
        assertThat(word.text()).contains("3 wrong in a row");
        Document answers = ines.get(word.select("a").attr("href")).page();
        assertThat(answers.select("tbody tr").size()).isGreaterThanOrEqualTo(3);

        String one = answers.select("tbody tr").first().select("a").attr("href");
        Document answer = ines.get(one).page();
        assertThat(answer.select(".verdict .facts").text())
                .contains("You wrote")
                .contains("Right answer");
        assertThat(answer.select(".working li")).isNotEmpty();
    }

    @Test
    void aForeignCohortAndItsPeopleAreNotThereForAnInstructorButForTheOffice() {
        UUID stranger = UUID.randomUUID();
        sql.change(
                """
                INSERT INTO cohort (id, name, created_at) VALUES (?, 'Somebody else''s group', now())
                ON CONFLICT DO NOTHING""",
                FOREIGN_COHORT);
        sql.change(
                """
                INSERT INTO person (id, sign_in_name, display_name, password_hash, created_at)
                VALUES (?, ?, 'Wilma Strange', 'none', now())""",
                stranger,
                "w" + stranger.toString().substring(0, 8));
        sql.change(
                "INSERT INTO cohort_member (id, cohort_id, person_id, part, joined_at) VALUES (?, ?, ?, 'learns', now())",
                UUID.randomUUID(),
                FOREIGN_COHORT,
                stranger);
        Browserless ines = SignedIn.as("instructor");
        Browserless office = SignedIn.as("office");
        for (String path : List.of(
                "/cohorts/" + FOREIGN_COHORT,
                "/cohorts/" + FOREIGN_COHORT + "/progress.csv",
                "/cohorts/" + FOREIGN_COHORT + "/effect",
                "/api/v1/cohorts/" + FOREIGN_COHORT + "/progress",
                "/people/" + stranger + "/progress",
                "/people/" + stranger + "/answers")) {
            assertThat(ines.get(path).status()).as(path).isEqualTo(404);
            assertThat(office.get(path).status()).as(path).isEqualTo(200);
        }
        assertThat(ines.get("/cohorts").body()).doesNotContain(FOREIGN_COHORT.toString());
        assertThat(office.get("/people/" + stranger + "/answers").page().select(".empty"))
                .hasSize(1);
    }

    @Test
    void whatIsNotThereIsNotFound() {
        Browserless ines = SignedIn.as("instructor");
        String answers = "/people/" + DemoPeople.CELESTE + "/answers";
        for (String path : List.of(
                "/cohorts/" + UUID.randomUUID(),
                "/cohorts/none",
                "/people/" + UUID.randomUUID() + "/answers",
                answers + "/" + UUID.randomUUID() + "/1",
                answers + "/" + drawOf(DemoPeople.BASTIAN) + "/1",
                answers + "/" + drawOf(DemoPeople.CELESTE) + "/99",
                answers + "/" + drawOf(DemoPeople.CELESTE) + "/0")) {
            assertThat(ines.get(path).status()).as(path).isEqualTo(404);
        }
    }

    @Test
    void apprenticesAndTheSafetyLeadSeeNoneOfIt() {
        for (String role : List.of("apprentice", "safety-lead")) {
            Browserless browser = SignedIn.as(role);
            for (String path : List.of(
                    "/cohorts",
                    "/cohorts/" + DemoPeople.FIRST_COHORT,
                    "/people/" + DemoPeople.BASTIAN + "/answers",
                    "/people/" + DemoPeople.BASTIAN + "/answers/" + drawOf(DemoPeople.BASTIAN) + "/1")) {
                assertThat(browser.get(path).status()).as(role + " " + path).isEqualTo(404);
            }
        }
        assertThat(SignedIn.as("safety-lead").get("/practice").status()).isEqualTo(404);
        assertThat(SignedIn.as("office").get("/today").status()).isEqualTo(404);
        assertThat(Browserless.anonymous().get("/cohorts").status()).isEqualTo(303);
    }

    @Test
    void longHistoriesComeInPages() {
        Browserless ines = SignedIn.as("instructor");
        String path = "/people/" + DemoPeople.BASTIAN + "/answers";
        Document first = ines.get(path).page();
        assertThat(first.select("tbody tr")).hasSizeLessThanOrEqualTo(25);
        assertThat(first.select("nav[aria-label=Pages]").text()).contains("Older");
        Document second = ines.get(path + "?skill=&page=2").page();
        assertThat(second.select("nav[aria-label=Pages]").text()).contains("Newer");
        assertThat(second.select("tbody a").eachAttr("href"))
                .isNotEmpty()
                .doesNotContainAnyElementsOf(first.select("tbody a").eachAttr("href"));
        for (String page : List.of("0", "-3", "2147483647")) {
            assertThat(ines.get(path + "?page=" + page).status()).as(page).isEqualTo(200);
        }
        assertThat(ines.get(path + "?skill=nonsense").page().select(".empty")).hasSize(1);
    }

    @Test
    void aWordThatWasGivenIsNotNeededUntilTheNextAnswerAndIsKept() {
        Browserless ines = SignedIn.as("instructor");
        String page = "/people/" + DemoPeople.CELESTE + "/progress";
        Document before = ines.get(page).page();
        String skill = before.select("section[aria-labelledby=words] input[name=skill]")
                .attr("value");
        assertThat(skill).isNotEmpty();
        Answer tooLong = ines.post(page + "/words", Map.of("skill", skill, "note", "x".repeat(1001)));
        assertThat(tooLong.status()).isEqualTo(422);
        assertThat(tooLong.page().select("#note-" + skill).attr("value")).hasSize(1001);
        assertThat(ines.post(page + "/words", Map.of("skill", skill, "note", "Showed the beaker again"))
                        .status())
                .isEqualTo(303);
        Document after = ines.get(page).page();
        assertThat(after.select("section[aria-labelledby=words] input[value=" + skill + "]"))
                .isEmpty();
        assertThat(after.text()).contains("Ines Calloway").contains("Showed the beaker again");
        assertThat(sql.any("SELECT 1 FROM word_given WHERE person_id = ? AND skill = ?", DemoPeople.CELESTE, skill))
                .isTrue();
        ines.post(page + "/words", Map.of("skill", skill, "note", "A note too many"));
        assertThat(ines.get(page).page().text())
                .as("nothing was needed any more")
                .doesNotContain("A note too many");
        takeBack(skill);
    }

    /** The application may only add; what this test added is older than the answer again. */
    private void takeBack(String skill) {
        sql.change(
                "UPDATE skill_standing SET last_at = now() + interval '1 second' WHERE person_id = ? AND skill = ?",
                DemoPeople.CELESTE,
                skill);
    }

    @Test
    void thePageOfAPersonHasSkillsSlipsAndGradedSets() {
        Document page = SignedIn.as("instructor")
                .get("/people/" + DemoPeople.CELESTE + "/progress")
                .page();
        assertThat(page.select("h2").eachText()).contains("Skills", "Graded sets", "Slips made");
        assertThat(page.text()).contains("First look at foam").contains("This is no test and clears nobody");
    }

    @Test
    void theBoardShowsOneStageOrThoseAloneWhoNeedAWord() {
        Browserless ines = SignedIn.as("instructor");
        String at = "/cohorts/" + DemoPeople.FIRST_COHORT;
        Document whole = ines.get(at).page();
        Document stage = ines.get(at + "?stage=4").page();
        assertThat(stage.select("table.board thead tr").first().select("th")).hasSize(1);
        assertThat(stage.select("table.board tbody tr")).hasSameSizeAs(whole.select("table.board tbody tr"));
        Document words = ines.get(at + "?words=only").page();
        assertThat(words.select("table.board tbody tr").size())
                .isLessThan(whole.select("table.board tbody tr").size());
        assertThat(ines.get(at + "?stage=nonsense").status()).isEqualTo(200);
    }

    @Test
    void progressLeavesAsATableAndForPrograms() {
        Browserless ines = SignedIn.as("instructor");
        Answer csv = ines.get("/cohorts/" + DemoPeople.FIRST_COHORT + "/progress.csv");
        assertThat(csv.body()).startsWith("Name,Sign-in name,Skill,Title,State,");
        assertThat(csv.body().lines().filter(line -> line.startsWith("Bastian Quill,bastian,")))
                .anyMatch(line -> line.contains(",mastered,"));
        assertThat(ines.get("/cohorts/" + DemoPeople.FIRST_COHORT + "/progress.doc")
                        .status())
                .isEqualTo(404);
        assertThat(ines.get("/api/v1/cohorts").body()).contains(DemoPeople.FIRST_COHORT.toString());
        assertThat(ines.get("/api/v1/cohorts/" + DemoPeople.FIRST_COHORT + "/progress")
                        .body())
                .contains("\"signInName\":\"bastian\"", "\"state\":\"mastered\"");
        assertThat(SignedIn.asPerson(DemoPeople.BASTIAN)
                        .get("/api/v1/me/progress")
                        .body())
                .contains("\"state\":\"mastered\"");
    }

    @Test
    void whatWasDoneStaysWithTheCohortItWasDoneIn() {
        sql.change(
                """
                INSERT INTO cohort (id, name, created_at) VALUES (?, 'Somebody else''s group', now())
                ON CONFLICT DO NOTHING""",
                FOREIGN_COHORT);
        for (String span : List.of("'2001-01-01', '2002-01-01'", "'2002-01-01', '2200-01-01'")) {
            sql.change(
                    "INSERT INTO cohort_member (id, cohort_id, person_id, part, joined_at, left_at) VALUES (?, ?, ?, 'learns', "
                            + span + ")",
                    UUID.randomUUID(),
                    FOREIGN_COHORT,
                    DemoPeople.ESME);
        }
        int all = sql.first(
                        "SELECT count(*)::int AS n FROM answer WHERE person_id = ?",
                        row -> row.number("n"),
                        DemoPeople.ESME)
                .orElseThrow();
        Document page = SignedIn.as("office")
                .get("/cohorts/" + FOREIGN_COHORT + "/history")
                .page();
        assertThat(page.select("tbody tr").stream()
                        .filter(row -> row.select("th").text().equals("Esme Tarrant"))
                        .map(row -> row.select("td").get(2).text()))
                .containsExactly("0", "" + all);
        assertThat(SignedIn.as("instructor")
                        .get("/cohorts/" + DemoPeople.FIRST_COHORT + "/history")
                        .page()
                        .select("tbody tr"))
                .hasSizeGreaterThanOrEqualTo(4);
        assertThat(SignedIn.as("office")
                        .get("/people/" + DemoPeople.ESME + "/progress")
                        .page()
                        .text())
                .contains("Somebody else's group: from");
    }

    @Test
    void thePageOfAPersonSaysWhatTheRegisterSays() {
        Browserless ines = SignedIn.as("instructor");
        Document page = ines.get("/people/" + DemoPeople.BASTIAN + "/progress").page();
        Document register = ines.get("/register/people/" + DemoPeople.BASTIAN).page();
        assertThat(page.select("section[aria-labelledby=clearance] dl").text())
                .isNotEmpty()
                .isEqualTo(register.select("section[aria-labelledby=now] dl").text());
        assertThat(page.select("h2").eachText()).contains("Answers over time", "Observed practicals", "Cohorts");
        assertThat(page.text()).contains("store and waste, watched by");
    }

    /** LX-19: counts with their n, shares from ten on, and beside each later try the like one of the first day. */
    @Test
    void whatWasStillRightWeeksLaterIsToldWithItsNumbers() {
        UUID cohort = UUID.randomUUID();
        UUID person = UUID.fromString(TestPeople.settled("apprentice").id());
        sql.change("INSERT INTO cohort (id, name, created_at) VALUES (?, 'The spring group', now())", cohort);
        sql.change(
                "INSERT INTO cohort_member (id, cohort_id, person_id, part, joined_at) VALUES (?, ?, ?, 'learns', '2020-01-01')",
                UUID.randomUUID(),
                cohort,
                person);
        sql.change(
                "INSERT INTO cohort_member (id, cohort_id, person_id, part, joined_at) VALUES (?, ?, ?, 'teaches', now())",
                UUID.randomUUID(),
                cohort,
                DemoPeople.INSTRUCTOR);
        Browserless ines = SignedIn.as("instructor");
        String address = "/cohorts/" + cohort + "/effect";
        assertThat(ines.get(address).page().select(".empty")).hasSize(1);

        for (int i = 0; i < 12; i++) {
            String skill = content.course().skills().get(i).id();
            tried(person, skill, 0, i < 3 ? "RIGHT" : "WRONG");
            if (i < 10) {
                tried(person, skill, 21, i < 7 ? "RIGHT" : "WRONG");
            }
            if (i < 9) {
                tried(person, skill, 90, "RIGHT");
            }
        }
        Document page = ines.get(address).page();
        assertThat(page.select("section[aria-labelledby=tries] tbody tr").eachText())
                .containsExactly(
                        "First day 1 12 3 of 12, 25 %",
                        "Day 18 to 28 1 10 7 of 10, 70 %", "Day 80 to 110 1 9 too few to say");
        assertThat(page.select("section[aria-labelledby=alike] tbody tr").eachText())
                .containsExactly("Day 18 to 28 10 3 of 10, 30 % 7 of 10, 70 %", "Day 80 to 110 9 too few to say");
        assertThat(ines.get("/cohorts/" + cohort).page().select("a[href=" + address + "]"))
                .hasSize(1);
        assertThat(SignedIn.as("office").get(address).status()).isEqualTo(200);
        sql.change("UPDATE cohort_member SET left_at = now() WHERE cohort_id = ? AND part = 'teaches'", cohort);
        assertThat(ines.get(address).status()).isEqualTo(404);
    }

    private void tried(UUID person, String skill, int day, String verdict) {
        UUID draw = UUID.randomUUID();
        Instant at = Instant.parse("2026-01-12T12:00:00Z").plus(day, ChronoUnit.DAYS);
        sql.change(
                """
                INSERT INTO skill_standing (person_id, skill, answers, right_answers, average, days, last_day, last_at,
                    last_verdict, wrong_in_row, right_in_row, offered, rung, run, first_day)
                VALUES (?, ?, 1, 1, 0.3, 1, '2026-01-12', ?, 'RIGHT', 0, 1, 1, 1, 0, '2026-01-12')
                ON CONFLICT DO NOTHING""",
                person,
                skill,
                at);
        sql.change(
                """
                INSERT INTO draw (id, person_id, exercise_id, version, skill, level, seed, drawn_at, finished_at)
                SELECT ?, ?, exercise_id, version, ?, 2, 1, ?, ? FROM exercise_version LIMIT 1""",
                draw,
                person,
                skill,
                at,
                at);
        sql.change(
                """
                INSERT INTO answer (draw_id, part, person_id, typed, read_value, read_unit, read_figures, verdict,
                    expected, hints, shown_at, answered_at, core_version)
                VALUES (?, 0, ?, '1', '1', '', '', ?, '1', 0, ?, ?, 'test')""",
                draw,
                person,
                verdict,
                at,
                at);
    }

    private UUID drawOf(UUID person) {
        return sql.first(
                        "SELECT draw_id FROM answer WHERE person_id = ? ORDER BY answered_at LIMIT 1",
                        row -> row.uuid("draw_id"),
                        person)
                .orElseThrow();
    }
}
