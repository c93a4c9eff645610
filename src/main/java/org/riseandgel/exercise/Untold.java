package org.riseandgel.exercise;

import java.math.BigDecimal;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.riseandgel.bench.Input;
import org.riseandgel.bench.Outcome;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Quantity;
import org.riseandgel.exercise.NumericTemplate.InputSource;
import org.riseandgel.exercise.NumericTemplate.WorkUse;

/**
 * Whether an answer depends on a number that the person is never told: an input left at the bench's own default, or a
 * fixed value that no text names. Found by nudging the number and looking whether an answer moves. A default of zero says
 * that there is none of it, which need not be told.
 */
final class Untold {
    private static final BigDecimal NUDGE = new BigDecimal("1.01");
    private static final double HAIR = 1e-9;

    private final DrawnNumbers drawn;
    private final Drawer drawer;

    Untold(DrawnNumbers drawn, Drawer drawer) {
        this.drawn = drawn;
        this.drawer = drawer;
    }

    void check(Fields root) {
        for (WorkUse work : drawn.template().works()) {
            for (Input input : work.calculation().inputs()) {
                if (input instanceof Input.Measured measured && isLeftAtDefault(work, measured)) {
                    checkDefault(root, work, measured);
                }
            }
        }
        checkFixed(root);
    }

    private static boolean isLeftAtDefault(WorkUse work, Input.Measured input) {
        return !work.inputs().containsKey(input.name()) && input.byDefault() != 0;
    }

    private void checkDefault(Fields root, WorkUse work, Input.Measured input) {
        BigDecimal nudged = BigDecimal.valueOf(input.byDefault()).multiply(NUDGE);
        if (matters(worksWith(work, input, nudged), drawn.values())) {
            root.find("work")
                    .flatMap(works -> works.inner(work.name()))
                    .flatMap(one -> one.inner("inputs"))
                    .orElseThrow()
                    .problem("“%s” is missing, and the answer depends on it.".formatted(input.name()));
        }
    }

    private List<WorkUse> worksWith(WorkUse changed, Input.Measured input, BigDecimal value) {
        Map<String, InputSource> inputs = new LinkedHashMap<>(changed.inputs());
        inputs.put(input.name(), new InputSource.Fixed(value, input.unit()));
        return drawn.template().works().stream()
                .map(work -> work == changed ? new WorkUse(work.name(), work.calculation(), inputs) : work)
                .toList();
    }

    private void checkFixed(Fields root) {
        Set<String> told = told();
        for (DrawRule rule : drawn.template().draws()) {
            Map<String, DrawnValue> nudged = new LinkedHashMap<>(drawn.values());
            nudged.computeIfPresent(
                    rule.name(),
                    (name, value) -> new DrawnValue(name, value.number().multiply(NUDGE), value.unit()));
            if (!told.contains(rule.name()) && matters(drawn.template().works(), nudged)) {
                root.find("draw")
                        .flatMap(draw -> draw.inner(rule.name()))
                        .orElseThrow()
                        .problem("Is never told, but the answer depends on it; write {%s} in the story or a prompt."
                                .formatted(rule.name()));
            }
        }
    }

    private Set<String> told() {
        Set<String> told = new HashSet<>(NamedText.names(drawn.template().story()));
        drawn.template().parts().forEach(part -> told.addAll(NamedText.names(part.prompt())));
        return told;
    }

    /** A number that leads out of range when nudged cannot be judged, and gets the benefit of the doubt. */
    private boolean matters(List<WorkUse> works, Map<String, DrawnValue> values) {
        try {
            Map<String, Outcome> changed = drawer.outcomes(works, values);
            return drawn.template().parts().stream().anyMatch(part -> moves(part.of(), changed));
        } catch (OutOfRangeException beyond) {
            return false;
        }
    }

    private boolean moves(ValueRef.Worked ref, Map<String, Outcome> changed) {
        Quantity before = PartMaker.value(ref, drawn.outcomes().get(ref.work())).orElseThrow();
        Quantity after = PartMaker.value(ref, changed.get(ref.work())).orElseThrow();
        return Math.abs(after.inBase() - before.inBase()) > HAIR * Math.abs(before.inBase());
    }
}
