package org.riseandgel.sitting;

import java.math.BigInteger;
import java.time.Instant;
import java.util.List;
import java.util.function.Function;
import org.riseandgel.bench.Slip;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.Figures;
import org.riseandgel.core.quantity.NumberReader;
import org.riseandgel.core.quantity.Rational;
import org.riseandgel.core.quantity.Reading;
import org.riseandgel.core.quantity.ReadingOutcome;
import org.riseandgel.core.quantity.Unit;
import org.riseandgel.exercise.CoreVersion;
import org.riseandgel.exercise.DrawnExercise;
import org.riseandgel.exercise.Feedback;
import org.riseandgel.exercise.FeedbackView;
import org.riseandgel.exercise.Graded;
import org.riseandgel.exercise.Grader;
import org.riseandgel.exercise.LeftOpen;

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
        Reading reading = NumberReader.of(mark).read(typed);
        String question = Grader.check(drawn, PART, reading).orElse("");
        return new ReadAnswer(
                typed,
                reading.ok() ? reading.value().toString() : "",
                reading.typedUnit().map(Unit::code).orElse(""),
                reading.ok() ? reading.figures().toString() : "",
                question);
    }

    /** What a saved answer was read as, in words. */
    static String words(DrawnExercise drawn, StoredItem item, DecimalMark mark) {
        return reading(item).echo(mark);
    }

    /** The judgement on an item. */
    static ItemMark mark(DrawnExercise drawn, StoredItem item, DecimalMark mark) {
        if (!item.isAnswered()) {
            return ItemMark.leftOpen(LeftOpen.of(drawn, PART, mark).expected());
        }
        Graded graded = Grader.grade(drawn, PART, reading(item));
        return new ItemMark(
                graded.verdict().name(),
                graded.slip().map(Slip::id).orElse(null),
                Feedback.of(drawn, PART, graded, mark).expected());
    }

    /** The explanation of an item, answered or left open. */
    static FeedbackView feedback(DrawnExercise drawn, StoredItem item, DecimalMark mark) {
        return item.isAnswered()
                ? Feedback.of(drawn, PART, Grader.grade(drawn, PART, reading(item)), mark)
                : LeftOpen.of(drawn, PART, mark);
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

    private static Reading reading(StoredItem item) {
        String[] fraction = item.readValue().split("/", 2);
        Rational value = new Rational(
                new BigInteger(fraction[0]), fraction.length == 1 ? BigInteger.ONE : new BigInteger(fraction[1]));
        return new Reading(
                item.typed(),
                ReadingOutcome.OK,
                value,
                Unit.byCode(item.readUnit()).orElse(null),
                item.readFigures().equals(Figures.EXACT.toString()) ? Figures.EXACT : Figures.UNSTATED,
                "",
                List.of());
    }
}
