package org.riseandgel.exercise;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.riseandgel.core.quantity.Unit;

/** Reads how each value is drawn. */
final class DrawSection {
    static final Pattern NAME = Pattern.compile("[a-z][A-Za-z0-9]{0,29}");
    private static final int MOST_VALUES = 20;
    private static final int MOST_CHOICES = 100;
    private static final int FINEST_GRID = 10_000;

    private DrawSection() {}

    static void read(Fields root, Known known) {
        root.need("draw").flatMap(Field::group).ifPresent(draw -> {
            if (draw.names().isEmpty() || draw.names().size() > MOST_VALUES) {
                draw.problem(
                        "Draws %d values; draw 1 to %d.".formatted(draw.names().size(), MOST_VALUES));
            }
            for (String name : draw.names()) {
                known.addDraw(name, rule(name, draw.find(name).orElseThrow()));
            }
        });
    }

    private static Optional<DrawRule> rule(String name, Field field) {
        if (!NAME.matcher(name).matches()) {
            field.problem("“%s” is no name; begin with a small letter and use letters and digits.".formatted(name));
        }
        return field.group().flatMap(fields -> rule(name, fields));
    }

    private static Optional<DrawRule> rule(String name, Fields fields) {
        fields.only("from", "to", "step", "choices", "fixed", "unit");
        Optional<Unit> unit = fields.need("unit").flatMap(Field::unit);
        int ways = (fields.has("choices") ? 1 : 0) + (fields.has("fixed") ? 1 : 0) + (hasRange(fields) ? 1 : 0);
        if (ways != 1) {
            fields.problem("Give one of: from, to and step; choices; fixed.");
            return Optional.empty();
        }
        if (hasRange(fields)) {
            return range(name, unit, fields);
        }
        return fields.has("choices") ? choices(name, unit, fields) : fixed(name, unit, fields);
    }

    private static boolean hasRange(Fields fields) {
        return fields.has("from") || fields.has("to") || fields.has("step");
    }

    private static Optional<DrawRule> range(String name, Optional<Unit> unit, Fields fields) {
        Optional<BigDecimal> from = fields.need("from").flatMap(Field::number);
        Optional<BigDecimal> to = fields.need("to").flatMap(Field::number);
        Optional<BigDecimal> step = fields.need("step").flatMap(Field::number);
        if (from.isEmpty() || to.isEmpty() || step.isEmpty()) {
            return Optional.empty();
        }
        BigDecimal span = to.get().subtract(from.get());
        if (span.signum() <= 0) {
            fields.problem("Runs from %s to %s; “from” must be less than “to”.".formatted(from.get(), to.get()));
            return Optional.empty();
        }
        if (step.get().signum() <= 0) {
            fields.find("step").orElseThrow().problem("Is %s; it must be more than 0.".formatted(step.get()));
            return Optional.empty();
        }
        if (span.remainder(step.get()).signum() != 0) {
            fields.find("step")
                    .orElseThrow()
                    .problem("Steps of %s from %s do not meet %s; choose them so that the last step ends there."
                            .formatted(step.get(), from.get(), to.get()));
            return Optional.empty();
        }
        if (span.divide(step.get()).compareTo(BigDecimal.valueOf(FINEST_GRID)) > 0) {
            fields.find("step")
                    .orElseThrow()
                    .problem("Makes more than %d values; use a coarser step.".formatted(FINEST_GRID));
            return Optional.empty();
        }
        return unit.map(u -> new DrawRule.Range(name, u, from.get(), to.get(), step.get()));
    }

    private static Optional<DrawRule> choices(String name, Optional<Unit> unit, Fields fields) {
        Field list = fields.find("choices").orElseThrow();
        List<BigDecimal> values = new ArrayList<>();
        Set<BigDecimal> seen = new HashSet<>();
        for (Field item : list.list(MOST_CHOICES)) {
            item.number().ifPresent(number -> {
                if (!seen.add(number.stripTrailingZeros())) {
                    item.problem("%s stands in the list twice.".formatted(number));
                }
                values.add(number);
            });
        }
        return values.isEmpty() ? Optional.empty() : unit.map(u -> new DrawRule.Choices(name, u, values));
    }

    private static Optional<DrawRule> fixed(String name, Optional<Unit> unit, Fields fields) {
        Optional<BigDecimal> value = fields.find("fixed").flatMap(Field::number);
        return value.flatMap(number -> unit.map(u -> new DrawRule.Fixed(name, u, number)));
    }
}
