package org.riseandgel.core.drying;

import org.riseandgel.core.quantity.Checks;
import org.riseandgel.core.quantity.Length;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Temperature;
import org.riseandgel.core.quantity.TimeSpan;

/**
 * A bake: how long, with how much heat, and whether the oven is warmer than the formula likes.
 *
 * @param oven the temperature of the oven, and of the foam in the end
 * @param time the longer of the formula's shortest bake and the time by thickness
 * @param heat what evaporating the water takes at that temperature; warming the mold comes on top
 * @param tooWarmForFormula whether the oven is above the formula's own limit: expect steam pockets and a brittle skin
 */
public record BakePlan(Temperature oven, TimeSpan time, Evaporation.Heat heat, boolean tooWarmForFormula) {

    /**
     * What a formula asks of its bake.
     *
     * @param warmest the temperature above which it suffers
     * @param shortest the shortest bake, at any thickness
     * @param knownThickness a thickness that is known to dry in the shortest bake, more than zero
     */
    public record Rule(Temperature warmest, TimeSpan shortest, Length knownThickness) {
        public Rule {
            Checks.positive("known thickness in millimetres", knownThickness.inMillimetres());
        }

        /** 110 °F (43.33 °C), 4 hours: common practice, no source. The thickness is the school's own. */
        public static Rule usual(Length knownThickness) {
            return new Rule(Temperature.ofFahrenheit(110), TimeSpan.ofHours(4), knownThickness);
        }
    }

    /** Pressure of the standard atmosphere, Pa. */
    public static final double STANDARD_PASCALS = 101_325;

    /**
     * The plan for a piece.
     *
     * @param oven from 0.01 °C to less than the boiling point of water under the pressure
     * @param thickness the thickest part, more than zero
     * @param pascals air pressure, from 1,000 to 1,000,000 Pa
     * @throws OutOfRangeException outside these; steam would tear the foam
     */
    public static BakePlan of(Temperature oven, Rule rule, Length thickness, Mass water, double pascals) {
        Temperature boiling = Evaporation.boilingPoint(pascals);
        if (!(oven.inCelsius() < boiling.inCelsius())) {
            throw OutOfRangeException.because(
                    "oven",
                    "oven is at %s °C, must be below %s °C, where water boils and steam tears the foam"
                            .formatted(oven.inCelsius(), Math.floor(boiling.inCelsius() * 10) / 10));
        }
        TimeSpan byThickness = ThicknessTime.scaled(rule.shortest(), rule.knownThickness(), thickness);
        return new BakePlan(
                oven,
                longer(rule.shortest(), byThickness),
                Evaporation.heat(water, oven),
                oven.inCelsius() > rule.warmest().inCelsius());
    }

    /** The longer of two times. */
    public static TimeSpan longer(TimeSpan one, TimeSpan other) {
        return one.inSeconds() >= other.inSeconds() ? one : other;
    }
}
