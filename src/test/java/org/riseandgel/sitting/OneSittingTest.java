package org.riseandgel.sitting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.IntFunction;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.riseandgel.Browserless.Answer;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.course.CourseContent;
import org.riseandgel.exercise.CoreVersion;
import org.riseandgel.exercise.DrawnExercise;
import org.riseandgel.exercise.ExerciseTemplate;
import org.riseandgel.platform.sql.Sql;

/** Whatever is pressed twice or sent at once there is one sitting and one result, which nothing changes any more. */
@QuarkusTest
class OneSittingTest {
    private static final String CHECK = "whipping-check";
    private static final int AT_ONCE = 12;

    @Inject
    SittingStore store;

    @Inject
    KeptDraws draws;

    @Inject
    Sittings sittings;

    @Inject
    CourseContent content;

    @Inject
    Sql sql;

    Sitter sitter;

    @BeforeEach
    void signIn() {
        sitter = Sitter.fresh(store, draws);
    }

    @Test
    void pressedAtOnceManyTimesOneSittingIsBegun() throws Exception {
        sitter.browser.token();
        Set<String> places = new HashSet<>();
        for (Answer answer : atOnce(i -> sitter.tryToBegin(CHECK))) {
            assertThat(answer.status()).as(answer.toString()).isEqualTo(303);
            places.add(answer.location());
        }
        assertThat(places).hasSize(1);
        assertThat(store.of(sitter.id)).hasSize(1);
    }

    @Test
    void handedInAtOnceManyTimesThereIsOneResult() throws Exception {
        UUID sitting = sitter.begin(CHECK);
        sitter.answerAll(sitting, 1);
        assertThat(atOnce(i -> sitter.handIn(sitting))).allMatch(answer -> answer.status() == 303);
        StoredSitting first = sitter.stored(sitting);
        assertThat(sitter.handIn(sitting).status()).isEqualTo(303);
        assertThat(sitter.stored(sitting)).isEqualTo(first);
        assertThat(first.result().right()).isEqualTo(4);
    }

    @Test
    void anAnswerSavedWhileTheOtherTabHandsInIsJudgedOrRefusedButNeverBetween() throws Exception {
        UUID sitting = sitter.begin(CHECK);
        sitter.answerAll(sitting, 5);
        String right = sitter.right(sitting, 1);
        atOnce(i -> i == AT_ONCE / 2 ? sitter.handIn(sitting) : sitter.save(sitting, 1, right));
        StoredItem item = sitter.stored(sitting).item(1).orElseThrow();
        assertThat(item.isRight()).isEqualTo(item.typed().equals(right));
        assertThat(saves(sitting)).isEqualTo(item.saves());
    }

    private int saves(UUID sitting) {
        return sql.first(
                        "SELECT count(*) AS n FROM sitting_save WHERE sitting_id = ? AND number = 1",
                        row -> row.number("n"),
                        sitting)
                .orElseThrow();
    }

    /** CR-19: an evidence row keeps its digests, pool and rules, and stored answers give the same verdicts again. */
    @Test
    void cr19_judgedAgainStoredAnswersGiveTheSameVerdicts() {
        sitter.sit(CHECK, 2);
        List<StoredSitting> all =
                sql.list("SELECT DISTINCT person_id FROM sitting", row -> row.uuid("person_id")).stream()
                        .flatMap(person -> store.of(person).stream())
                        .filter(sitting -> !sitting.isOpen())
                        .toList();
        assertThat(all).hasSizeGreaterThan(3);
        for (StoredSitting stored : all) {
            for (DecimalMark mark : DecimalMark.values()) {
                StoredSitting again = Marking.handedIn(
                        stored, draws::of, mark, stored.result().handedInAt());
                assertThat(again.result()).isEqualTo(stored.result());
                assertThat(again.items())
                        .extracting(StoredItem::verdict)
                        .isEqualTo(
                                stored.items().stream().map(StoredItem::verdict).toList());
            }
        }
    }

