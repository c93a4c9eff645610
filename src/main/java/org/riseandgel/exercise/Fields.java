package org.riseandgel.exercise;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A group of named values of a content file. */
public final class Fields {
    private final YamlNode.Mapping mapping;
    private final int line;
    private final String path;
    private final Problems problems;

    Fields(YamlNode.Mapping mapping, int line, String path, Problems problems) {
        this.mapping = mapping;
        this.line = line;
        this.path = path;
        this.problems = problems;
    }

    /** Notes every field with a name other than these. */
    public Fields only(String... known) {
        List<String> names = List.of(known);
        mapping.entries().forEach((name, entry) -> {
            if (!names.contains(name)) {
                problems.add(
                        entry.line(),
                        inner(name),
                        "There is no field of that name here; the fields are %s.".formatted(String.join(", ", names)));
            }
        });
        return this;
    }

    /** Whether a field of that name is there. */
    public boolean has(String name) {
        return mapping.entries().containsKey(name);
    }

    /** The field of that name; its absence is a problem. */
    public Optional<Field> need(String name) {
        Optional<Field> field = find(name);
        if (field.isEmpty()) {
            problems.add(line, inner(name), "Is missing.");
        }
        return field;
    }

    /** The field of that name, if there is one. */
    public Optional<Field> find(String name) {
        YamlNode.Entry entry = mapping.entries().get(name);
        return entry == null
                ? Optional.empty()
                : Optional.of(new Field(entry.value(), entry.line(), inner(name), problems));
    }

    /** The names, in the order of the file. */
    public List<String> names() {
        return new ArrayList<>(mapping.entries().keySet());
    }

    /** The line on which the group begins. */
    public int line() {
        return line;
    }

    /** Its place in the file; empty for the file as a whole. */
    public String path() {
        return path;
    }

    /** Notes a problem with the group as a whole. */
    public void problem(String message) {
        problems.add(line, path, message);
    }

    private String inner(String name) {
        return path.isEmpty() ? name : path + "." + name;
    }
}
