package org.riseandgel.exercise;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.riseandgel.bench.Outcome;
import org.riseandgel.bench.QuantityText;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.exercise.NumericTemplate.InputSource;

/** The solved steps of a draw that lead to a value, and not one beyond it. */
final class Working {
    private Working() {}

    /** The steps to a value: those of the earlier works it rests on, then its own work's up to the value. */
    static List<Outcome.Step> upTo(DrawnNumbers drawn, ValueRef.Worked value) {
        Set<String> needed = new LinkedHashSet<>();
        collect(drawn.template(), value.work(), needed);
        List<Outcome.Step> steps = new ArrayList<>();
        for (NumericTemplate.WorkUse work : drawn.template().works()) {
            if (needed.contains(work.name()) && !work.name().equals(value.work())) {
                steps.addAll(drawn.outcomes().get(work.name()).steps());
            }
        }
        steps.addAll(own(drawn.outcomes().get(value.work()), value));
        return steps;
    }

    /** The lines for people, in their own decimal mark. */
    static List<WorkingLine> lines(List<Outcome.Step> steps, DecimalMark mark) {
        QuantityText text = QuantityText.of(mark);
        return steps.stream()
                .map(step -> new WorkingLine(
                        step.label(),
                        step.formula(),
                        text.fill(step.numbers(), step.in()),
                        text.of(step.value(), step.unit())))
                .toList();
    }

    /** A step by its place. */
    static Optional<Outcome.Step> step(DrawnNumbers drawn, ValueRef.OfStep ref) {
        return drawn.outcomes().get(ref.work()).step(ref.name());
    }

    /** A step that gives a result bears the result's name, so both are found alike. */
    private static List<Outcome.Step> own(Outcome outcome, ValueRef.Worked value) {
        List<Outcome.Step> steps = new ArrayList<>();
        for (Outcome.Step step : outcome.steps()) {
            steps.add(step);
            if (step.id().equals(value.name())) {
                break;
            }
        }
        return steps;
    }

    private static void collect(NumericTemplate template, String name, Set<String> needed) {
        needed.add(name);
        for (InputSource source : template.work(name).orElseThrow().inputs().values()) {
            if (source instanceof InputSource.Earlier earlier) {
                collect(template, earlier.work(), needed);
            }
        }
    }
}