    @Test
    void aHandedInSittingCannotBeChangedInTheDatabase() {
        UUID sitting = sitter.sit(CHECK, 3);
        for (String change : List.of(
                "UPDATE sitting SET passed = true, right_items = 5 WHERE id = ?",
                "UPDATE sitting SET handed_in_at = NULL WHERE id = ?",
                "UPDATE sitting_item SET verdict = 'RIGHT' WHERE sitting_id = ?",
                "UPDATE sitting_item SET typed = '1 g' WHERE sitting_id = ?",
                "INSERT INTO sitting_save (sitting_id, number, nth, saved_at) VALUES (?, 1, 99, now())")) {
            assertThatThrownBy(() -> sql.change(change, sitting))
                    .as(change)
                    .hasStackTraceContaining("a sitting that was handed in is never changed");
        }
        for (String change : List.of(
                "DELETE FROM sitting WHERE id = ?",
                "DELETE FROM sitting_item WHERE sitting_id = ?",
                "DELETE FROM sitting_save WHERE sitting_id = ?",
                "UPDATE sitting SET person_id = id WHERE id = ?")) {
            assertThatThrownBy(() -> sql.change(change, sitting)).as(change).isNotNull();
        }
    }

    @Test
    void anExerciseThatWasChangedSinceIsAskedAsItWasDrawn() {
        ExerciseTemplate now = content.exercises().find("weighing-drum-label").orElseThrow();
        String before = now.file().text().replaceFirst("title: .*", "title: As it was");
        ExerciseTemplate old = content.exercises().parse(now.file().path(), before);
        DrawnExercise drawn = content.exercises().drawer().draw(old, 5);
        sql.change(
                "INSERT INTO exercise_version (exercise_id, version, source_text, first_used) VALUES (?, ?, ?, now()) ON CONFLICT DO NOTHING",
                old.id(),
                old.version(),
                before);
        StoredItem item = StoredItem.fresh(1, old.id(), old.version(), old.skill(), false, drawn.seed());
        assertThat(draws.of(item).template().title()).isEqualTo("As it was");
        assertThat(draws.of(item)).isEqualTo(drawn);
    }

    @Test
    void othersReadWhatWasHandedInTheLatestFirst() {
        UUID sitting = sitter.begin(CHECK);
        assertThat(sittings.of(sitter.id, CHECK)).isEmpty();
        assertThat(sittings.askedNow(sitter.id))
                .containsExactlyInAnyOrderElementsOf(sitter.stored(sitting).items().stream()
                        .map(StoredItem::exercise)
                        .toList());
        sitter.answerAll(sitting, 1);
        sitter.handIn(sitting);
        assertThat(sittings.askedNow(sitter.id)).isEmpty();
        SittingRecord record = sittings.of(sitter.id, CHECK).get(0);
        assertThat(record.id()).isEqualTo(sitting);
        assertThat(record.items()).isEqualTo(5);
        assertThat(record.right()).isEqualTo(4);
        assertThat(record.passed()).isTrue();
        assertThat(record.poolVersion())
                .isEqualTo(sittings.currentPoolVersion(CHECK))
                .hasSize(64);
        assertThat(record.contentHash()).hasSize(64);
        assertThat(record.coreVersion()).isEqualTo(CoreVersion.CURRENT);
        assertThat(record.handedInAt()).isAfterOrEqualTo(record.startedAt());
        assertThat(sittings.currentPoolVersion("no-such-check")).isEmpty();
    }

    private static List<Answer> atOnce(IntFunction<Answer> press) throws Exception {
        ExecutorService people = Executors.newFixedThreadPool(AT_ONCE);
        try {
            List<Callable<Answer>> presses = new ArrayList<>();
            for (int i = 0; i < AT_ONCE; i++) {
                int number = i;
                presses.add(() -> press.apply(number));
            }
            List<Answer> answers = new ArrayList<>();
            for (Future<Answer> answer : people.invokeAll(presses)) {
                answers.add(answer.get());
            }
            return answers;
        } finally {
            people.shutdownNow();
        }
    }
}
