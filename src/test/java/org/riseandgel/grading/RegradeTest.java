package org.riseandgel.grading;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.runtime.StartupEvent;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.riseandgel.Browserless;
import org.riseandgel.Browserless.Answer;
import org.riseandgel.SignedIn;
import org.riseandgel.account.DemoPeople;
import org.riseandgel.core.quantity.Rational;
import org.riseandgel.course.CourseContent;
import org.riseandgel.exercise.DrawnPart;
import org.riseandgel.exercise.ExerciseTemplate;
import org.riseandgel.platform.sql.Sql;

/**
 * An exercise went out with a tolerance that was too small and was mended since. Nobody changes the course while tests
 * run, so what went out is an older text, and the mended one is the course's.
 */
@QuarkusTest
class RegradeTest {
    private static final String EXERCISE = "weighing-beak-from-total";
    private static final String MENDED = "{ abs: 0.2,";
    private static final String TOO_SMALL = "{ abs: 0.05,";

    @Inject
    SetStore sets;

    @Inject
    WorkStore works;

    @Inject
    RegradeStore jobs;

    @Inject
    Regrades regrades;

    @Inject
    RegradeWorker worker;

    @Inject
    PartViews views;

    @Inject
    CourseContent content;

    @Inject
    Clock clock;

    @Inject
    Sql sql;

    private Browserless ines;
    private SetWorker anouk;
    private SetWorker bastian;
    private SetWorker celeste;
    private UUID set;
    private UUID close;
    private UUID corrected;

    @BeforeEach
    void threeHandIn() {
        ines = SignedIn.as("instructor");
        set = out();
        anouk = new SetWorker(DemoPeople.ANOUK, works, views);
        bastian = new SetWorker(DemoPeople.BASTIAN, works, views);
        celeste = new SetWorker(DemoPeople.CELESTE, works, views);
        close = handIn(anouk, Rational.of("0.15"));
        handIn(bastian, Rational.ZERO);
        corrected = handIn(celeste, Rational.of("0.15"));
        SetDrafter.correct(ines, mark(corrected), "30", "Seen by hand");
    }

    private UUID out() {
        ExerciseTemplate mended = content.exercises().find(EXERCISE).orElseThrow();
        assertThat(mended.file().text()).contains(MENDED);
        String version = "old-" + UUID.randomUUID();
        Instant now = clock.instant().truncatedTo(ChronoUnit.MICROS);
        UUID id = UUID.randomUUID();
        Line line = Line.exercise(UUID.randomUUID(), 1, EXERCISE, 2, "");
        LocalDateTime local = LocalDateTime.ofInstant(now, ZoneOffset.UTC);
        GradedSet draft = new GradedSet(
                id,
                DemoPeople.FIRST_COHORT,
                "Too small a tolerance",
                "",
                SetState.DRAFT,
                1,
                1,
                Policy.EACH,
                local.minusDays(1),
                local.plusDays(1),
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                List.of(line));
        sets.add(draft, DemoPeople.INSTRUCTOR, now);
        sql.change(
                "INSERT INTO exercise_version (exercise_id, version, source_text, first_used) VALUES (?, ?, ?, ?)",
                EXERCISE,
                version,
                mended.file().text().replace(MENDED, TOO_SMALL),
                now);
        sql.change(
                "INSERT INTO graded_pool (line_id, exercise_id, version, skill) VALUES (?, ?, ?, 'weighing')",
                line.id(),
                EXERCISE,
                version);
        sets.publish(
                draft,
                new SetStore.Publication(ZoneOffset.UTC, now.minus(1, ChronoUnit.DAYS), now.plus(1, ChronoUnit.DAYS)),
                DemoPeople.INSTRUCTOR,
                now);
        return id;
    }

    /** Answers the first part so far from right, in grams, and the second rightly. */
    private UUID handIn(SetWorker person, Rational off) {
        UUID work = person.begin(set);
        DrawnPart asked = person.asked(work, 1, 0);
        person.answer(work, 1, 0, asked.expected().plus(off).toDecimal(4).toPlainString() + " g");
        person.answer(work, 1, 1, person.right(work, 1, 1));
        person.handIn(work);
        return work;
    }

    private String mark(UUID work) {
        return "/graded-sets/" + set + "/works/" + work + "/items/1/parts/1";
    }

    private int credit(UUID work) {
        return works.find(work).orElseThrow().item(1).orElseThrow().credit(0);
    }

    private String address() {
        return "/graded-sets/" + set + "/judge-again/exercises/" + EXERCISE;
    }

    private String version() {
        return content.exercises().find(EXERCISE).orElseThrow().version();
    }

    /** Looks at a job until it is done, as somebody who waits does. */
    private RegradeStore.Job waited(UUID job) {
        for (int i = 0; i < 600; i++) {
            Optional<RegradeStore.Job> now = jobs.find(job).filter(one -> !one.isAtWork());
            if (now.isPresent()) {
                return now.get();
            }
            ines.get("/graded-sets/" + set + "/judge-again/jobs/" + job + "/progress");
        }
        throw new AssertionError("the job does not end");
    }

