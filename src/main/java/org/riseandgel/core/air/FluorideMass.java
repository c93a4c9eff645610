package org.riseandgel.core.air;

import org.riseandgel.core.quantity.Checks;

/** A mass of the fluoride in a salt, as F, zero or more. Salt and fluoride are two types, so that one never passes for the other. */
public record FluorideMass(double inMilligrams) {
    private static final double MILLIGRAMS_PER_GRAM = 1000;

    public FluorideMass {
        Checks.notNegative("mass in milligrams", inMilligrams);
    }

    /** From a value in milligrams. */
    public static FluorideMass ofMilligrams(double value) {
        return new FluorideMass(value);
    }

    /** From a value in grams. */
    public static FluorideMass ofGrams(double value) {
        return new FluorideMass(value * MILLIGRAMS_PER_GRAM);
    }

    /** The value in grams. */
    public double inGrams() {
        return inMilligrams / MILLIGRAMS_PER_GRAM;
    }
}
