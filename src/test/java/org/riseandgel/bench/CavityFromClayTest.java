package org.riseandgel.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.riseandgel.core.quantity.Mass;

class CavityFromClayTest {
    private final Catalogue catalogue = Catalogue.standard();
    private final CavityFromClay clay = new CavityFromClay();
    private final Given given = Given.defaultsOf(clay);

    @Test
    void claysMassOverItsDensity() {
        // docs/formulas/mold.md, by hand: 460 g ÷ 1.6 g/mL = 287.5 mL
        Outcome outcome = catalogue.run(clay, given.with("clay", Mass.ofGrams(460)));
        assertThat(outcome.results().get("cavity").inBase()).isCloseTo(287.5, within(1e-9));
        // 460 × 1.6; 460; 1.6 ÷ 460
        assertThat(Slips.of(outcome, Slip.MULTIPLIED_FOR_DIVIDED, "cavity").inBase())
                .isCloseTo(736, within(1e-9));
        assertThat(Slips.of(outcome, Slip.DENSITY_LEFT_OUT, "cavity").inBase()).isCloseTo(460, within(1e-9));
        assertThat(Slips.of(outcome, Slip.RATIO_TURNED_ROUND, "cavity").inBase())
                .isCloseTo(0.00347826, within(1e-8));
    }

    @Test
    void slipsAreApart() {
        SlipsApart.check(clay, catalogue.run(clay, given));
    }

    @Property
    void twiceTheClayIsTwiceTheRoom(@ForAll @Scale(3) @DoubleRange(min = 1, max = 20_000) double grams) {
        assertThat(cavity(2 * grams)).isCloseTo(2 * cavity(grams), Percentage.withPercentage(1e-9));
    }

    private double cavity(double grams) {
        return catalogue
                .run(clay, given.with("clay", Mass.ofGrams(grams)))
                .results()
                .get("cavity")
                .inBase();
    }
}
