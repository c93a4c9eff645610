package org.riseandgel.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Quantity;

/** One run of a calculation: the right way, and the ways that go wrong whatever is calculated. */
final class Run {
    private final Calculation calculation;
    private final Given given;

    Run(Calculation calculation, Given given) {
        this.calculation = calculation;
        this.given = given;
    }

    Outcome outcome() {
        Recorder exact = new Recorder(calculation);
        work(given, exact);
        List<Outcome.SlipAnswer> generic = new ArrayList<>();
        for (Misreading misreading : Misreading.ALL) {
            misreading
                    .of(given)
                    .flatMap(this::misread)
                    .ifPresent(wrong -> add(generic, misreading.slip(), wrong, exact));
        }
        roundedEarly().ifPresent(wrong -> add(generic, Slip.ROUNDED_EARLY, wrong, exact));
        return exact.outcome(generic);
    }

    private void work(Given inputs, Work work) {
        calculation.work(Conversions.intoOwnUnits(calculation, inputs, work), work);
    }

    private Optional<Map<String, Quantity>> misread(Given wrong) {
        try {
            Recorder recorder = new Recorder(calculation);
            calculation.work(wrong, recorder);
            return Optional.of(recorder.values());
        } catch (OutOfRangeException impossible) {
            return Optional.empty();
        }
    }

    private Optional<Map<String, Quantity>> roundedEarly() {
        try {
            EarlyRounding rounding = new EarlyRounding();
            work(given, rounding);
            return Optional.of(rounding.values());
        } catch (OutOfRangeException impossible) {
            return Optional.empty();
        }
    }

    private static void add(List<Outcome.SlipAnswer> slips, Slip slip, Map<String, Quantity> wrong, Recorder right) {
        wrong.forEach((name, value) -> {
            if (right.values().containsKey(name)) {
                slips.add(new Outcome.SlipAnswer(slip, name, value, slip.line()));
            }
        });
    }
}
