package org.riseandgel.bench;

import java.util.List;
import java.util.stream.IntStream;
import org.riseandgel.core.mold.MeshVolume;
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

    /**
     * A table of readings, one to a line, each a few quantities. The example is what is taken when nothing is written; it
     * may be empty where the table can be left out.
     */
    record Readings(String name, String label, String help, List<Column> columns, List<List<Double>> example)
            implements Input {
        public Readings {
            columns = List.copyOf(columns);
            example = example.stream().map(List::copyOf).toList();
        }

        /** The example as quantities. */
        public List<Given.Row> exampleRows() {
            return example.stream().map(this::row).toList();
        }

        private Given.Row row(List<Double> numbers) {
            return new Given.Row(IntStream.range(0, numbers.size())
                    .mapToObj(i -> Quantity.of(numbers.get(i), columns.get(i).unit()))
                    .toList());
        }

        /** One cell, as a field of its own that says where it stands; lines count from 1. */
        Measured cell(int line, int column) {
            Column of = columns.get(column);
            return new Measured(
                    name,
                    "%s, line %d: %s".formatted(label, line, of.label()),
                    help,
                    of.unit(),
                    of.low(),
                    of.high(),
                    null);
        }
    }

    /** A closed mesh from an STL file, which comes with the form and is never typed; the example is taken without one. */
    record Mesh(String name, String label, String help, MeshVolume example) implements Input {}

    /** What stands in one place of every line: what it is called within a sentence, and its range in the given unit. */
    record Column(String label, Unit unit, double low, double high) {}

    /** An option of a choice: stable value and words for people. */
    record Option(String value, String label) {}
}
