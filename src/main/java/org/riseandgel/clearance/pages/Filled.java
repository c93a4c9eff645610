package org.riseandgel.clearance.pages;

import jakarta.ws.rs.core.MultivaluedMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.riseandgel.clearance.RegisterProblem;

/** A form as it was filled in, for forms whose fields depend on what they are about. Kept when it has to be mended. */
public final class Filled {
    private final Map<String, List<String>> fields;

    private Filled(Map<String, List<String>> fields) {
        this.fields = fields;
    }

    static Filled of(MultivaluedMap<String, String> form) {
        return new Filled(form == null ? Map.of() : new LinkedHashMap<>(form));
    }

    /** A form with these values in it before anybody typed. */
    static Filled with(Map<String, String> values) {
        Map<String, List<String>> fields = new LinkedHashMap<>();
        values.forEach((name, value) -> fields.put(name, List.of(value)));
        return new Filled(fields);
    }

    /** What stands in a field; empty when nothing does. */
    public String get(String name) {
        return all(name).stream().findFirst().orElse("");
    }

    /** Everything that was ticked under a name. */
    public List<String> all(String name) {
        return fields.getOrDefault(name, List.of());
    }

    /** Whether a value was chosen or ticked. */
    public boolean has(String name, String value) {
        return all(name).contains(value);
    }

    /** The id in a field; null when there is none or it is no id. */
    UUID id(String name) {
        try {
            return get(name).isBlank() ? null : UUID.fromString(get(name));
        } catch (IllegalArgumentException e) {
            return null;
        }
    }

    /** The day in a field; null when it is empty. */
    java.time.LocalDate day(String name) {
        try {
            return get(name).isBlank()
                    ? null
                    : java.time.LocalDate.parse(get(name).strip());
        } catch (java.time.format.DateTimeParseException e) {
            throw RegisterProblem.with(name, "Write the day like 2026-05-03.");
        }
    }

    /** The constant whose name was chosen. */
    <E extends Enum<E>> Optional<E> constant(String name, Class<E> kind) {
        return java.util.Arrays.stream(kind.getEnumConstants())
                .filter(one -> one.name().equals(get(name)))
                .findFirst();
    }
}
