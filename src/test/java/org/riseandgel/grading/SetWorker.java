package org.riseandgel.grading;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import org.riseandgel.Browserless;
import org.riseandgel.SignedIn;
import org.riseandgel.core.quantity.Rational;
import org.riseandgel.exercise.DrawnChoice;
import org.riseandgel.exercise.DrawnExercise;
import org.riseandgel.exercise.DrawnNumbers;
import org.riseandgel.exercise.DrawnPart;

/** An apprentice at a browser who works a set and, unlike a real one, can look up the right answers. */
final class SetWorker {
    final UUID id;
    final Browserless browser;
    private final WorkStore works;
    private final PartViews views;

    SetWorker(UUID id, WorkStore works, PartViews views) {
        this.id = id;
        this.browser = SignedIn.asPerson(id);
        this.works = works;
        this.views = views;
    }

    /** Presses "Begin" and comes to a try. */
    UUID begin(UUID set) {
        Browserless.Answer answer = browser.post("/set-work/" + set + "/begin");
        if (!answer.location().startsWith("/set-work/tries/")) {
            throw new AssertionError("no try: " + answer);
        }
        return UUID.fromString(answer.location().substring("/set-work/tries/".length()));
    }

    Work work(UUID work) {
        return works.find(work).orElseThrow();
    }

    DrawnExercise drawn(UUID work, int number) {
        return views.drawn(work(work).item(number).orElseThrow());
    }

    String right(UUID work, int number, int part) {
        return right(drawn(work, number), part);
    }

    String wrong(UUID work, int number, int part) {
        return wrong(drawn(work, number), part);
    }

    static String right(DrawnExercise drawn, int part) {
        if (drawn instanceof DrawnChoice choice) {
            return choice.right();
        }
        DrawnPart asked = ((DrawnNumbers) drawn).part(part);
        return typed(asked.expected(), asked);
    }

    static String wrong(DrawnExercise drawn, int part) {
        if (drawn instanceof DrawnChoice choice) {
            return choice.wrong();
        }
        DrawnPart asked = ((DrawnNumbers) drawn).part(part);
        return typed(asked.expected().times(Rational.of(37, 10)).plus(Rational.of(7)), asked);
    }

    DrawnPart asked(UUID work, int number, int part) {
        return ((DrawnNumbers) drawn(work, number)).part(part);
    }

    private static String typed(Rational value, DrawnPart asked) {
        return (value.toDecimal(6).toPlainString() + " " + asked.part().unit().symbol()).strip();
    }

    /** Hands an answer in that was seen read back. */
    Browserless.Answer answer(UUID work, int number, int part, String typed) {
        return post(work, number, part, typed, typed);
    }

    Browserless.Answer post(UUID work, int number, int part, String typed, String echoed) {
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("part", "" + (part + 1));
        fields.put("answer", typed);
        fields.put("echoed", echoed);
        return browser.post("/set-work/tries/" + work + "/items/" + number, fields);
    }

    /** Answers all parts of all items, rightly but for one item. */
    void answerAll(UUID work, int wrongItem) {
        for (Work.Item item : work(work).items()) {
            for (int part = 0; part < views.parts(item); part++) {
                String typed = item.number() == wrongItem
                        ? wrong(work, item.number(), part)
                        : right(work, item.number(), part);
                Browserless.Answer answer = answer(work, item.number(), part, typed);
                if (answer.status() != 303) {
                    throw new AssertionError("not kept: " + answer);
                }
            }
        }
    }

    Browserless.Answer handIn(UUID work) {
        return browser.post("/set-work/tries/" + work + "/hand-in");
    }
}
