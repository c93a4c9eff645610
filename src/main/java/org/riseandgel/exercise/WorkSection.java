package org.riseandgel.exercise;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.riseandgel.bench.Calculation;
import org.riseandgel.bench.Catalogue;
import org.riseandgel.bench.Input;
import org.riseandgel.bench.Result;
import org.riseandgel.core.quantity.Unit;
import org.riseandgel.exercise.ExerciseTemplate.InputSource;
import org.riseandgel.exercise.ExerciseTemplate.WorkUse;

/** Reads which calculations are used, in which order, and what goes into each. */
final class WorkSection {
    private static final int MOST_WORKS = 8;
    private static final int LONGEST_NAME = 60;

    private final Catalogue catalogue;
    private final List<DrawRule> draws;
    private final List<WorkUse> works = new ArrayList<>();

    WorkSection(Catalogue catalogue, List<DrawRule> draws) {
        this.catalogue = catalogue;
        this.draws = draws;
    }

    List<WorkUse> read(Fields root) {
        root.need("work").flatMap(Field::group).ifPresent(group -> {
            if (group.names().isEmpty() || group.names().size() > MOST_WORKS) {
                group.problem("Uses %d calculations; use 1 to %d."
                        .formatted(group.names().size(), MOST_WORKS));
            }
            for (String name : group.names()) {
                group.find(name).ifPresent(field -> read(name, field));
            }
        });
        return works;
    }

    private void read(String name, Field field) {
        if (!DrawSection.NAME.matcher(name).matches()) {
            field.problem("“%s” is no name; begin with a small letter and use letters and digits.".formatted(name));
        }
        field.group().ifPresent(fields -> {
            fields.only("calculation", "inputs");
            calculation(fields).ifPresent(found -> works.add(new WorkUse(name, found, inputs(found, fields))));
        });
    }

    private Optional<Calculation> calculation(Fields fields) {
        Optional<Field> field = fields.need("calculation");
        return field.flatMap(f -> f.text(LONGEST_NAME)).flatMap(id -> {
            Optional<Calculation> found = catalogue.find(id);
            if (found.isEmpty()) {
                field.get()
                        .problem("“%s” is no calculation of the bench; there are %s."
                                .formatted(
                                        id,
                                        names(catalogue.all().stream()
                                                .map(Calculation::id)
                                                .toList())));
            }
            return found;
        });
    }

    private Map<String, InputSource> inputs(Calculation calculation, Fields work) {
        Map<String, InputSource> sources = new LinkedHashMap<>();
        Optional<Fields> group = work.need("inputs").flatMap(Field::group);
        group.ifPresent(inputs -> {
            for (String name : inputs.names()) {
                Field field = inputs.find(name).orElseThrow();
                Optional<Input> input = calculation.inputs().stream()
                        .filter(one -> one.name().equals(name))
                        .findFirst();
                if (input.isEmpty()) {
                    field.problem("“%s” is no input of %s; its inputs are %s."
                            .formatted(
                                    name,
                                    calculation.id(),
                                    names(calculation.inputs().stream()
                                            .map(Input::name)
                                            .toList())));
                }
                input.flatMap(known -> source(known, field)).ifPresent(source -> sources.put(name, source));
            }
            missing(calculation, inputs);
        });
        return sources;
    }

    private static void missing(Calculation calculation, Fields inputs) {
        for (Input input : calculation.inputs()) {
            boolean hasDefault = !(input instanceof Input.Measured measured) || measured.byDefault() != null;
            if (!hasDefault && !inputs.has(input.name())) {
                inputs.problem("“%s” is missing; %s needs it.".formatted(input.name(), calculation.id()));
            }
        }
    }

    private Optional<InputSource> source(Input input, Field field) {
        if (field.isSingle()) {
            return drawn(input, field);
        }
        return field.group().flatMap(fields -> {
            fields.only("result", "choice", "fixed", "unit");
            if (fields.has("choice")) {
                return chosen(input, fields);
            }
            if (input instanceof Input.Choice) {
                fields.problem("Is chosen from a list; write { choice: … }.");
                return Optional.empty();
            }
            return fields.has("result") ? earlier(input, fields) : fixed(input, fields);
        });
    }

    private Optional<InputSource> drawn(Input input, Field field) {
        Optional<String> name = field.text(LONGEST_NAME);
        if (input instanceof Input.Choice) {
            field.problem("Is chosen from a list; write { choice: … }.");
            return Optional.empty();
        }
        Optional<DrawRule> rule = name.flatMap(wanted ->
                draws.stream().filter(one -> one.name().equals(wanted)).findFirst());
        if (name.isPresent() && rule.isEmpty()) {
            field.problem("“%s” is not drawn; the drawn values are %s."
                    .formatted(
                            name.get(), names(draws.stream().map(DrawRule::name).toList())));
        }
        rule.ifPresent(known -> InputLimits.check(input, known.unit(), known.least(), known.most(), field));
        return rule.map(known -> new InputSource.Drawn(known.name()));
    }

    private static Optional<InputSource> chosen(Input input, Fields fields) {
        Field field = fields.find("choice").orElseThrow();
        if (!(input instanceof Input.Choice choice)) {
            field.problem("“%s” is measured, not chosen; write a drawn name, a result or a fixed value."
                    .formatted(input.name()));
            return Optional.empty();
        }
        List<String> options =
                choice.options().stream().map(Input.Option::value).toList();
        return field.text(LONGEST_NAME).flatMap(option -> {
            if (!options.contains(option)) {
                field.problem("“%s” cannot be chosen; the options are %s.".formatted(option, names(options)));
                return Optional.empty();
            }
            return Optional.of(new InputSource.Chosen(option));
        });
    }

    private Optional<InputSource> earlier(Input input, Fields fields) {
        Field field = fields.find("result").orElseThrow();
        return field.text(LONGEST_NAME).flatMap(text -> {
            Optional<ValueRef.OfResult> ref = ValueRef.parse(text)
                    .filter(ValueRef.OfResult.class::isInstance)
                    .map(ValueRef.OfResult.class::cast);
            Optional<Result> result = ref.flatMap(known -> References.result(works, known));
            if (result.isEmpty()) {
                field.problem("“%s” is no result of an earlier work; there are %s."
                        .formatted(text, names(References.results(works))));
                return Optional.empty();
            }
            InputLimits.checkKind(input, result.get().unit(), field);
            return Optional.of(
                    new InputSource.Earlier(ref.get().work(), ref.get().name()));
        });
    }

    private static Optional<InputSource> fixed(Input input, Fields fields) {
        Optional<BigDecimal> value = fields.need("fixed").flatMap(Field::number);
        Optional<Unit> unit = fields.need("unit").flatMap(Field::unit);
        if (value.isEmpty() || unit.isEmpty()) {
            return Optional.empty();
        }
        InputLimits.check(
                input,
                unit.get(),
                value.get(),
                value.get(),
                fields.find("fixed").orElseThrow());
        return Optional.of(new InputSource.Fixed(value.get(), unit.get()));
    }

    private static String names(List<String> names) {
        return names.isEmpty() ? "none" : String.join(", ", names);
    }
}