    @Test
    void whatWouldChangeIsShownThenDoneThenUndone() {
        assertThat(credit(close)).isZero();
        assertThat(ines.get("/graded-sets/" + set + "/judge-again").body()).contains(address());
        Answer preview = ines.get(address());
        assertThat(preview.page().text()).contains("1 of 6 answers would be marked otherwise");
        assertThat(preview.page().select("tbody tr").eachText())
                .anyMatch(row -> row.startsWith("Anouk Sorrel 1 1") && row.endsWith("Right, 100 %"))
                .anyMatch(row -> row.startsWith("Celeste Marrow 1 1") && row.endsWith("corrected by hand"));
        assertThat(credit(close)).isZero();
        Answer noReason = ines.post(address(), Map.of("version", version(), "reason", ""));
        assertThat(noReason.status()).isEqualTo(422);

        Answer begun = ines.post(address(), Map.of("version", version(), "reason", "The tolerance was too small"));
        assertThat(begun.status()).as(begun.toString()).isEqualTo(303);
        UUID job = UUID.fromString(begun.location().replaceAll(".*/", ""));
        RegradeStore.Job done = waited(job);
        assertThat(done.state()).isEqualTo(RegradeStore.State.DONE);
        assertThat(done.changed()).isEqualTo(1);
        assertThat(done.leftAlone()).isEqualTo(1);
        assertThat(credit(close)).isEqualTo(100);
        assertThat(credit(corrected)).isEqualTo(30);
        assertThat(anouk.browser
                        .get("/set-work/tries/" + close + "/items/1")
                        .page()
                        .text())
                .contains("The tolerance was too small");
        assertThat(ines.get(mark(close)).page().text()).contains("Judged again by the mended exercise: counts 100 %");

        String at = "/graded-sets/" + set + "/judge-again/jobs/" + job;
        assertThat(ines.get(at).page().select("progress").attr("value")).isEqualTo("6");
        assertThat(ines.post(at + "/undo").status()).isEqualTo(303);
        assertThat(waited(job).state()).isEqualTo(RegradeStore.State.UNDONE);
        assertThat(credit(close)).isZero();
        assertThat(ines.get(mark(close)).page().text()).contains("That was undone: counts 0 %");
        assertThat(ines.post(at + "/undo").status()).isEqualTo(409);
    }

    @Test
    void aJobThatARestartLeftHalfDoneGoesOn() {
        UUID job = regrades.start(find(), EXERCISE, version(), "Half way", DemoPeople.INSTRUCTOR)
                .orElseThrow();
        QuarkusTransaction.requiringNew()
                .call(() -> regrades.step(jobs.find(job).orElseThrow(), 2));
        RegradeStore.Job half = jobs.find(job).orElseThrow();
        assertThat(half.done()).isEqualTo(2);
        assertThat(half.isAtWork()).isTrue();
        assertThat(ines.post(address(), Map.of("version", version(), "reason", "Another one"))
                        .status())
                .as("one job at a time")
                .isEqualTo(409);
        worker.goOn(new StartupEvent());
        assertThat(waited(job).state()).isEqualTo(RegradeStore.State.DONE);
        assertThat(credit(close)).isEqualTo(100);
    }

    @Test
    void whatSomebodyCorrectedSinceIsKeptWhenAJobIsUndone() {
        UUID job = regrades.start(find(), EXERCISE, version(), "Mended", DemoPeople.INSTRUCTOR)
                .orElseThrow();
        worker.goOn(job);
        waited(job);
        SetDrafter.correct(ines, mark(close), "80", "By hand after it");
        ines.post("/graded-sets/" + set + "/judge-again/jobs/" + job + "/undo");
        assertThat(waited(job).state()).isEqualTo(RegradeStore.State.UNDONE);
        assertThat(credit(close)).isEqualTo(80);
    }

    @Test
    void anInstructorOfAnotherCohortFindsNoneOfIt() {
        UUID job = regrades.start(find(), EXERCISE, version(), "Mended", DemoPeople.INSTRUCTOR)
                .orElseThrow();
        worker.goOn(job);
        waited(job);
        UUID cohort = UUID.randomUUID();
        sql.change("INSERT INTO cohort (id, name, created_at) VALUES (?, ?, now())", cohort, "Foreign " + cohort);
        sql.change("UPDATE graded_set SET cohort_id = ? WHERE id = ?", cohort, set);
        String at = "/graded-sets/" + set + "/judge-again";
        for (String path : List.of(at, address(), at + "/jobs/" + job, at + "/jobs/" + job + "/progress")) {
            assertThat(ines.get(path).status()).as(path).isEqualTo(404);
        }
        assertThat(ines.post(at + "/jobs/" + job + "/undo").status()).isEqualTo(404);
        assertThat(ines.post(address(), Map.of("version", version(), "reason", "none of mine"))
                        .status())
                .isEqualTo(404);
    }

    private GradedSet find() {
        return sets.find(set).orElseThrow();
    }
}
