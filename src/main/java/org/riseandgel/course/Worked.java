package org.riseandgel.course;

import java.util.List;
import org.riseandgel.bench.Calculation;
import org.riseandgel.bench.Catalogue;
import org.riseandgel.bench.Given;
import org.riseandgel.bench.Outcome;
import org.riseandgel.bench.QuantityText;
import org.riseandgel.bench.Result;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.Unit;

/** A worked example: which calculation, with which numbers, and which of its results are shown. */
record Worked(
        String name,
        String title,
        String story,
        Catalogue catalogue,
        Calculation calculation,
        Given given,
        List<String> results) {

    /** Works it, now. */
    Outcome run() {
        return catalogue.run(calculation, given);
    }

    Result result(String wanted) {
        return calculation.results().stream()
                .filter(result -> result.name().equals(wanted))
                .findFirst()
                .orElseThrow();
    }

    boolean has(String wanted) {
        return calculation.results().stream().anyMatch(result -> result.name().equals(wanted));
    }

    /** A result as people read it, rounded to the readability of its instrument. */
    static String written(Outcome outcome, Result result, DecimalMark mark) {
        Unit unit = result.unit() == null ? outcome.units().get(result.name()) : result.unit();
        return QuantityText.of(mark).toReadability(outcome.told(result.name()), unit, result.readability());
    }

    /**
     * The steps that lead to the results shown: all up to the last of those results. Without a step of that name, all
     * steps.
     */
    List<Outcome.Step> stepsShown(Outcome outcome) {
        List<Outcome.Step> steps = outcome.steps();
        int last = -1;
        for (int i = 0; i < steps.size(); i++) {
            if (results.contains(steps.get(i).id())) {
                last = i;
            }
        }
        return last < 0 ? steps : steps.subList(0, last + 1);
    }
}
