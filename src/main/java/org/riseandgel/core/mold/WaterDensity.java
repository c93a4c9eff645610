package org.riseandgel.core.mold;

import org.riseandgel.core.quantity.Checks;
import org.riseandgel.core.quantity.Density;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Temperature;

/**
 * The density of air-free water at 101,325 Pa: ρ = a₅·(1 − (t + a₁)²·(t + a₂) ÷ (a₃·(t + a₄))), t in °C, ρ in kg/m³, a₁ =
 * −3.983035, a₂ = 301.797, a₃ = 522528.9, a₄ = 69.34881, a₅ = 999.974950. Source: M. Tanaka and others, Metrologia 38,
 * 2001, recommended by the CIPM. Tap water differs by some parts in 10,000, which no mold notices.
 */
public final class WaterDensity {
    private static final double COLDEST = 0;
    private static final double WARMEST = 40;
    private static final double AIR_KILOGRAMS_PER_CUBIC_METRE = 1.2;
    private static final double WEIGHTS_KILOGRAMS_PER_CUBIC_METRE = 8000;

    private WaterDensity() {}

    /**
     * The density at a temperature from 0 to 40 °C.
     *
     * @throws OutOfRangeException outside
     */
    public static Density at(Temperature temperature) {
        double t = Checks.inRange("water temperature in °C", temperature.inCelsius(), COLDEST, WARMEST);
        double fromDensest = t - 3.983035;
        return Density.ofKilogramsPerCubicMetre(
                999.974950 * (1 - fromDensest * fromDensest * (t + 301.797) / (522528.9 * (t + 69.34881))));
    }

    /**
     * Millilitres of water for each gram that a balance shows, the air's lift included: Z = (1 − ρair ÷ ρweights) ÷ (ρwater
     * − ρair), with 1.2 kg/m³ of air and weights of 8,000 kg/m³. Form of ISO 8655-6, without the term for glass.
     */
    public static double millilitresPerGramShown(Temperature temperature) {
        double lift = 1 - AIR_KILOGRAMS_PER_CUBIC_METRE / WEIGHTS_KILOGRAMS_PER_CUBIC_METRE;
        return 1000 * lift / (at(temperature).inKilogramsPerCubicMetre() - AIR_KILOGRAMS_PER_CUBIC_METRE);
    }
}
