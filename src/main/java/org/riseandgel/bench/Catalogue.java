package org.riseandgel.bench;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** All calculations, by id, in the order in which the bench shows them. */
public final class Catalogue {
    private final Map<String, Calculation> byId = new LinkedHashMap<>();

    public Catalogue(List<Calculation> calculations) {
        for (Calculation calculation : calculations) {
            if (byId.put(calculation.id(), calculation) != null) {
                throw new IllegalArgumentException("two calculations are named " + calculation.id());
            }
        }
    }

    /** The catalogue of this workshop. */
    public static Catalogue standard() {
        return new Catalogue(List.of());
    }

    /** All of them, in order. */
    public List<Calculation> all() {
        return List.copyOf(byId.values());
    }

    /** The one with that id. */
    public Optional<Calculation> find(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    /**
     * Runs a calculation: checks each input against its range, works it, and works it once more with every step rounded
     * to tell what rounding too early would have given.
     *
     * @throws org.riseandgel.core.quantity.OutOfRangeException when an input is out of its range or the inputs together
     *     make no sense; nothing is guessed
     */
    public Outcome run(Calculation calculation, Given given) {
        throw new UnsupportedOperationException("not built yet: " + calculation.id() + given);
    }
}
