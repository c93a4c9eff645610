package org.riseandgel.course;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.riseandgel.exercise.Problems;
import org.riseandgel.exercise.YamlNode;
import org.riseandgel.exercise.YamlReader;

/**
 * Reads the named values of a YAML mapping one by one, and reports what is missing, of the wrong shape, or not known.
 * A value that is wrong is replaced by an empty one, so that reading can go on to the next.
 */
final class Fields {
    private static final Pattern WHOLE = Pattern.compile("\\d{1,6}");

    private final YamlNode.Mapping mapping;
    private final String path;
    private final Problems problems;
    private final Set<String> asked = new LinkedHashSet<>();

    private Fields(YamlNode.Mapping mapping, String path, Problems problems) {
        this.mapping = mapping;
        this.path = path;
        this.problems = problems;
    }

    /** A text and the line it stands on. */
    record Line(int line, String text) {}

    /** The mapping that a whole text is, beginning after the given number of lines; empty, and reported, if it is none. */
    static Optional<Fields> read(String text, int linesBefore, String what, Problems problems) {
        Optional<YamlNode> node = YamlReader.read("\n".repeat(linesBefore) + text, problems);
        if (node.isPresent() && node.get() instanceof YamlNode.Mapping mapping) {
            return Optional.of(new Fields(mapping, "", problems));
        }
        node.ifPresent(other -> problems.add(other.line(), what, "must be names with values, such as “title: …”"));
        return Optional.empty();
    }

    Problems problems() {
        return problems;
    }

    int lineOf(String name) {
        YamlNode.Entry entry = mapping.entries().get(name);
        return entry == null ? mapping.line() : entry.line();
    }

    /** Reports a problem with one of the values. */
    void problem(String name, String message) {
        problems.add(lineOf(name), path + name, message);
    }

    String text(String name) {
        String text = optional(name).orElse("");
        if (text.isEmpty() && (isMissing(name) || mapping.entries().get(name).value() instanceof YamlNode.Scalar)) {
            problem(name, "is missing; write “" + name + ": …”");
        }
        return text;
    }

    Optional<String> optional(String name) {
        asked.add(name);
        if (isMissing(name)) {
            return Optional.empty();
        }
        if (mapping.entries().get(name).value() instanceof YamlNode.Scalar scalar) {
            return Optional.of(textOf(scalar));
        }
        problem(name, "must be one text, not a list or a group");
        return Optional.empty();
    }

    int whole(String name, int low, int high) {
        String text = text(name);
        int number = WHOLE.matcher(text).matches() ? Integer.parseInt(text) : -1;
        if (!text.isEmpty() && (number < low || number > high)) {
            problem(name, "is “%s”, must be a whole number from %d to %d".formatted(text, low, high));
        }
        return number;
    }

    boolean flag(String name) {
        String text = optional(name).orElse("false");
        if (!text.equals("true") && !text.equals("false")) {
            problem(name, "is “%s”, must be true or false".formatted(text));
        }
        return text.equals("true");
    }

    /** A list of texts that must be there, though it may be empty. */
    List<Line> texts(String name) {
        List<Line> texts = new ArrayList<>();
        for (YamlNode item : items(name)) {
            if (item instanceof YamlNode.Scalar scalar && !textOf(scalar).isEmpty()) {
                texts.add(new Line(scalar.line(), textOf(scalar)));
            } else {
                problems.add(item.line(), path + name, "must be a list of texts, one after each “-”");
            }
        }
        return texts;
    }

    List<Fields> groups(String name) {
        List<Fields> groups = new ArrayList<>();
        int number = 0;
        for (YamlNode item : items(name)) {
            number++;
            if (item instanceof YamlNode.Mapping group) {
                groups.add(new Fields(group, path + name + "[" + number + "].", problems));
            } else {
                problems.add(item.line(), path + name + "[" + number + "]", "must be a group of names with values");
            }
        }
        return groups;
    }

    /** A group of names with values that must be there. */
    Optional<Fields> group(String name) {
        if (isMissing(name)) {
            problem(name, "is missing; write “" + name + ": { … }”");
        } else if (mapping.entries().get(name).value() instanceof YamlNode.Mapping group) {
            return Optional.of(new Fields(group, path + name + ".", problems));
        } else {
            problem(name, "must be a group of names with values");
        }
        return Optional.empty();
    }

    /** A group of names with single values, in the order written. */
    Map<String, Line> pairs(String name) {
        asked.add(name);
        Map<String, Line> pairs = new LinkedHashMap<>();
        if (isMissing(name)) {
            problem(name, "is missing; write “" + name + ": { … }”");
        } else if (mapping.entries().get(name).value() instanceof YamlNode.Mapping group) {
            group.entries().forEach((key, entry) -> pair(name + "." + key, key, entry, pairs));
        } else {
            problem(name, "must be a group of names with values, such as { diameter: 80 mm }");
        }
        return pairs;
    }

    boolean isMissing(String name) {
        asked.add(name);
        return !mapping.entries().containsKey(name);
    }

    /** Reports every name that nobody asked for. To be called last. */
    void noOthers() {
        mapping.entries().forEach((name, entry) -> {
            if (!asked.contains(name)) {
                problems.add(entry.line(), path + name, "is not known here; use one of " + String.join(", ", asked));
            }
        });
    }

    private void pair(String field, String key, YamlNode.Entry entry, Map<String, Line> pairs) {
        if (entry.value() instanceof YamlNode.Scalar scalar) {
            pairs.put(key, new Line(entry.line(), textOf(scalar)));
        } else {
            problems.add(entry.line(), path + field, "must be one value");
        }
    }

    private static String textOf(YamlNode.Scalar scalar) {
        return scalar.text() == null ? "" : scalar.text().strip();
    }

    private List<YamlNode> items(String name) {
        if (isMissing(name)) {
            problem(name, "is missing; write a list, one item after each “-”");
            return List.of();
        }
        if (mapping.entries().get(name).value() instanceof YamlNode.Sequence sequence) {
            return sequence.items();
        }
        problem(name, "must be a list, one item after each “-”");
        return List.of();
    }
}
