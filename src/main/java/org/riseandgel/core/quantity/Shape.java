package org.riseandgel.core.quantity;

/** A number as it is written, before its size is looked at. */
sealed interface Shape permits DecimalShape, FractionShape, FeetAndInches {
    /** Most digits a typed number may have. */
    int MOST_DIGITS = 30;

    /** The exact value without sign; a number that is too large or too long to write out is refused. */
    Rational value();

    Figures figures();
}
