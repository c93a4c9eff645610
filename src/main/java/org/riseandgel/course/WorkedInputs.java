package org.riseandgel.course;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.riseandgel.bench.Calculation;
import org.riseandgel.bench.Given;
import org.riseandgel.bench.Input;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.NumberReader;
import org.riseandgel.core.quantity.Quantity;
import org.riseandgel.core.quantity.Reading;
import org.riseandgel.core.quantity.Unit;
import org.riseandgel.exercise.Problems;

/** Reads the inputs of a worked example as its author wrote them, always with a decimal point. */
final class WorkedInputs {
    private static final NumberReader NUMBERS = NumberReader.of(DecimalMark.POINT);

    private final Calculation calculation;
    private final Problems problems;
    private boolean sound = true;

    private WorkedInputs(Calculation calculation, Problems problems) {
        this.calculation = calculation;
        this.problems = problems;
    }

    /** The inputs, with the calculation's defaults for those left out; empty when one is wrong, which is reported. */
    static Optional<Given> read(
            Calculation calculation, Map<String, Fields.Line> written, int line, Problems problems) {
        WorkedInputs inputs = new WorkedInputs(calculation, problems);
        inputs.refuseUnknown(written);
        Given given = inputs.given(written, line);
        return inputs.sound ? Optional.of(given) : Optional.empty();
    }

    private void refuseUnknown(Map<String, Fields.Line> written) {
        List<String> names = calculation.inputs().stream().map(Input::name).toList();
        written.forEach((name, line) -> {
            if (!names.contains(name)) {
                problem(
                        line.line(),
                        name,
                        "is not an input of %s; use one of %s".formatted(calculation.id(), String.join(", ", names)));
            }
        });
    }

    private Given given(Map<String, Fields.Line> written, int line) {
        Given given = Given.defaultsOf(calculation);
        for (Input input : calculation.inputs()) {
            Fields.Line value = written.get(input.name());
            if (value != null) {
                given = add(given, input, value);
            } else if (input instanceof Input.Measured measured && measured.byDefault() == null) {
                problem(
                        line,
                        input.name(),
                        "is missing; write %s: … %s"
                                .formatted(input.name(), measured.unit().code()));
            }
        }
        return given;
    }

    private Given add(Given given, Input input, Fields.Line value) {
        if (input instanceof Input.Choice choice) {
            return choose(given, choice, value);
        }
        Reading reading = NUMBERS.read(value.text());
        if (!reading.ok()) {
            problem(value.line(), input.name(), reading.message());
            return given;
        }
        return input instanceof Input.Measured measured
                ? measure(given, measured, value, reading)
                : with(given, input, reading, reading.typedUnit().orElse(Unit.ONE));
    }

    private Given choose(Given given, Input.Choice choice, Fields.Line value) {
        List<String> values = choice.options().stream().map(Input.Option::value).toList();
        if (!values.contains(value.text())) {
            problem(
                    value.line(),
                    choice.name(),
                    "is “%s”, must be one of %s".formatted(value.text(), String.join(", ", values)));
            return given;
        }
        return given.choosing(choice.name(), value.text());
    }

    private Given measure(Given given, Input.Measured input, Fields.Line value, Reading reading) {
        Unit unit = reading.typedUnit().orElse(Unit.ONE).whenAskedFor(input.kind());
        if (unit.kind() != input.kind()) {
            problem(
                    value.line(),
                    input.name(),
                    "is “%s”, must be a %s with its unit, such as %s"
                            .formatted(
                                    value.text(),
                                    input.kind().words(),
                                    input.unit().code()));
            return given;
        }
        return with(given, input, reading, unit);
    }

    private static Given with(Given given, Input input, Reading reading, Unit unit) {
        double base = unit.toBase(reading.value()).toDouble();
        return given.with(input.name(), Quantity.ofBase(unit.kind(), base), unit);
    }

    private void problem(int line, String input, String message) {
        sound = false;
        problems.add(line, "inputs." + input, message);
    }
}
