package org.riseandgel.practice;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.riseandgel.Browserless;
import org.riseandgel.account.DemoPeople;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.course.CourseContent;
import org.riseandgel.exercise.Answers;
import org.riseandgel.exercise.ExerciseTemplate;
import org.riseandgel.exercise.ReadAnswer;
import org.riseandgel.platform.sql.Sql;

/** Whatever is pressed twice, sent at once, or sent again: a part has one stored verdict and moves the standing once. */
@QuarkusTest
class OneVerdictTest {
    private static final int AT_ONCE = 16;

    @Inject
    DrawStore store;

    @Inject
    Drawings drawings;

    @Inject
    CourseContent content;

    @Inject
    Sql sql;

    Learner bastian;
    ExerciseTemplate beaker;

    @BeforeEach
    void signIn() {
        bastian = new Learner(DemoPeople.BASTIAN, store, drawings);
        beaker = content.exercises().find("stick-marks-straight-beaker").orElseThrow();
    }

    private int standingAnswers(String skill) {
        return sql.first(
                        "SELECT answers FROM skill_standing WHERE person_id = ? AND skill = ?",
                        row -> row.number("answers"),
                        bastian.id,
                        skill)
                .orElse(0);
    }

    private int answerRows() {
        return sql.first("SELECT count(*) AS n FROM answer WHERE person_id = ?", row -> row.number("n"), bastian.id)
                .orElseThrow();
    }

    @Test
    void aSecondPressAndAReplayShowTheFirstVerdict() {
        UUID draw = bastian.drawOf(beaker, 1);
        String wrong = "1 mm";
        String right = bastian.right(draw);
        int before = standingAnswers(beaker.skill());

        Browserless.Answer first = bastian.answer(draw, 0, wrong);
        Browserless.Answer second = bastian.answer(draw, 0, wrong);
        Browserless.Answer better = bastian.answer(draw, 0, right);
        Browserless.Answer unread = bastian.answer(draw, 0, "no number at all");

        for (Browserless.Answer answer : List.of(first, second, better, unread)) {
            assertThat(answer.status()).isEqualTo(303);
            assertThat(answer.location()).isEqualTo(first.location());
            assertThat(answer.follow().page().select(".verdict.is-wrong, .verdict.is-slip"))
                    .hasSize(1);
        }
        assertThat(bastian.stored(draw).answers()).hasSize(1);
        assertThat(bastian.stored(draw).answers().get(0).typed()).isEqualTo(wrong);
        assertThat(standingAnswers(beaker.skill())).isEqualTo(before + 1);
    }

    @Test
    void sixteenPressesAtOnceStoreOneAnswerAndMoveTheStandingOnce() throws Exception {
        UUID draw = bastian.drawOf(beaker, 2);
        int rows = answerRows();
        int before = standingAnswers(beaker.skill());
        String right = bastian.right(draw);
        bastian.browser.token();

        List<Browserless.Answer> answers = atOnce(i -> bastian.answer(draw, 0, i % 2 == 0 ? right : "1 mm"));

        assertThat(answers).allMatch(answer -> answer.status() == 303);
        Set<String> shown = new LinkedHashSet<>();
        answers.forEach(answer ->
                shown.add(answer.follow().page().select(".verdict-word").text()));
        assertThat(shown).hasSize(1);
        assertThat(answerRows()).isEqualTo(rows + 1);
        assertThat(standingAnswers(beaker.skill())).isEqualTo(before + 1);
    }

    @Test
    void answersInTwoTabsToTwoDrawsOfOneSkillBothCount() throws Exception {
        int before = standingAnswers(beaker.skill());
        List<UUID> draws = List.of(
                bastian.freshDraw(beaker.skill(), 1),
                bastian.freshDraw(beaker.skill(), 2),
                bastian.freshDraw(beaker.skill(), 3));
        int finished = standingAnswers(beaker.skill()) - before;
        List<String> typed = draws.stream().map(bastian::right).toList();

        atOnce(i -> bastian.answer(draws.get(i % 3), 0, typed.get(i % 3)));

        assertThat(standingAnswers(beaker.skill())).isEqualTo(before + finished + 3);
        assertThat(draws).allMatch(draw -> bastian.stored(draw).answers().size() == 1);
    }

    @Test
    void sixteenPressesOnPractiseOpenOneDraw() throws Exception {
        bastian.finish(bastian.draw("weighing", 2));
        List<UUID> draws = atOnce(i -> bastian.draw("weighing", 2));
        assertThat(new LinkedHashSet<>(draws)).hasSize(1);
    }

    @Test
    void theStandingInTheDatabaseIsTheRuleAppliedToTheAnswers() {
        UUID draw = bastian.drawOf(
                content.exercises().find("stick-marks-straight-first-stick").orElseThrow(), 3);
        Standing expected = bastian.stored(draw).standing();
        while (!bastian.stored(draw).isFinished()) {
            int part = bastian.stored(draw).nextPart();
            bastian.answer(draw, part, bastian.right(draw));
            StoredDraw after = bastian.stored(draw);
            Mark.Ending ending = after.isFinished() ? Mark.Ending.RIGHT : Mark.Ending.NOT_YET;
            StoredAnswer answer = after.answers().get(part);
            expected = expected.after(new Mark(
                    true,
                    false,
                    answer.answeredAt(),
                    after.standing().lastDay(),
                    new Mark.Draw(after.rung(), ending, 1)));
            assertThat(after.standing()).isEqualTo(expected);
        }
    }

    @Test
    void nothingIsStoredForAStandingThatHasMovedOn() {
        UUID draw = bastian.drawOf(beaker, 4);
        StoredDraw stale = bastian.stored(draw);
        UUID other = bastian.freshDraw(beaker.skill(), 3);
        bastian.answer(other, 0, bastian.right(other));
        ReadAnswer read = Answers.read(bastian.drawn(draw), 0, bastian.right(draw), DecimalMark.POINT);
        Marking.At at = new Marking.At(Confidence.SURE, Instant.now(), DecimalMark.POINT, ZoneOffset.UTC, 1);

        assertThat(store.store(Marking.marked(stale, bastian.drawn(draw), read, at)))
                .isFalse();

        assertThat(bastian.stored(draw).answers()).isEmpty();
        assertThat(bastian.stored(draw).isFinished()).isFalse();
    }

    private interface Press<T> {
        T press(int number) throws Exception;
    }

    private static <T> List<T> atOnce(Press<T> press) throws Exception {
        ExecutorService hands = Executors.newFixedThreadPool(AT_ONCE);
        try {
            CountDownLatch ready = new CountDownLatch(AT_ONCE);
            List<Future<T>> pressed = new ArrayList<>();
            for (int i = 0; i < AT_ONCE; i++) {
                int number = i;
                pressed.add(hands.submit(() -> {
                    ready.countDown();
                    ready.await();
                    return press.press(number);
                }));
            }
            List<T> results = new ArrayList<>();
            for (Future<T> one : pressed) {
                results.add(one.get());
            }
            return results;
        } finally {
            hands.shutdownNow();
        }
    }
}
