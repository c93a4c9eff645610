package org.riseandgel.clearance.policy;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import org.riseandgel.exercise.Problems;
import org.riseandgel.exercise.YamlNode;

/** A group of named values in the policy's file. What is missing, of the wrong shape or unknown is reported. */
final class Section {
    private static final Pattern WHOLE = Pattern.compile("\\d{1,4}");

    private final YamlNode.Mapping group;
    private final String path;
    private final Problems problems;
    private final Set<String> asked = new LinkedHashSet<>();

    Section(YamlNode.Mapping group, String path, Problems problems) {
        this.group = group;
        this.path = path;
        this.problems = problems;
    }

    String text(String name) {
        return node(name) instanceof YamlNode.Scalar scalar ? words(scalar, name) : none(name, "one text");
    }

    int whole(String name, int low, int high) {
        String text = text(name);
        int number = WHOLE.matcher(text).matches() ? Integer.parseInt(text) : -1;
        if (!text.isEmpty() && (number < low || number > high)) {
            problem(name, "is “%s”, must be a whole number from %d to %d.".formatted(text, low, high));
        }
        return number;
    }

    boolean flag(String name) {
        String text = text(name);
        if (!text.isEmpty() && !text.equals("true") && !text.equals("false")) {
            problem(name, "is “%s”, must be true or false.".formatted(text));
        }
        return text.equals("true");
    }

    List<String> texts(String name) {
        List<String> texts = new ArrayList<>();
        for (YamlNode item : items(name)) {
            if (item instanceof YamlNode.Scalar scalar && scalar.text() != null) {
                texts.add(scalar.text().strip());
            } else {
                problems.add(item.line(), path + name, "must be a list of texts.");
            }
        }
        return texts;
    }

    <E extends Enum<E>> Set<E> words(String name, Class<E> kind) {
        Set<E> found = EnumSet.noneOf(kind);
        texts(name).forEach(text -> add(name, text, kind, found));
        if (found.isEmpty() && group.entries().containsKey(name)) {
            problem(name, "must name at least one of " + choices(kind) + ".");
        }
        return found;
    }

    /** One word of a fixed list; the first of the list, and a problem, when it is another. */
    <E extends Enum<E>> E word(String name, Class<E> kind) {
        Set<E> found = EnumSet.noneOf(kind);
        add(name, text(name), kind, found);
        return found.isEmpty() ? kind.getEnumConstants()[0] : found.iterator().next();
    }

    Section section(String name) {
        if (node(name) instanceof YamlNode.Mapping inner) {
            return new Section(inner, path + name + ".", problems);
        }
        none(name, "a group of names with values");
        return new Section(new YamlNode.Mapping(line(name), java.util.Map.of()), path + name + ".", new Problems(""));
    }

    List<Section> sections(String name) {
        List<Section> sections = new ArrayList<>();
        for (YamlNode item : items(name)) {
            String place = "%s%s[%d]".formatted(path, name, sections.size() + 1);
            if (item instanceof YamlNode.Mapping inner) {
                sections.add(new Section(inner, place + ".", problems));
            } else {
                problems.add(item.line(), place, "must be a group of names with values.");
            }
        }
        return sections;
    }

    void problem(String name, String message) {
        problems.add(line(name), path + name, message);
    }

    /** Reports every name that nobody asked for. To be called last. */
    void noOthers() {
        group.entries().forEach((name, entry) -> {
            if (!asked.contains(name)) {
                problems.add(
                        entry.line(), path + name, "is not known here; use one of " + String.join(", ", asked) + ".");
            }
        });
    }

    private <E extends Enum<E>> void add(String name, String text, Class<E> kind, Set<E> found) {
        for (E one : kind.getEnumConstants()) {
            if (one.name().toLowerCase(Locale.ROOT).equals(text)) {
                found.add(one);
                return;
            }
        }
        if (!text.isEmpty()) {
            problem(name, "is “%s”, must be one of %s.".formatted(text, choices(kind)));
        }
    }

    private static <E extends Enum<E>> String choices(Class<E> kind) {
        return EnumSet.allOf(kind)
                .toString()
                .toLowerCase(Locale.ROOT)
                .replace("[", "")
                .replace("]", "");
    }

    private String words(YamlNode.Scalar scalar, String name) {
        return scalar.text() == null || scalar.text().isBlank()
                ? none(name, "one text")
                : scalar.text().strip();
    }

    private List<YamlNode> items(String name) {
        if (node(name) instanceof YamlNode.Sequence list) {
            return list.items();
        }
        none(name, "a list");
        return List.of();
    }

    private String none(String name, String shape) {
        problem(name, group.entries().containsKey(name) ? "must be %s.".formatted(shape) : "is missing.");
        return "";
    }

    private YamlNode node(String name) {
        asked.add(name);
        YamlNode.Entry entry = group.entries().get(name);
        return entry == null ? null : entry.value();
    }

    private int line(String name) {
        YamlNode.Entry entry = group.entries().get(name);
        return entry == null ? group.line() : entry.line();
    }
}
