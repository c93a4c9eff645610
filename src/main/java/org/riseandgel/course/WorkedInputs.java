package org.riseandgel.course;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.riseandgel.bench.Calculation;
import org.riseandgel.bench.FieldProblem;
import org.riseandgel.bench.Given;
import org.riseandgel.bench.GivenReader;
import org.riseandgel.bench.GivenReading;
import org.riseandgel.bench.Input;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.exercise.Problems;

/** Reads the inputs of a worked example as its author wrote them, always with a decimal point. */
final class WorkedInputs {
    private static final GivenReader INPUTS = GivenReader.of(DecimalMark.POINT);

    private WorkedInputs() {}

    /** The inputs, with the calculation's defaults for those left out; empty when one is wrong, which is reported. */
    static Optional<Given> read(
            Calculation calculation, Map<String, Fields.Line> written, int line, Problems problems) {
        boolean allKnown = refuseUnknown(calculation, written, problems);
        Map<String, String> typed = written.entrySet().stream()
                .collect(Collectors.toMap(
                        Map.Entry::getKey, entry -> entry.getValue().text()));
        GivenReading reading = INPUTS.read(calculation, typed);
        for (FieldProblem problem : reading.problems()) {
            Fields.Line at = written.get(problem.field());
            problems.add(at == null ? line : at.line(), "inputs." + problem.field(), problem.message());
        }
        return allKnown ? reading.given() : Optional.empty();
    }

    private static boolean refuseUnknown(Calculation calculation, Map<String, Fields.Line> written, Problems problems) {
        List<String> names = calculation.inputs().stream().map(Input::name).toList();
        boolean allKnown = true;
        for (Map.Entry<String, Fields.Line> input : written.entrySet()) {
            if (!names.contains(input.getKey())) {
                allKnown = false;
                problems.add(
                        input.getValue().line(),
                        "inputs." + input.getKey(),
                        "is not an input of %s; use one of %s".formatted(calculation.id(), String.join(", ", names)));
            }
        }
        return allKnown;
    }
}
