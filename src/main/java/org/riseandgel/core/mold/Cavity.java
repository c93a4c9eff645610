package org.riseandgel.core.mold;

import org.riseandgel.core.quantity.Checks;
import org.riseandgel.core.quantity.Density;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Temperature;
import org.riseandgel.core.quantity.Volume;

/** The room between the two halves of a mold, from what fills it on a balance. */
public final class Cavity {
    private Cavity() {}

    /** From the modelling clay that lay where the foam will be: V = mass ÷ density, the mass being more than zero. */
    public static Volume fromClay(Mass clay, Density density) {
        return Volume.ofMillilitres(filling(clay) / density.inGramsPerMillilitre());
    }

    /**
     * From the water it holds: V = mass ÷ density at its temperature (see {@link WaterDensity}).
     *
     * @param water more than zero
     * @param temperature of the water, from 0 to 40 °C
     * @throws OutOfRangeException outside these
     */
    public static Volume fromWater(Mass water, Temperature temperature) {
        return fromWater(water, WaterDensity.at(temperature));
    }

    /** From the water it holds and the density of that water: V = mass ÷ density, the mass being more than zero. */
    public static Volume fromWater(Mass water, Density density) {
        return Volume.ofMillilitres(filling(water) / density.inGramsPerMillilitre());
    }

    /** As {@link #fromWater(Mass, Temperature)}, with the lift of the air taken into account: V = mass shown × Z, one part in a thousand more. */
    public static Volume fromWaterInAir(Mass shown, Temperature temperature) {
        return Volume.ofMillilitres(filling(shown) * WaterDensity.millilitresPerGramShown(temperature));
    }

    private static double filling(Mass mass) {
        return Checks.positive("mass that fills the cavity in grams", mass.inGrams());
    }
}
