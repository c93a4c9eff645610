package org.riseandgel.core.drying;

import org.riseandgel.core.quantity.Checks;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.TimeSpan;

/** A piece on the balance: the time since the oven was closed, and its mass of more than zero. */
public record PieceWeighing(TimeSpan time, Mass mass) {
    public PieceWeighing {
        Checks.positive("mass in grams", mass.inGrams());
    }
}
