package org.riseandgel.core.quantity;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;

/** The lists of typed texts with what they must be read as. */
record TypedNumbers(
        String id,
        DecimalMark home,
        String text,
        String outcome,
        String value,
        String unit,
        String figures,
        String note) {

    static List<TypedNumbers> all() {
        return Stream.concat(load("typed-numbers.tsv"), load("typed-numbers-more.tsv"))
                .toList();
    }

    private static Stream<TypedNumbers> load(String name) {
        try (InputStream file = TypedNumbers.class.getResourceAsStream(name)) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#") && !line.startsWith("id\t"))
                    .map(TypedNumbers::of);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static TypedNumbers of(String line) {
        String[] cells = line.split("\t", -1);
        return new TypedNumbers(
                cells[0],
                DecimalMark.valueOf(cells[1]),
                unescaped(cells[2]),
                cells[3],
                cells[4],
                cells[5],
                cells[6],
                cells[7]);
    }

    private static String unescaped(String escaped) {
        StringBuilder text = new StringBuilder();
        for (int at = 0; at < escaped.length(); at++) {
            if (escaped.startsWith("\\u", at)) {
                text.append((char) Integer.parseInt(escaped.substring(at + 2, at + 6), 16));
                at += 5;
            } else {
                text.append(escaped.charAt(at));
            }
        }
        return text.toString();
    }

    Reading read() {
        return NumberReader.of(home).read(text);
    }

    /** The expected value as an exact fraction. */
    Rational expected() {
        String[] parts = value.split("/");
        return parts.length == 1 ? Rational.of(value) : Rational.of(Long.parseLong(parts[0]), Long.parseLong(parts[1]));
    }

    /** One line that says all that was read, to compare readings with. */
    static String told(Reading reading) {
        return reading.outcome() + " " + reading.value() + " "
                + reading.typedUnit().map(Unit::code).orElse("") + " " + reading.figures() + " " + reading.choices()
                + " "
                + reading.message();
    }

    @Override
    public String toString() {
        return id + " " + note;
    }
}
