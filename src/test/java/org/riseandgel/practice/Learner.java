package org.riseandgel.practice;

import java.time.Instant;
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
import org.riseandgel.exercise.ExerciseTemplate;

/** A person at a browser who practises, and who, unlike a real one, can look up the right answers. */
final class Learner {
    final UUID id;
    final Browserless browser;
    private final DrawStore store;
    private final Drawings drawings;

    Learner(UUID id, DrawStore store, Drawings drawings) {
        this(id, SignedIn.asPerson(id), store, drawings);
    }

    Learner(UUID id, Browserless browser, DrawStore store, Drawings drawings) {
        this.id = id;
        this.browser = browser;
        this.store = store;
        this.drawings = drawings;
    }

    /** Presses "Practise" and comes to a draw, past the worked examples that have to be seen first. */
    UUID draw(String skill, int level) {
        Browserless.Answer answer = browser.post("/practice/" + skill + "/draw", Map.of("level", "" + level));
        while (answer.status() == 303 && answer.location().startsWith("/practice/examples/")) {
            answer = browser.post(answer.location() + "/seen");
        }
        if (answer.status() != 303 || !answer.location().startsWith("/practice/draws/")) {
            throw new AssertionError("no draw: " + answer);
        }
        return UUID.fromString(answer.location().substring("/practice/draws/".length()));
    }

    /** A draw of which nothing is answered yet. */
    UUID freshDraw(String skill, int level) {
        finish(draw(skill, level));
        return draw(skill, level);
    }

    /** A draw of one exercise with the numbers of one seed, as if chance had chosen them. */
    UUID drawOf(ExerciseTemplate template, long seed) {
        return drawOf(template, seed, StoredDraw.Setting.PLAIN);
    }

    UUID drawOf(ExerciseTemplate template, long seed, StoredDraw.Setting setting) {
        StoredDraw draw = StoredDraw.fresh(id, drawings.fresh(template, seed), Instant.now(), setting);
        store.open(id, template.skill(), template.level()).ifPresent(open -> store.close(id, open, Instant.now()));
        return store.add(draw, template.file().text()).orElseThrow();
    }

    /** Answers whatever is open of a draw rightly. */
    void finish(UUID draw) {
        while (!stored(draw).isFinished()) {
            int part = stored(draw).nextPart();
            Browserless.Answer taken = answer(draw, part, right(draw));
            if (taken.status() != 303) {
                throw new AssertionError("part " + (part + 1) + " was not taken: " + taken);
            }
        }
    }

    StoredDraw stored(UUID draw) {
        return store.load(id, draw).orElseThrow();
    }

    DrawnExercise drawn(UUID draw) {
        return drawings.of(stored(draw)).orElseThrow();
    }

    DrawnPart openPart(UUID draw) {
        return ((DrawnNumbers) drawn(draw)).part(stored(draw).nextPart());
    }

    /** The right answer to the open part with its unit. */
    String right(UUID draw) {
        if (drawn(draw) instanceof DrawnChoice choice) {
            return choice.right();
        }
        return inUnit(draw, openPart(draw).expected());
    }

    /** A number in the unit of the open part. */
    String inUnit(UUID draw, Rational number) {
        return (number.toDecimal(6).toPlainString() + " "
                        + openPart(draw).part().unit().symbol())
                .strip();
    }

    /** Hands an answer in that was seen read back. */
    Browserless.Answer answer(UUID draw, int part, String typed) {
        return post(draw, part, typed, typed);
    }

    Browserless.Answer post(UUID draw, int part, String typed, String echoed) {
        return post(draw, part, typed, echoed, "fairly");
    }

    Browserless.Answer post(UUID draw, int part, String typed, String echoed, String sure) {
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("sure", sure);
        fields.put("part", "" + (part + 1));
        fields.put("answer", typed);
        fields.put("echoed", echoed);
        return browser.post("/practice/draws/" + draw + "/answer", fields);
    }

    Browserless.Answer page(UUID draw) {
        return browser.get("/practice/draws/" + draw);
    }
}
