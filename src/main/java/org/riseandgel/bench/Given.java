package org.riseandgel.bench;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.riseandgel.core.mold.MeshVolume;
import org.riseandgel.core.quantity.Quantity;
import org.riseandgel.core.quantity.Unit;

/**
 * The inputs of one run: quantities by name, choices by name, the units in which the quantities were given where these
 * differ from the calculation's own, tables of readings by name, and meshes
 * by name.
 */
public record Given(
        Map<String, Quantity> quantities,
        Map<String, String> choices,
        Map<String, Unit> units,
        Map<String, List<Row>> readings,
        Map<String, MeshVolume> meshes) {
    public Given {
        quantities = Collections.unmodifiableMap(new LinkedHashMap<>(quantities));
        choices = Collections.unmodifiableMap(new LinkedHashMap<>(choices));
        units = Collections.unmodifiableMap(new LinkedHashMap<>(units));
        readings = Collections.unmodifiableMap(new LinkedHashMap<>(readings));
        meshes = Collections.unmodifiableMap(new LinkedHashMap<>(meshes));
    }

    /** One line of a table of readings. */
    public record Row(List<Quantity> cells) {
        public Row {
            cells = List.copyOf(cells);
        }

        /** A line of these. */
        public static Row of(Quantity... cells) {
            return new Row(List.of(cells));
        }

        /** The quantity in that place, from 0. */
        public <Q extends Quantity> Q get(int column, Class<Q> type) {
            return type.cast(cells.get(column));
        }
    }

    /** All quantities given in the calculation's own units. */
    public Given(Map<String, Quantity> quantities, Map<String, String> choices) {
        this(quantities, choices, Map.of(), Map.of(), Map.of());
    }

    /** The defaults of a calculation; an input without one is missing. */
    public static Given defaultsOf(Calculation calculation) {
        Given given = new Given(Map.of(), Map.of());
        for (Input input : calculation.inputs()) {
            if (input instanceof Input.Measured measured && measured.byDefault() != null) {
                given = given.with(measured.name(), measured.defaultQuantity());
            } else if (input instanceof Input.Anything anything) {
                given = given.with(anything.name(), anything.defaultQuantity(), anything.defaultUnit());
            } else if (input instanceof Input.Choice choice) {
                given = given.choosing(choice.name(), choice.options().get(0).value());
            } else if (input instanceof Input.Readings table) {
                given = given.reading(table.name(), table.exampleRows());
            } else if (input instanceof Input.Mesh mesh) {
                given = given.measuring(mesh.name(), mesh.example());
            }
        }
        return given;
    }

    /** The quantity of that name and type; asking for what was never declared is a programming error. */
    public <Q extends Quantity> Q get(String name, Class<Q> type) {
        Quantity quantity = quantities.get(name);
        if (quantity == null) {
            throw new IllegalStateException("no input named " + name);
        }
        return type.cast(quantity);
    }

    /** The unit in which it was given, or the base unit of its kind. */
    public Unit unit(String name) {
        Unit unit = units.get(name);
        return unit != null ? unit : get(name, Quantity.class).kind().baseUnit();
    }

    /** The chosen option. */
    public String choice(String name) {
        String choice = choices.get(name);
        if (choice == null) {
            throw new IllegalStateException("no choice named " + name);
        }
        return choice;
    }

    /** The lines of a table of readings. */
    public List<Row> rows(String name) {
        List<Row> rows = readings.get(name);
        if (rows == null) {
            throw new IllegalStateException("no readings named " + name);
        }
        return rows;
    }

    /** What a mesh encloses. */
    public MeshVolume mesh(String name) {
        MeshVolume mesh = meshes.get(name);
        if (mesh == null) {
            throw new IllegalStateException("no mesh named " + name);
        }
        return mesh;
    }

    /** The same with one quantity replaced, in the unit in which it was given before. */
    public Given with(String name, Quantity quantity) {
        return new Given(put(quantities, name, quantity), choices, units, readings, meshes);
    }

    /** The same with one quantity replaced, given in that unit. */
    public Given with(String name, Quantity quantity, Unit unit) {
        return new Given(put(quantities, name, quantity), choices, put(units, name, unit), readings, meshes);
    }

    /** The same with another option chosen. */
    public Given choosing(String name, String option) {
        return new Given(quantities, put(choices, name, option), units, readings, meshes);
    }

    /** The same with another table of readings. */
    public Given reading(String name, List<Row> rows) {
        return new Given(quantities, choices, units, put(readings, name, List.copyOf(rows)), meshes);
    }

    /** The same with another mesh. */
    public Given measuring(String name, MeshVolume mesh) {
        return new Given(quantities, choices, units, readings, put(meshes, name, mesh));
    }

    /** The same, with the units in which some inputs were shown. */
    public Given shownIn(Map<String, Unit> shown) {
        Map<String, Unit> all = new LinkedHashMap<>(units);
        all.putAll(shown);
        return new Given(quantities, choices, all, readings, meshes);
    }

    private static <V> Map<String, V> put(Map<String, V> map, String name, V value) {
        Map<String, V> changed = new LinkedHashMap<>(map);
        changed.put(name, value);
        return changed;
    }
}
