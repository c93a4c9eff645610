package org.riseandgel.exercise;

import java.math.BigDecimal;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.NumberWriter;
import org.riseandgel.core.quantity.Quantity;
import org.riseandgel.core.quantity.Rational;
import org.riseandgel.core.quantity.Unit;

/** A drawn value: its exact number with the places it is shown with, and its unit. */
public record DrawnValue(String name, BigDecimal number, Unit unit) {
    /** As a quantity to compute with. */
    public Quantity quantity() {
        return Quantity.of(number.doubleValue(), unit);
    }

    /** The number without its unit, exactly. */
    public Rational exact() {
        return Rational.of(number);
    }

    /** As the story shows it: "250 mL", "3". */
    public String text(DecimalMark mark) {
        String digits = NumberWriter.of(mark).plain(exact(), Math.max(0, number.scale()));
        return unit.symbol().isEmpty() ? digits : digits + "\u00a0" + unit.symbol();
    }
}
