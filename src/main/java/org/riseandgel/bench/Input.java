package org.riseandgel.bench;

import java.util.List;
import org.riseandgel.core.quantity.Quantity;
import org.riseandgel.core.quantity.QuantityKind;
import org.riseandgel.core.quantity.Unit;

/** One thing a calculation needs to know. */
public sealed interface Input {
    /** Stable name in files, addresses and forms: "bottomDiameter". */
    String name();

    /** What a form calls it. */
    String label();

    /** One sentence on what it is and why the default is what it is. */
    String help();

    /** A quantity within a range; low, high and default are in the given unit. A null default must be filled in. */
    record Measured(String name, String label, String help, Unit unit, double low, double high, Double byDefault)
            implements Input {
        public QuantityKind kind() {
            return unit.kind();
        }

        /** The default as a quantity, or null. */
        public Quantity defaultQuantity() {
            return byDefault == null ? null : Quantity.of(byDefault, unit);
        }
    }

    /** A quantity of any kind in any unit, for conversions. */
    record Anything(String name, String label, String help, double defaultNumber, Unit defaultUnit) implements Input {
        /** The default as a quantity. */
        public Quantity defaultQuantity() {
            return Quantity.of(defaultNumber, defaultUnit);
        }
    }

    /** One of a few options; the first is the default. */
    record Choice(String name, String label, String help, List<Option> options) implements Input {
        public Choice {
            options = List.copyOf(options);
        }
    }

    /** An option of a choice: stable value and words for people. */
    record Option(String value, String label) {}
}
