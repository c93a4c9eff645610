package org.riseandgel.exercise;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.riseandgel.bench.Outcome;
import org.riseandgel.core.quantity.DecimalMark;

/**
 * A numeric exercise with its numbers.
 *
 * @param seed the seed that gives just these numbers at the first try; store this one
 * @param values the drawn values by name
 * @param outcomes the runs of the calculations by the name of the work
 */
public record DrawnNumbers(
        NumericTemplate template,
        long seed,
        Map<String, DrawnValue> values,
        Map<String, Outcome> outcomes,
        List<DrawnPart> parts)
        implements DrawnExercise {
    public DrawnNumbers {
        values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
        outcomes = Collections.unmodifiableMap(new LinkedHashMap<>(outcomes));
        parts = List.copyOf(parts);
    }

    @Override
    public int partCount() {
        return parts.size();
    }

    /** The part with that number, counted from 0. */
    public DrawnPart part(int part) {
        return parts.get(part);
    }

    /** The story with its numbers. */
    @Override
    public String story(DecimalMark mark) {
        return filled(template.story(), mark);
    }

    /** The question of a part with its numbers. */
    @Override
    public String prompt(int part, DecimalMark mark) {
        return filled(part(part).part().prompt(), mark);
    }

    /** The hints with their numbers. */
    @Override
    public List<String> hints(DecimalMark mark) {
        return template.hints().stream().map(hint -> filled(hint, mark)).toList();
    }

    private String filled(String text, DecimalMark mark) {
        return NamedText.fill(text, name -> values.get(name).text(mark));
    }

    /** Names the exercise only: seed and answers must not slip into a log or a page. */
    @Override
    public String toString() {
        return "a draw of " + template;
    }
}
