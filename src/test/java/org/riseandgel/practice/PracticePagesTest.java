package org.riseandgel.practice;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.riseandgel.Browserless;
import org.riseandgel.SignedIn;
import org.riseandgel.account.DemoPeople;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.Rational;
import org.riseandgel.course.CourseContent;
import org.riseandgel.exercise.DrawnPart;
import org.riseandgel.platform.sql.Sql;

/** Practising through the pages, over HTTP, without a script. */
@QuarkusTest
class PracticePagesTest {
    private static final String SKILL = "stick-marks-straight";

    @Inject
    DrawStore store;

    @Inject
    Drawings drawings;

    @Inject
    Sql sql;

    @Inject
    CourseContent content;

    Learner anouk;
    long seed = 20_270_301;

    @BeforeEach
    void signIn() {
        anouk = new Learner(DemoPeople.ANOUK, store, drawings);
    }

    /** One bare exercise whose answer is a length in mm, with other numbers each time. */
    private UUID beaker() {
        return anouk.drawOf(
                content.exercises().find("stick-marks-straight-beaker").orElseThrow(), seed++);
    }

    /** One exercise of several parts. */
    private UUID inParts() {
        return anouk.drawOf(
                content.exercises().find("stick-marks-straight-first-stick").orElseThrow(), seed++);
    }

    private Standing standing() {
        return sql.first(
                        """
                        SELECT answers, right_answers, average, days, last_day, last_at, wrong_in_row, right_in_row,
                               offered, rung, run, first_day, mastered_on, return_step, due_on, right_on_day, missed
                        FROM skill_standing WHERE person_id = ? AND skill = ?""",
                        DrawRows::standing,
                        anouk.id,
                        SKILL)
                .orElse(Standing.NONE);
    }

    private int answers(UUID draw) {
        return anouk.stored(draw).answers().size();
    }

    @Test
    void aRightAnswerIsStoredAndExplained() {
        UUID draw = beaker();
        Standing before = standing();
        String typed = anouk.right(draw);

        Browserless.Answer done = anouk.answer(draw, 0, typed);

        assertThat(done.status()).isEqualTo(303);
        assertThat(done.location()).isEqualTo("/practice/draws/" + draw + "?part=1");
        Document page = done.follow().page();
        assertThat(page.select(".verdict.is-right .verdict-word").text()).isEqualTo("Right");
        assertThat(page.select(".verdict use").attr("href")).endsWith("#right");
        assertThat(page.select(".verdict .facts").text()).contains(typed).contains("within");
        assertThat(page.select(".working li")).isNotEmpty();
        assertThat(page.title()).startsWith("Right").doesNotContain("Error");
        StoredAnswer stored = anouk.stored(draw).answer(0).orElseThrow();
        assertThat(stored.typed()).isEqualTo(typed);
        assertThat(stored.verdict()).isEqualTo("RIGHT");
        assertThat(standing().answers()).isEqualTo(before.answers() + 1);
        assertThat(standing().rightAnswers()).isEqualTo(before.rightAnswers() + 1);
    }

    @Test
    void aSlipIsNamedAndIsNoFormError() {
        UUID draw = beaker();
        DrawnPart part = anouk.openPart(draw);
        var wrong = part.wrongAnswers().get(0);
        Rational middle = wrong.band().low().plus(wrong.band().high()).times(Rational.of(1, 2));
        String typed = anouk.inUnit(draw, part.part().unit().fromBase(middle));

        Document page = anouk.answer(draw, 0, typed).follow().page();

        assertThat(page.select(".verdict.is-slip")).hasSize(1);
        assertThat(page.select(".verdict-word").text())
                .isEqualTo("Slip: " + wrong.slip().title());
        assertThat(page.select(".verdict").text()).contains(wrong.line());
        assertThat(page.select(".error-summary")).isEmpty();
        assertThat(page.title()).doesNotContain("Error");
        assertThat(anouk.stored(draw).answer(0).orElseThrow().slip())
                .isEqualTo(wrong.slip().id());
    }

