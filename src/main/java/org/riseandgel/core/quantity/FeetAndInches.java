package org.riseandgel.core.quantity;

/** Whole feet followed by less than twelve inches: 2' 3 1/2". Its value is in inches. */
record FeetAndInches(Numeral feet, Shape inches) implements Shape {
    private static final Rational INCHES_PER_FOOT = Rational.of(12);

    FeetAndInches {
        if (!feet.isPlain()) {
            throw Refused.malformed("In {typed} the feet are not a whole number. Write it like 2' 3\".");
        }
        if (inches.value().compareTo(INCHES_PER_FOOT) >= 0) {
            throw Refused.malformed("In {typed} there are 12 inches or more after the feet. Write it like 2' 3\".");
        }
    }

    @Override
    public Rational value() {
        return new DecimalShape(feet, "").value().times(INCHES_PER_FOOT).plus(inches.value());
    }

    @Override
    public Figures figures() {
        return Figures.UNSTATED;
    }
}
