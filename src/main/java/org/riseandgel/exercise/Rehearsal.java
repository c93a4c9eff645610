package org.riseandgel.exercise;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.riseandgel.bench.Outcome;
import org.riseandgel.bench.Slip;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Quantity;

/**
 * Draws a freshly read exercise a few times to find what the file alone does not show: steps that the working does not
 * have, units of the wrong kind, slips that never happen, shown steps that give an answer away, and exercises that hardly
 * ever can be drawn.
 */
final class Rehearsal {
    /** One good draw in so many tries; a template that fails this would also fail people. */
    static final int MOST_TRIES = 200;

    private static final long FIRST_SEED = 1;

    private final NumericTemplate template;
    private final Drawer drawer;
    private final Fields root;

    private Rehearsal(NumericTemplate template, Drawer drawer, Fields root) {
        this.template = template;
        this.drawer = drawer;
        this.root = root;
    }

    /** Notes what is wrong at the fields it is wrong in. */
    static void check(NumericTemplate template, Drawer drawer, Fields root, Problems problems) {
        Rehearsal rehearsal = new Rehearsal(template, drawer, root);
        Optional<Map<String, Outcome>> outcomes = rehearsal.firstPossible();
        outcomes.ifPresent(rehearsal::references);
        if (problems.none()) {
            rehearsal.draw();
        }
    }

    private Optional<Map<String, Outcome>> firstPossible() {
        SplitMix seeds = new SplitMix(FIRST_SEED);
        OutOfRangeException last = null;
        for (int i = 0; i < MOST_TRIES; i++) {
            try {
                return Optional.of(drawer.outcomes(template.works(), Drawer.values(template, seeds.next())));
            } catch (OutOfRangeException impossible) {
                last = impossible;
            }
        }
        at("draw", "Of %d draws none is physically possible: %s.".formatted(MOST_TRIES, last.getMessage()));
        return Optional.empty();
    }

    private void references(Map<String, Outcome> outcomes) {
        for (int i = 0; i < template.parts().size(); i++) {
            NumericTemplate.Part part = template.parts().get(i);
            Field field = item("ask", i).orElseThrow();
            value(part.of(), outcomes, field.inner("of").orElseThrow())
                    .filter(value -> value.kind() != part.unit().kind())
                    .ifPresent(value -> field.inner("unit")
                            .orElseThrow()
                            .problem("%s is a unit of %s, but %s is %s."
                                    .formatted(
                                            part.unit().code(),
                                            part.unit().kind().words(),
                                            part.of(),
                                            value.kind().one())));
        }
        for (int i = 0; i < template.givenSteps().size(); i++) {
            value(template.givenSteps().get(i), outcomes, item("given-steps", i).orElseThrow());
        }
        for (int i = 0; i < template.conditions().size(); i++) {
            condition(
                    template.conditions().get(i),
                    outcomes,
                    item("conditions", i).orElseThrow());
        }
    }

    private static void condition(NumericTemplate.Condition condition, Map<String, Outcome> outcomes, Field field) {
        if (condition.value() instanceof ValueRef.Worked worked) {
            value(worked, outcomes, field.inner("value").orElseThrow())
                    .filter(value -> value.kind() != condition.unit().kind())
                    .ifPresent(value -> field.inner("unit")
                            .orElseThrow()
                            .problem("%s is a unit of %s, but the value is %s."
                                    .formatted(
                                            condition.unit().code(),
                                            condition.unit().kind().words(),
                                            value.kind().one())));
        }
    }

    private static Optional<Quantity> value(ValueRef.Worked ref, Map<String, Outcome> outcomes, Field field) {
        Outcome outcome = outcomes.get(ref.work());
        Optional<Quantity> value = PartMaker.value(ref, outcome);
        if (value.isEmpty()) {
            List<String> steps = outcome.steps().stream().map(Outcome.Step::id).toList();
            field.problem("“%s” is no step of the working of %s; its steps are %s."
                    .formatted(ref.name(), ref.work(), String.join(", ", steps)));
        }
        return value;
    }

    private void draw() {
        try {
            DrawnNumbers drawn = drawer.draw(template, FIRST_SEED, MOST_TRIES);
            slips(drawn);
            new Untold(drawn, drawer).check(root);
            Disclosure.check(
                    drawn,
                    (list, index, message) -> item(list, index).orElseThrow().problem(message));
        } catch (UndrawableException undrawable) {
            at("draw", undrawable.getMessage() + " Widen what is drawn, or narrow the tolerance.");
        }
    }

    private void slips(DrawnNumbers drawn) {
        Set<Slip> met = EnumSet.noneOf(Slip.class);
        Set<Slip> possible = EnumSet.noneOf(Slip.class);
        for (DrawnPart part : drawn.parts()) {
            part.wrongAnswers().forEach(wrong -> met.add(wrong.slip()));
            drawn
                    .outcomes()
                    .get(part.part().of().work())
                    .slipsOf(part.part().of().name())
                    .stream()
                    .map(Outcome.SlipAnswer::slip)
                    .filter(slip -> slip != Slip.ROUNDED_EARLY)
                    .forEach(possible::add);
        }
        for (int i = 0; i < template.slips().size(); i++) {
            Slip slip = template.slips().get(i);
            if (!met.contains(slip)) {
                item("slips", i)
                        .orElseThrow()
                        .problem("“%s” cannot happen in what is asked; what can happen is %s."
                                .formatted(slip.id(), SlipNames.of(possible)));
            }
        }
    }

    private Optional<Field> item(String list, int index) {
        List<Field> items = new ArrayList<>(root.find(list).orElseThrow().items());
        return Optional.of(items.get(index));
    }

    private void at(String name, String message) {
        root.find(name).orElseThrow().problem(message);
    }
}