    @Test
    void theRightNumberInAnotherUnitIsToldAsThat() {
        UUID draw = beaker();
        String number = anouk.openPart(draw).expected().toDecimal(6).toPlainString();

        Document page = anouk.answer(draw, 0, number + " cm").follow().page();

        assertThat(page.select(".verdict-word").text()).isEqualTo("Right number, wrong unit");
        assertThat(page.select(".verdict use").attr("href")).endsWith("#unit");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "   ",
                "twelve",
                "12..5 mm",
                "1,234 mm",
                "12",
                "12 g",
                "12 furlongs",
                "NaN",
                "1e99 mm",
                "<b>5</b>"
            })
    void whatCannotBeReadIsAskedAgainAndCostsNothing(String typed) {
        UUID draw = beaker();
        Standing before = standing();

        for (String echoed : List.of("", typed)) {
            Browserless.Answer asked = anouk.post(draw, 0, typed, echoed);

            assertThat(asked.status()).as(asked.toString()).isEqualTo(422);
            Document page = asked.page();
            assertThat(page.title()).startsWith("Error: ");
            assertThat(page.select("main > *").first().hasClass("error-summary"))
                    .isTrue();
            assertThat(page.select(".error-summary a").attr("href")).isEqualTo("#answer");
            assertThat(page.select("#answer-error").text())
                    .isNotEmpty()
                    .isEqualTo(page.select(".error-summary a").text());
            assertThat(page.select("input#answer").attr("value")).isEqualTo(typed);
            assertThat(page.select("input[name=sure][checked]").attr("value")).isEqualTo("fairly");
            assertThat(page.select("input#answer").attr("aria-describedby")).contains("answer-error");
        }
        assertThat(answers(draw)).isZero();
        assertThat(standing()).isEqualTo(before);
    }

    @Test
    void withoutScriptTheAnswerIsReadBackBeforeItIsFinal() {
        UUID draw = beaker();

        Browserless.Answer echo = anouk.post(draw, 0, "1 1/2 in", "");

        assertThat(echo.status()).isEqualTo(200);
        assertThat(answers(draw)).isZero();
        Document page = echo.page();
        assertThat(page.select("#echo").text()).contains("1 1/2 in").contains("38.1 mm");
        assertThat(page.select("button[type=submit]").eachText()).contains("Hand in this answer", "Change it");
        assertThat(page.select("input#answer").attr("value")).isEqualTo("1 1/2 in");
        assertThat(page.select("input#echoed").attr("value")).isEqualTo("1 1/2 in");

        Browserless.Answer changed = anouk.browser.post(
                "/practice/draws/" + draw + "/answer",
                Map.of("part", "1", "answer", "1 1/2 in", "echoed", "1 1/2 in", "change", "yes", "sure", "sure"));
        assertThat(changed.status()).isEqualTo(200);
        assertThat(changed.page().select("input#answer").attr("value")).isEqualTo("1 1/2 in");
        assertThat(changed.page().select("input#echoed").attr("value")).isEmpty();
        assertThat(answers(draw)).isZero();

        assertThat(anouk.post(draw, 0, "2 in", "1 1/2 in").status())
                .as("another text than the one that was read back")
                .isEqualTo(200);
        assertThat(answers(draw)).isZero();

        assertThat(anouk.post(draw, 0, "1 1/2 in", "1 1/2 in").status()).isEqualTo(303);
        assertThat(answers(draw)).isEqualTo(1);
    }

    @Test
    void thePieceThatReadsBackSaysWhatIsReadAndNothingElse() {
        UUID draw = beaker();
        Browserless.Answer clear =
                anouk.browser.post("/practice/draws/" + draw + "/read", Map.of("part", "1", "answer", "1 1/2 in"));
        assertThat(clear.status()).isEqualTo(200);
        assertThat(clear.body()).doesNotContain("<html");
        assertThat(clear.page().text()).isEqualTo("We read 1 1/2 in (38.1 mm).");
        assertThat(clear.page().select("#echoed").attr("value")).isEqualTo("1 1/2 in");

        Browserless.Answer unclear =
                anouk.browser.post("/practice/draws/" + draw + "/read", Map.of("part", "1", "answer", "12"));
        assertThat(unclear.page().text()).contains("unit");
        assertThat(unclear.page().select("#echoed").attr("value")).isEmpty();
        assertThat(answers(draw)).isZero();
    }

    @Test
    void partsAreAnsweredInOrderAndALaterOneIsNotShownBefore() {
        UUID draw = inParts();
        String later = anouk.drawn(draw).prompt(1, DecimalMark.POINT);
        assertThat(anouk.page(draw).body()).doesNotContain(later);

        Browserless.Answer early = anouk.answer(draw, 1, "12 mm");

        assertThat(early.status()).isEqualTo(303);
        assertThat(early.location()).isEqualTo("/practice/draws/" + draw);
        assertThat(answers(draw)).isZero();
        assertThat(anouk.browser.get("/practice/draws/" + draw + "?part=2").status())
                .isEqualTo(404);

        Document verdict = anouk.answer(draw, 0, anouk.right(draw)).follow().page();
        assertThat(verdict.select("a.button").eachText()).contains("Next part");
        assertThat(anouk.page(draw).page().select("label[for=answer]").text()).isEqualTo(later);
    }

    @Test
    void aWrongAnswerLeadsOnToTheNextPart() {
        UUID draw = inParts();
        String unit = anouk.openPart(draw).part().unit().symbol();
        Document verdict = anouk.answer(draw, 0, "987654 " + unit).follow().page();
        assertThat(verdict.select(".verdict")).hasSize(1);
        assertThat(verdict.select("a.button").eachText()).contains("Next part");
        assertThat(anouk.page(draw).page().select("input[name=part]").attr("value"))
                .isEqualTo("2");
    }

    @Test
    void anOpenDrawIsTakenUpAgainInsteadOfDrawingEasierNumbers() {
        UUID draw = anouk.freshDraw(SKILL, 2);
        assertThat(anouk.draw(SKILL, 2)).isEqualTo(draw);
        assertThat(anouk.draw(SKILL, 1)).isNotEqualTo(draw);
        anouk.finish(draw);
        assertThat(anouk.draw(SKILL, 2)).isNotEqualTo(draw);
    }

    @Test
    void theSameExerciseNeverComesTwiceInARow() {
        String last = "";
        for (int i = 0; i < 8; i++) {
            UUID draw = anouk.freshDraw("expansion", 2);
            String exercise = anouk.stored(draw).exercise();
            assertThat(exercise).isNotEqualTo(last);
            last = exercise;
        }
    }

    @Test
    void aHintKeepsWhatWasTypedAndTheAnswerDoesNotCount() {
        UUID draw = beaker();
        Standing before = standing();
        Browserless.Answer hint = anouk.browser.post(
                "/practice/draws/" + draw + "/hint", Map.of("part", "1", "answer", "12,5 mm", "sure", "guess"));
        assertThat(hint.status()).isEqualTo(303);
        Document page = hint.follow().page();
        assertThat(page.select("section[aria-labelledby=hints] li")).hasSize(1);
        assertThat(page.select("input#answer").attr("value")).isEqualTo("12,5 mm");
        assertThat(page.select("input[name=sure][checked]").attr("value")).isEqualTo("guess");

        for (int i = 0; i < 10; i++) {
            anouk.browser.post("/practice/draws/" + draw + "/hint");
        }
        int hints = anouk.drawn(draw).template().hints().size();
        assertThat(anouk.stored(draw).hintsShown()).isEqualTo(hints);

        anouk.finish(draw);
        assertThat(anouk.stored(draw).answer(0).orElseThrow().hints()).isEqualTo(hints);
        assertThat(standing().average()).isLessThanOrEqualTo(before.average());
        assertThat(standing().rightAnswers()).isGreaterThan(before.rightAnswers());
    }

    @Test
    void anotherPersonsDrawIsNotThere() {
        UUID draw = beaker();
        Browserless other = SignedIn.asPerson(DemoPeople.ESME);
        String address = "/practice/draws/" + draw;
        assertThat(other.get(address).status()).isEqualTo(404);
        assertThat(other.get(address + "?part=1").status()).isEqualTo(404);
        Map<String, String> fields = Map.of("part", "1", "answer", "12 mm", "echoed", "12 mm");
        assertThat(other.post(address + "/answer", fields).status()).isEqualTo(404);
        assertThat(other.post(address + "/read", fields).status()).isEqualTo(404);
        assertThat(other.post(address + "/hint", fields).status()).isEqualTo(404);
        assertThat(anouk.browser.get("/practice/draws/" + UUID.randomUUID()).status())
                .isEqualTo(404);
        assertThat(anouk.browser.get("/practice/draws/not-a-draw").status()).isEqualTo(404);
        assertThat(answers(draw)).isZero();
        assertThat(anouk.stored(draw).hintsShown()).isZero();
    }

    @Test
    void anAnswerIsOnTheInstructorsBoardAtOnce() {
        Browserless ines = SignedIn.as("instructor");
        String before = row(ines);
        UUID draw = beaker();
        assertThat(row(ines)).isEqualTo(before);
        anouk.answer(draw, 0, anouk.right(draw));
        assertThat(row(ines)).isNotEqualTo(before);
    }

    private static String row(Browserless instructor) {
        return instructor.get("/cohorts/" + DemoPeople.FIRST_COHORT).page().select("table.board tbody tr").stream()
                .map(row -> row.text())
                .filter(row -> row.startsWith("Anouk Sorrel"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void skillsAndLevelsThatAreNotThereAreNotFound() {
        assertThat(anouk.browser.post("/practice/juggling/draw").status()).isEqualTo(404);
        assertThat(anouk.browser
                        .post("/practice/" + SKILL + "/draw", Map.of("level", "9"))
                        .status())
                .isEqualTo(404);
    }

    @Test
    void everyFormNeedsItsToken() {
        UUID draw = beaker();
        Map<String, String> fields = Map.of("part", "1", "answer", "12 mm", "echoed", "12 mm");
        for (String path : List.of(
                "/practice/draws/" + draw + "/answer",
                "/practice/draws/" + draw + "/hint",
                "/practice/draws/" + draw + "/read",
                "/practice/draws/" + draw + "/estimate",
                "/practice/draws/" + draw + "/looked-at",
                "/practice/mixed",
                "/practice/examples/stick-marks-straight-beaker/look-up",
                "/practice/examples/stick-marks-straight-beaker/seen",
                "/practice/" + SKILL + "/draw")) {
            assertThat(anouk.browser.postWithoutToken(path, fields).status()).isBetween(400, 499);
        }
        assertThat(answers(draw)).isZero();
        assertThat(anouk.stored(draw).hintsShown()).isZero();
    }

    @Test
    void theListsShowSkillsAndOwnAnswers() {
        UUID draw = beaker();
        String exercise = anouk.drawn(draw).template().title();
        anouk.finish(draw);
        Document skills = anouk.browser.get("/practice").page();
        assertThat(skills.select("#" + SKILL + " .state").text()).isNotEmpty();
        assertThat(skills.select("#" + SKILL + " .state use").attr("href")).contains("/img/icons.svg#");
        Document answers = anouk.browser.get("/practice/answers?skill=" + SKILL).page();
        assertThat(answers.select("tbody tr").first().text()).contains(exercise).contains("Right");
        String link = answers.select("tbody tr").first().select("a").attr("href");
        assertThat(anouk.browser.get(link).page().select(".verdict")).hasSize(1);
        assertThat(anouk.browser.get("/practice/answers?page=9999").page().select(".empty"))
                .hasSize(1);
        Document today = anouk.browser.get("/today").page();
        assertThat(today.select("section[aria-labelledby=next] h2").text()).isNotEmpty();
        assertThat(today.select("section[aria-labelledby=last] li")).isNotEmpty();
    }
}
