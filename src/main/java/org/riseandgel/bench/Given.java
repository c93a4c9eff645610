package org.riseandgel.bench;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.riseandgel.core.quantity.Quantity;
import org.riseandgel.core.quantity.Unit;

/**
 * The inputs of one run: quantities by name, choices by name, and the units in which the quantities were given where
 * these differ from the calculation's own.
 */
public record Given(Map<String, Quantity> quantities, Map<String, String> choices, Map<String, Unit> units) {
    public Given {
        quantities = Collections.unmodifiableMap(new LinkedHashMap<>(quantities));
        choices = Collections.unmodifiableMap(new LinkedHashMap<>(choices));
        units = Collections.unmodifiableMap(new LinkedHashMap<>(units));
    }

    /** All quantities given in the calculation's own units. */
    public Given(Map<String, Quantity> quantities, Map<String, String> choices) {
        this(quantities, choices, Map.of());
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

    /** The same with one quantity replaced, in the unit in which it was given before. */
    public Given with(String name, Quantity quantity) {
        return new Given(put(quantities, name, quantity), choices, units);
    }

    /** The same with one quantity replaced, given in that unit. */
    public Given with(String name, Quantity quantity, Unit unit) {
        return new Given(put(quantities, name, quantity), choices, put(units, name, unit));
    }

    /** The same with another option chosen. */
    public Given choosing(String name, String option) {
        return new Given(quantities, put(choices, name, option), units);
    }

    /** The same, with the units in which some inputs were shown. */
    public Given shownIn(Map<String, Unit> shown) {
        Map<String, Unit> all = new LinkedHashMap<>(units);
        all.putAll(shown);
        return new Given(quantities, choices, all);
    }

    private static <V> Map<String, V> put(Map<String, V> map, String name, V value) {
        Map<String, V> changed = new LinkedHashMap<>(map);
        changed.put(name, value);
        return changed;
    }
}
