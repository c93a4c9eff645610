package org.riseandgel.bench;

import java.util.LinkedHashMap;
import java.util.Map;
import org.riseandgel.core.quantity.Quantity;

/** The inputs of one run, checked: quantities by name and choices by name, in order. */
public record Given(Map<String, Quantity> quantities, Map<String, String> choices) {
    public Given {
        quantities = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(quantities));
        choices = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(choices));
    }

    /** The quantity of that name and type; asking for what was never declared is a programming error. */
    public <Q extends Quantity> Q get(String name, Class<Q> type) {
        Quantity quantity = quantities.get(name);
        if (quantity == null) {
            throw new IllegalStateException("no input named " + name);
        }
        return type.cast(quantity);
    }

    /** The chosen option. */
    public String choice(String name) {
        String choice = choices.get(name);
        if (choice == null) {
            throw new IllegalStateException("no choice named " + name);
        }
        return choice;
    }

    /** The same with one quantity replaced. */
    public Given with(String name, Quantity quantity) {
        Map<String, Quantity> changed = new LinkedHashMap<>(quantities);
        changed.put(name, quantity);
        return new Given(changed, choices);
    }
}
