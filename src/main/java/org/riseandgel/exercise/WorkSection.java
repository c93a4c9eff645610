package org.riseandgel.exercise;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.riseandgel.bench.Calculation;
import org.riseandgel.bench.Catalogue;
import org.riseandgel.bench.Input;
import org.riseandgel.exercise.NumericTemplate.InputSource;
import org.riseandgel.exercise.NumericTemplate.WorkUse;

/** Reads which calculations are used, in which order, and what goes into each. */
final class WorkSection {
    private static final int MOST_WORKS = 8;
    private static final int LONGEST_NAME = 60;

    private final Catalogue catalogue;
    private final Known known;

    WorkSection(Catalogue catalogue, Known known) {
        this.catalogue = catalogue;
        this.known = known;
    }

    void read(Fields root) {
        root.need("work").flatMap(Field::group).ifPresent(group -> {
            if (group.names().isEmpty() || group.names().size() > MOST_WORKS) {
                group.problem("Uses %d calculations; use 1 to %d."
                        .formatted(group.names().size(), MOST_WORKS));
            }
            for (String name : group.names()) {
                known.addWork(name, work(name, group.find(name).orElseThrow()));
            }
        });
    }

    private Optional<WorkUse> work(String name, Field field) {
        if (!DrawSection.NAME.matcher(name).matches()) {
            field.problem("“%s” is no name; begin with a small letter and use letters and digits.".formatted(name));
        }
        return field.group().flatMap(fields -> {
            fields.only("calculation", "inputs");
            return calculation(fields).map(found -> new WorkUse(name, found, inputs(found, fields)));
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
                                        Known.words(catalogue.all().stream()
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
                                    Known.words(calculation.inputs().stream()
                                            .map(Input::name)
                                            .toList())));
                }
                input.flatMap(found -> new SourceReader(known, found).read(field))
                        .ifPresent(source -> sources.put(name, source));
            }
            missing(calculation, inputs);
        });
        return sources;
    }

    private static void missing(Calculation calculation, Fields inputs) {
        for (Input input : calculation.inputs()) {
            if (!hasDefault(input) && !inputs.has(input.name())) {
                inputs.problem("“%s” is missing; %s needs it.".formatted(input.name(), calculation.id()));
            }
        }
    }

    /** A table without lines is as good as none; one with an example would give numbers that nobody is told. */
    private static boolean hasDefault(Input input) {
        return input instanceof Input.Measured measured && measured.byDefault() != null
                || input instanceof Input.Readings table && table.example().isEmpty();
    }
}
