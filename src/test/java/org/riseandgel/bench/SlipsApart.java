package org.riseandgel.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.riseandgel.core.quantity.Unit;

/**
 * Every slip that a calculation names itself is three tolerances from the right answer and from every other. The
 * tolerance taken is the usual one of an exercise: half the readability of the result, or half a per cent when that is
 * more.
 */
final class SlipsApart {
    private static final double RELATIVE = 0.005;

    private SlipsApart() {}

    static void check(Calculation calculation, Outcome outcome) {
        for (Result result : calculation.results()) {
            List<Double> answers = new ArrayList<>();
            Unit unit = outcome.units().get(result.name());
            answers.add(outcome.results().get(result.name()).in(unit));
            double tolerance = Math.max(result.readability() / 2, RELATIVE * Math.abs(answers.get(0)));
            for (Outcome.SlipAnswer slip : outcome.slipsOf(result.name())) {
                if (slip.slip() != Slip.ROUNDED_EARLY) {
                    double wrong = slip.wrong().in(unit);
                    assertThat(answers)
                            .as("%s of %s: %s", slip.slip(), result.name(), wrong)
                            .allMatch(answer -> Math.abs(answer - wrong) >= 3 * tolerance);
                    answers.add(wrong);
                }
            }
        }
    }
}
