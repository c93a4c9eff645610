package org.riseandgel.bench;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.OutOfRangeException;

/** Typed values read and worked: the inputs and the outcome, or else every problem that stands in the way. */
public record Attempt(Optional<Given> given, Optional<Outcome> outcome, List<FieldProblem> problems) {
    public Attempt {
        problems = List.copyOf(problems);
    }

    /** Reads the typed values with that decimal mark and runs the calculation. */
    public static Attempt at(
            Catalogue catalogue, Calculation calculation, Map<String, String> typed, DecimalMark mark) {
        return of(catalogue, calculation, GivenReader.of(mark).read(calculation, typed), mark);
    }

    /** Runs the calculation with values that have been read. */
    static Attempt of(Catalogue catalogue, Calculation calculation, GivenReading reading, DecimalMark mark) {
        if (reading.given().isEmpty()) {
            return new Attempt(Optional.empty(), Optional.empty(), reading.problems());
        }
        try {
            return new Attempt(
                    reading.given(),
                    Optional.of(catalogue.run(calculation, reading.given().get())),
                    List.of());
        } catch (OutOfRangeException refused) {
            String message = QuantityText.of(mark).sentence(refused.getMessage());
            FieldProblem problem = new FieldProblem(calculation.inputAt(refused.what()), message);
            return new Attempt(reading.given(), Optional.empty(), List.of(problem));
        }
    }
}
