package org.riseandgel.core.air;

import org.riseandgel.core.quantity.Checks;

/** A concentration in air of the salt, in mg/m³, zero or more. Salt and fluoride are two types: a limit names one. */
public record SaltInAir(double inMilligramsPerCubicMetre) {
    public SaltInAir {
        Checks.notNegative("concentration in mg/m³", inMilligramsPerCubicMetre);
    }

    /** From a value in milligrams per cubic metre. */
    public static SaltInAir ofMilligramsPerCubicMetre(double value) {
        return new SaltInAir(value);
    }
}
