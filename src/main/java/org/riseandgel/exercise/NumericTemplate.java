package org.riseandgel.exercise;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.riseandgel.bench.Calculation;
import org.riseandgel.bench.Slip;
import org.riseandgel.core.quantity.Rational;
import org.riseandgel.core.quantity.Unit;

/**
 * An exercise that asks for numbers.
 *
 * @param draws the drawn values, in the order in which they are drawn
 * @param works the uses of calculations, in order
 * @param parts what is asked, in order, each answered once
 * @param slips the slips to look for besides those that every exercise looks for
 * @param givenSteps steps of the working that are shown before the first answer
 */
public record NumericTemplate(
        Head head,
        List<DrawRule> draws,
        List<WorkUse> works,
        List<Condition> conditions,
        List<Part> parts,
        List<Slip> slips,
        List<ValueRef.OfStep> givenSteps)
        implements ExerciseTemplate {
    public NumericTemplate {
        draws = List.copyOf(draws);
        works = List.copyOf(works);
        conditions = List.copyOf(conditions);
        parts = List.copyOf(parts);
        slips = List.copyOf(slips);
        givenSteps = List.copyOf(givenSteps);
    }

    @Override
    public ExerciseKind kind() {
        return ExerciseKind.NUMERIC;
    }

    /** A use of a calculation: its name in the exercise and where each input comes from. */
    public record WorkUse(String name, Calculation calculation, Map<String, InputSource> inputs) {
        public WorkUse {
            inputs = Collections.unmodifiableMap(new LinkedHashMap<>(inputs));
        }
    }

    /** Where an input of a calculation comes from. */
    public sealed interface InputSource {
        /** A drawn value. */
        record Drawn(String name) implements InputSource {}

        /** A result of an earlier work. */
        record Earlier(String work, String result) implements InputSource {}

        /** An option of a choice. */
        record Chosen(String option) implements InputSource {}

        /** A value that is the same in every draw. */
        record Fixed(BigDecimal value, Unit unit) implements InputSource {}
    }

    /** What must hold for a draw: a value within limits, ends included. */
    public record Condition(ValueRef value, Optional<Rational> atLeast, Optional<Rational> atMost, Unit unit) {}

    /**
     * One thing asked.
     *
     * @param unit the unit in which the expected value is shown and in which tolerance and readability count
     * @param readability of the instrument that would be used
     */
    public record Part(
            String id, String prompt, ValueRef.Worked of, Unit unit, Tolerance tolerance, Rational readability) {}

    /** The use of a calculation under that name. */
    public Optional<WorkUse> work(String name) {
        return works.stream().filter(work -> work.name().equals(name)).findFirst();
    }

    @Override
    public String toString() {
        return head.toString();
    }
}
