package org.riseandgel.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Temperature;
import org.riseandgel.core.quantity.Volume;

class CavityFromWaterTest {
    private final Catalogue catalogue = Catalogue.standard();
    private final CavityFromWater water = new CavityFromWater();
    private final Given given = Given.defaultsOf(water);

    /** Density of water in kg/m³ by Tanaka 2001 (CIPM); the table is written to a tenth of a gram per cubic metre. */
    @ParameterizedTest
    @CsvSource({"4, 999.9749", "10, 999.7027", "20, 998.2067", "25, 997.0470", "40, 992.2152"})
    void waterAtItsTemperature(double celsius, double kilogramsPerCubicMetre) {
        Outcome outcome = catalogue.run(
                water,
                given.with("jugBefore", Mass.ofGrams(700))
                        .with("jugAfter", Mass.ofGrams(200))
                        .with("temperature", Temperature.ofCelsius(celsius)));
        assertThat(outcome.results().get("waterMass").inBase()).isEqualTo(500);
        // 500 g ÷ ρ; the last digit of the table is worth 1 part in 10 million
        assertThat(outcome.results().get("cavity").inBase()).isCloseTo(500_000 / kilogramsPerCubicMetre, within(5e-5));
    }

    @Test
    void theJugMustComeOff() {
        Outcome outcome = catalogue.run(water, given);
        // by hand: 620 g for 250 g, at 0.9982067 g/mL (Tanaka 2001)
        assertThat(Slips.of(outcome, Slip.TARE_LEFT_IN, "cavity").inBase()).isCloseTo(621.114, within(1e-3));
        assertThat(Slips.of(outcome, Slip.TARE_LEFT_IN, "waterMass").inBase()).isEqualTo(620);
        SlipsApart.check(water, outcome);
    }

    @Test
    void theLiftOfTheAirIsTold() {
        // Z of ISO 8655-6 at 20 °C is 1.00285 mL/g, to five places: 250 × 1.00285
        Outcome.Note note = catalogue.run(water, given).notes().get(0);
        assertThat(((Volume) note.in().get(0).quantity()).inMillilitres()).isCloseTo(250.7125, within(250 * 5e-6));
    }

    @Test
    void aJugThatGrewHeavierIsRefused() {
        assertThatThrownBy(() -> catalogue.run(water, given.with("jugAfter", Mass.ofGrams(621))))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("must be less than the 620.0 g before");
    }
}
