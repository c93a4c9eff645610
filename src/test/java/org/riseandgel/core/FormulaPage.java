package org.riseandgel.core;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.riseandgel.core.quantity.Quantity;
import org.riseandgel.core.quantity.Unit;

/**
 * A page of formulas with its worked examples. An example is a fenced block marked "example": a name, inputs as "key =
 * value unit" or a list of numbers, and results as "=> key = value unit".
 */
record FormulaPage(Path file, String text, List<FormulaPage.Example> examples) {
    private static final String FENCE = "```";

    /** One worked example: what it calls, with what, and what must come out. */
    record Example(String name, Map<String, String> inputs, Map<String, String> results) {
        <Q extends Quantity> Q quantity(String key, Class<Q> type) {
            String[] parts = input(key).split(" ", 2);
            Unit unit = Unit.byCode(parts[1]).orElseThrow(() -> new AssertionError("no unit " + parts[1]));
            return type.cast(Quantity.of(new BigDecimal(parts[0]).doubleValue(), unit));
        }

        double number(String key) {
            return new BigDecimal(input(key)).doubleValue();
        }

        List<Double> numbers(String key) {
            return Stream.of(input(key).split(","))
                    .map(number -> new BigDecimal(number.strip()).doubleValue())
                    .toList();
        }

        private String input(String key) {
            String input = inputs.get(key);
            if (input == null) {
                throw new AssertionError("example " + name + " has no input " + key);
            }
            return input;
        }
    }

    static FormulaPage read(Path file) {
        try {
            String text = Files.readString(file);
            return new FormulaPage(file, text, examples(text));
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    @Override
    public String toString() {
        return file.getFileName().toString();
    }

    private static List<Example> examples(String text) {
        List<Example> examples = new ArrayList<>();
        List<String> block = null;
        for (String line : text.lines().toList()) {
            if (line.equals(FENCE + "example")) {
                block = new ArrayList<>();
            } else if (line.equals(FENCE) && block != null) {
                examples.add(example(block));
                block = null;
            } else if (block != null) {
                block.add(line);
            }
        }
        return examples;
    }

    private static Example example(List<String> lines) {
        Map<String, String> inputs = new LinkedHashMap<>();
        Map<String, String> results = new LinkedHashMap<>();
        for (String line : lines.subList(1, lines.size())) {
            boolean result = line.startsWith("=> ");
            String[] parts = (result ? line.substring(3) : line).split(" = ", 2);
            (result ? results : inputs).put(parts[0].strip(), parts[1].strip());
        }
        return new Example(lines.get(0).strip(), inputs, results);
    }
}
