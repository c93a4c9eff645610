package org.riseandgel.sitting;

import java.time.Instant;
import java.util.List;
import java.util.function.Function;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.exercise.Answers;
import org.riseandgel.exercise.CoreVersion;
import org.riseandgel.exercise.DrawnExercise;
import org.riseandgel.exercise.FeedbackView;
import org.riseandgel.exercise.Judged;
import org.riseandgel.exercise.LeftOpen;
import org.riseandgel.exercise.ReadAnswer;

/**
 * Reads and judges the answers of a sitting. A pure function of the draws and of what was saved: no clock, no chance, so
 * stored answers are judged the same at any time.
 */
final class Marking {
    /** A check asks only exercises that ask one thing. */
    private static final int PART = 0;

    private Marking() {}

    /** Reads an answer; what cannot be judged comes back with a question, which tells nothing about how close it is. */
    static ReadAnswer read(DrawnExercise drawn, String typed, DecimalMark mark) {
        return Answers.read(drawn, PART, typed, mark);
    }

    /** What a saved answer was read as, in words. */
    static String words(DrawnExercise drawn, StoredItem item, DecimalMark mark) {
        return Answers.words(drawn, item.read(), mark);
    }

    /** The judgement on an item. */
    static ItemMark mark(DrawnExercise drawn, StoredItem item, DecimalMark mark) {
        if (!item.isAnswered()) {
            return ItemMark.leftOpen(LeftOpen.of(drawn, PART, mark).expected());
        }
        Judged judged = judged(drawn, item, mark);
        return new ItemMark(
                judged.verdict().name(),
                judged.slip().orElse(null),
                judged.feedback().expected());
    }

    /** The explanation of an item, answered or left open. */
    static FeedbackView feedback(DrawnExercise drawn, StoredItem item, DecimalMark mark) {
        return item.isAnswered() ? judged(drawn, item, mark).feedback() : LeftOpen.of(drawn, PART, mark);
    }

    private static Judged judged(DrawnExercise drawn, StoredItem item, DecimalMark mark) {
        return Answers.judge(drawn, PART, item.read(), mark);
    }

    /** The whole sitting with its verdicts and its result. */
    static StoredSitting handedIn(
            StoredSitting sitting, Function<StoredItem, DrawnExercise> draws, DecimalMark mark, Instant now) {
        List<StoredItem> items = sitting.items().stream()
                .map(item -> item.marked(mark(draws.apply(item), item, mark)))
                .toList();
        int right = (int) items.stream().filter(StoredItem::isRight).count();
        int criticalWrong = (int) items.stream()
                .filter(item -> item.critical() && !item.isRight())
                .count();
        StoredSitting.Result result = new StoredSitting.Result(
                now.isBefore(sitting.startedAt()) ? sitting.startedAt() : now,
                right,
                criticalWrong,
                sitting.pass().passes(right, criticalWrong),
                Digests.content(items),
                CoreVersion.CURRENT);
        return sitting.with(items, result);
    }
}
