package org.riseandgel.core.air;

import org.riseandgel.core.quantity.Checks;

/** A mass of a fluorosilicate salt, as weighed, zero or more. Salt and fluoride are two types, so that one never passes for the other. */
public record SaltMass(double inMilligrams) {
    private static final double MILLIGRAMS_PER_GRAM = 1000;

    public SaltMass {
        Checks.notNegative("mass in milligrams", inMilligrams);
    }

    /** From a value in milligrams. */
    public static SaltMass ofMilligrams(double value) {
        return new SaltMass(value);
    }

    /** From a value in grams. */
    public static SaltMass ofGrams(double value) {
        return new SaltMass(value * MILLIGRAMS_PER_GRAM);
    }

    /** The value in grams. */
    public double inGrams() {
        return inMilligrams / MILLIGRAMS_PER_GRAM;
    }
}
