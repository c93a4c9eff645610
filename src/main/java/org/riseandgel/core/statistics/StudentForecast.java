package org.riseandgel.core.statistics;

import org.riseandgel.core.quantity.Checks;

/** A forecast that is Student's t about a location, with a scale of more than zero and degrees of freedom from 0.1. */
public record StudentForecast(double location, double scale, double degreesOfFreedom) {
    public StudentForecast {
        Checks.finite("location", location);
        Checks.positive("scale", scale);
        Checks.positive("degrees of freedom", degreesOfFreedom);
    }

    /** The two-sided interval, location ± q·scale. */
    public Interval interval(double probability) {
        return Interval.around(location, Student.factor(probability, degreesOfFreedom) * scale, probability);
    }

    /** The probability of a value at or below this one. */
    public double below(double value) {
        return Student.below((value - location) / scale, degreesOfFreedom);
    }

    /** How many scales the value lies from the location, with its sign. */
    public double distance(double value) {
        return (value - location) / scale;
    }
}
