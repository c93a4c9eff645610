package org.riseandgel.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.riseandgel.core.quantity.Length;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Temperature;
import org.riseandgel.core.quantity.Unit;

class PlanBakeTest {
    private final Catalogue catalogue = Catalogue.standard();
    private final PlanBake bake = new PlanBake();
    private final Given given = Given.defaultsOf(bake);

    @Test
    void aThickerPieceTakesLongerByTheSquare() {
        Outcome outcome = catalogue.run(bake, given.with("thickness", Length.ofCentimetres(6)));
        // twice as thick takes four times as long (diffusion, Crank): 4 × 4 h
        assertThat(hours(outcome, "bakeTime")).isCloseTo(16, within(1e-9));
        assertThat(hours(outcome, "timeByThickness")).isCloseTo(16, within(1e-9));
        assertThat(Slips.of(outcome, Slip.SQUARE_LEFT_OUT, "bakeTime").inBase() / 3600)
                .isCloseTo(8, within(1e-9));
        assertThat(Slips.of(outcome, Slip.RATIO_TURNED_ROUND, "timeByThickness").inBase() / 3600)
                .isCloseTo(1, within(1e-9));
    }

    @Test
    void aThinnerPieceIsBakedAsLongAsTheKnownOne() {
        Outcome outcome = catalogue.run(bake, given.with("thickness", Length.ofCentimetres(1.5)));
        assertThat(hours(outcome, "timeByThickness")).isCloseTo(1, within(1e-9));
        assertThat(hours(outcome, "bakeTime")).isCloseTo(4, within(1e-9));
    }

    @Test
    void theHeatOfEvaporation() {
        Outcome outcome = catalogue.run(bake, given.with("water", Mass.ofGrams(100)));
        // IAPWS-IF97: 2398.816 kJ/kg at 43 °C, so 239.88 kJ or 66.63 Wh for 100 g; the core agrees to 0.02 %
        assertThat(outcome.results().get("heat").inBase()).isCloseTo(239.8816, withinPercentage(0.02));
        assertThat(outcome.results().get("heat").in(Unit.WATT_HOUR)).isCloseTo(66.634, withinPercentage(0.02));
    }

    @Test
    void slipsAreApart() {
        SlipsApart.check(bake, catalogue.run(bake, given));
    }

    @Test
    void anOvenInWhichWaterBoilsIsRefused() {
        // water boils at 100 °C at sea level, within the hundredth of a degree that ITS-90 made of it
        assertThat(catalogue
                        .run(bake, given.with("oven", Temperature.ofCelsius(99.9)))
                        .results())
                .isNotEmpty();
        assertThatThrownBy(() -> catalogue.run(bake, given.with("oven", Temperature.ofCelsius(100))))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("where water boils")
                .extracting(refused -> bake.inputAt(((OutOfRangeException) refused).what()))
                .isEqualTo("oven");
    }

    @Test
    void anOvenWarmerThanTheFormulaBearsIsToldOf() {
        assertThat(warned(110)).isFalse();
        assertThat(warned(120)).isTrue();
    }

    private boolean warned(double fahrenheit) {
        return catalogue.run(bake, given.with("oven", Temperature.ofFahrenheit(fahrenheit))).notes().stream()
                .anyMatch(note -> note.text().contains("Turn it down"));
    }

    private static double hours(Outcome outcome, String name) {
        return outcome.results().get(name).inBase() / 3600;
    }
}
