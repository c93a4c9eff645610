package org.riseandgel.exercise;

import java.math.BigDecimal;
import java.util.List;
import org.riseandgel.core.quantity.Unit;

/** How one value of an exercise is drawn. Values are exact decimals and keep the places that the file gives them. */
public sealed interface DrawRule {
    /** The name under which the story and the work use it. */
    String name();

    /** The unit in which it is drawn and shown. */
    Unit unit();

    /** How many values there are to draw from, at least 1. */
    int count();

    /** The value at an index from 0 to count − 1. */
    BigDecimal at(int index);

    /** The smallest value that can be drawn. */
    BigDecimal least();

    /** The largest value that can be drawn. */
    BigDecimal most();

    /** from, from + step, … up to and including to. */
    record Range(String name, Unit unit, BigDecimal from, BigDecimal to, BigDecimal step) implements DrawRule {
        @Override
        public int count() {
            return to.subtract(from).divideToIntegralValue(step).intValueExact() + 1;
        }

        @Override
        public BigDecimal at(int index) {
            int places = Math.max(from.scale(), step.scale());
            return from.add(step.multiply(BigDecimal.valueOf(index))).setScale(Math.max(0, places));
        }

        @Override
        public BigDecimal least() {
            return from;
        }

        @Override
        public BigDecimal most() {
            return to;
        }
    }

    /** One of a list. */
    record Choices(String name, Unit unit, List<BigDecimal> values) implements DrawRule {
        public Choices {
            values = List.copyOf(values);
        }

        @Override
        public int count() {
            return values.size();
        }

        @Override
        public BigDecimal at(int index) {
            return values.get(index);
        }

        @Override
        public BigDecimal least() {
            return values.stream().reduce(BigDecimal::min).orElseThrow();
        }

        @Override
        public BigDecimal most() {
            return values.stream().reduce(BigDecimal::max).orElseThrow();
        }
    }

    /** Always the same. */
    record Fixed(String name, Unit unit, BigDecimal value) implements DrawRule {
        @Override
        public int count() {
            return 1;
        }

        @Override
        public BigDecimal at(int index) {
            return value;
        }

        @Override
        public BigDecimal least() {
            return value;
        }

        @Override
        public BigDecimal most() {
            return value;
        }
    }
}
