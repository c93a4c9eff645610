package org.riseandgel.core.air;

import org.riseandgel.core.quantity.Checks;

/** A concentration in air of fluoride, as F, in mg/m³, zero or more. Salt and fluoride are two types: a limit names one. */
public record FluorideInAir(double inMilligramsPerCubicMetre) {
    public FluorideInAir {
        Checks.notNegative("concentration in mg/m³", inMilligramsPerCubicMetre);
    }

    /** From a value in milligrams per cubic metre. */
    public static FluorideInAir ofMilligramsPerCubicMetre(double value) {
        return new FluorideInAir(value);
    }
}
