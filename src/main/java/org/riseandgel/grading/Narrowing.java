package org.riseandgel.grading;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.riseandgel.exercise.DrawRule;
import org.riseandgel.exercise.ExerciseTemplate;
import org.riseandgel.exercise.NumericTemplate;

/**
 * Narrower ranges for the drawn values of an exercise. Only values that the exercise itself could draw are left; steps
 * and lists stay as they are.
 */
record Narrowing(Map<String, Span> spans) {
    static final Narrowing NONE = new Narrowing(Map.of());

    Narrowing {
        spans = Collections.unmodifiableMap(new LinkedHashMap<>(spans));
    }

    /** From and to, ends included, in the unit of the drawn value. */
    record Span(BigDecimal from, BigDecimal to) {
        boolean holds(BigDecimal value) {
            return from.compareTo(value) <= 0 && value.compareTo(to) <= 0;
        }
    }

    /** From its stored form: name, from and to with spaces between, one value a line. */
    static Narrowing parse(String text) {
        Map<String, Span> spans = new LinkedHashMap<>();
        text.lines()
                .map(line -> line.split(" "))
                .forEach(words -> spans.put(words[0], new Span(new BigDecimal(words[1]), new BigDecimal(words[2]))));
        return new Narrowing(spans);
    }

    /** The stored form. */
    String text() {
        List<String> lines = new ArrayList<>();
        spans.forEach(
                (name, span) -> lines.add(name + " " + span.from.toPlainString() + " " + span.to.toPlainString()));
        return String.join("\n", lines);
    }

    Optional<Span> of(String name) {
        return Optional.ofNullable(spans.get(name));
    }

    /** The values that are left of a rule. */
    static List<BigDecimal> left(DrawRule rule, Span span) {
        return IntStream.range(0, rule.count())
                .mapToObj(rule::at)
                .filter(span::holds)
                .toList();
    }

    /**
     * The exercise with these ranges; an exercise without numbers stays as it is.
     *
     * @throws IllegalArgumentException when nothing is left of a value, which a checked narrowing never brings about
     */
    ExerciseTemplate applied(ExerciseTemplate template) {
        if (spans.isEmpty() || !(template instanceof NumericTemplate numbers)) {
            return template;
        }
        return new NumericTemplate(
                numbers.head(),
                numbers.draws().stream().map(this::narrowed).toList(),
                numbers.works(),
                numbers.conditions(),
                numbers.parts(),
                numbers.slips(),
                numbers.givenSteps());
    }

    private DrawRule narrowed(DrawRule rule) {
        Span span = spans.get(rule.name());
        if (span == null || rule instanceof DrawRule.Fixed) {
            return rule;
        }
        List<BigDecimal> left = left(rule, span);
        if (left.isEmpty()) {
            throw new IllegalArgumentException("nothing is left of " + rule.name());
        }
        return rule instanceof DrawRule.Range range
                ? new DrawRule.Range(range.name(), range.unit(), left.get(0), left.get(left.size() - 1), range.step())
                : new DrawRule.Choices(rule.name(), rule.unit(), left);
    }
}
