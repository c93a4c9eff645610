package org.riseandgel.exercise;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.riseandgel.core.quantity.Unit;

/** One value of a content file with its place; reading it as the wrong thing is noted as a problem and gives nothing. */
public final class Field {
    private static final int LONGEST_NUMBER = 15;

    private final YamlNode node;
    private final int line;
    private final String path;
    private final Problems problems;

    Field(YamlNode node, int line, String path, Problems problems) {
        this.node = node;
        this.line = line;
        this.path = path;
        this.problems = problems;
    }

    /** The whole file as one group of fields. */
    public static Optional<Fields> root(YamlNode node, Problems problems) {
        return new Field(node, node.line(), "", problems).group();
    }

    /** The line it stands on. */
    public int line() {
        return line;
    }

    /** Its place in the file: "ask[1].unit". */
    public String path() {
        return path;
    }

    /** Notes a problem with this field. */
    public void problem(String message) {
        problems.add(line, path, message);
    }

    /** Whether the value is a single one, no list and no group. */
    public boolean isSingle() {
        return node instanceof YamlNode.Scalar;
    }

    /** Text of 1 to so many characters, without blanks at its ends. */
    public Optional<String> text(int longest) {
        if (!(node instanceof YamlNode.Scalar scalar)) {
            return refused("Is %s; write a text.".formatted(node.words()));
        }
        if (scalar.text() == null || scalar.text().isBlank()) {
            return refused("Is empty; write a text.");
        }
        String text = scalar.text().strip();
        return text.length() > longest
                ? refused("Has %d characters; at most %d fit.".formatted(text.length(), longest))
                : Optional.of(text);
    }

    /** A decimal number, written with a point and without exponent: its exact value with the places as written. */
    public Optional<BigDecimal> number() {
        return node instanceof YamlNode.Scalar scalar && scalar.text() != null && isDecimal(scalar.text())
                ? Optional.of(new BigDecimal(scalar.text()))
                : refused("Is %s; write a plain number such as 12.5, with at most %d digits."
                        .formatted(node.words(), LONGEST_NUMBER));
    }

    /** A whole number from low to high. */
    public Optional<Integer> whole(int low, int high) {
        Optional<Integer> number = text(LONGEST_NUMBER)
                .filter(text -> text.matches("-?[0-9]{1,9}"))
                .map(Integer::valueOf)
                .filter(value -> value >= low && value <= high);
        return number.isPresent()
                ? number
                : refused("Is %s; write a whole number from %d to %d.".formatted(node.words(), low, high));
    }

    /** True or false. */
    public Optional<Boolean> flag() {
        Optional<String> text = plain().map(String::strip);
        return text.filter(word -> word.equals("true") || word.equals("false")).isPresent()
                ? text.map(Boolean::valueOf)
                : refused("Is %s; write true or false.".formatted(node.words()));
    }

    /** A unit by its code. */
    public Optional<Unit> unit() {
        return text(40).flatMap(code -> {
            Optional<Unit> unit = Unit.byCode(code);
            return unit.isPresent()
                    ? unit
                    : refused(
                            "“%s” is no unit known here; write one such as g, mm, mL, g/mL, Cel, min, php, %% or \"1\"."
                                    .formatted(code));
        });
    }

    /** The fields of a group. */
    public Optional<Fields> group() {
        return node instanceof YamlNode.Mapping mapping
                ? Optional.of(new Fields(mapping, line, path, problems))
                : refused("Is %s; write a group of fields, one “name: value” each.".formatted(node.words()));
    }

    /** The values of a list of 1 to so many. */
    public List<Field> list(int most) {
        if (!(node instanceof YamlNode.Sequence sequence)) {
            problem("Is %s; write a list, in brackets or with one dash per line.".formatted(node.words()));
            return List.of();
        }
        int count = sequence.items().size();
        if (count == 0 || count > most) {
            problem("Has %d entries; write 1 to %d.".formatted(count, most));
        }
        return items();
    }

    /** The text, if it is a single value; says nothing if not. */
    Optional<String> plain() {
        return node instanceof YamlNode.Scalar scalar ? Optional.ofNullable(scalar.text()) : Optional.empty();
    }

    /** The values of a list, none if it is none; says nothing. */
    List<Field> items() {
        List<Field> fields = new ArrayList<>();
        if (node instanceof YamlNode.Sequence sequence) {
            for (YamlNode item : sequence.items()) {
                fields.add(new Field(item, item.line(), path + "[" + (fields.size() + 1) + "]", problems));
            }
        }
        return fields;
    }

    /** The field of that name in a group, if it is one and has it; says nothing. */
    Optional<Field> inner(String name) {
        return node instanceof YamlNode.Mapping mapping
                ? new Fields(mapping, line, path, problems).find(name)
                : Optional.empty();
    }

    private <T> Optional<T> refused(String message) {
        problem(message);
        return Optional.empty();
    }

    private static boolean isDecimal(String text) {
        int digits = 0;
        int marks = 0;
        for (int i = text.startsWith("-") ? 1 : 0; i < text.length(); i++) {
            char c = text.charAt(i);
            digits += c >= '0' && c <= '9' ? 1 : 0;
            marks += c == '.' ? 1 : 0;
        }
        int sign = text.startsWith("-") ? 1 : 0;
        boolean edges = digits > 0 && !text.endsWith(".") && text.charAt(sign) != '.';
        return edges && digits <= LONGEST_NUMBER && marks <= 1 && digits + marks + sign == text.length();
    }
}
