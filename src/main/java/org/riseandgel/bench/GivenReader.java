package org.riseandgel.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.NumberReader;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Quantity;
import org.riseandgel.core.quantity.Reading;
import org.riseandgel.core.quantity.ReadingOutcome;
import org.riseandgel.core.quantity.Unit;

/**
 * Reads the inputs of a calculation from typed text. A field that is missing takes its default; one that was left empty is
 * asked for, unless the choices made do not need it. A number without a unit is in the input's own; any unit of the same
 * kind is converted exactly. All problems are found, not only the first.
 */
public final class GivenReader {
    private final NumberReader reader;
    private final QuantityText text;

    private GivenReader(DecimalMark mark) {
        this.reader = NumberReader.of(mark);
        this.text = QuantityText.of(mark);
    }

    /** A reader for a school that writes the given decimal mark. */
    public static GivenReader of(DecimalMark mark) {
        return new GivenReader(mark);
    }

    /** Reads the typed values by input name; names that the calculation does not know are not looked at. */
    public GivenReading read(Calculation calculation, Map<String, String> typed) {
        Given given = firstChoices(calculation);
        List<FieldProblem> problems = new ArrayList<>();
        for (Input input : choicesFirst(calculation)) {
            try {
                given = with(given, calculation, input, typed.get(input.name()), problems);
            } catch (OutOfRangeException refused) {
                problems.add(new FieldProblem(input.name(), text.closed(refused.getMessage())));
            }
        }
        List<String> order = calculation.inputs().stream().map(Input::name).toList();
        problems.sort(Comparator.comparing(problem -> order.indexOf(problem.field())));
        return new GivenReading(problems.isEmpty() ? Optional.of(given) : Optional.empty(), problems);
    }

    /** Choices are read before the rest, because they decide what else is needed; problems are told in the form's order. */
    private static List<Input> choicesFirst(Calculation calculation) {
        return calculation.inputs().stream()
                .sorted(Comparator.comparing(input -> !(input instanceof Input.Choice)))
                .toList();
    }

    private static Given firstChoices(Calculation calculation) {
        Given given = new Given(Map.of(), Map.of());
        for (Input input : calculation.inputs()) {
            if (input instanceof Input.Choice choice) {
                given = given.choosing(choice.name(), choice.options().get(0).value());
            }
        }
        return given;
    }

    private Given with(Given given, Calculation calculation, Input input, String typed, List<FieldProblem> problems) {
        boolean empty = typed == null || nothing(typed);
        boolean used = calculation.uses(input.name(), given);
        if (empty && typed != null && used && !mayBeEmpty(input)) {
            throw asked(input);
        }
        if (input instanceof Input.Measured measured) {
            return !empty ? measured(given, measured, typed) : used ? byDefault(given, measured) : given;
        }
        if (input instanceof Input.Anything anything) {
            return empty
                    ? given.with(anything.name(), anything.defaultQuantity(), anything.defaultUnit())
                    : anything(given, anything, typed);
        }
        if (input instanceof Input.Readings table) {
            String lines = empty ? "" : typed;
            return given.reading(table.name(), new ReadingLines(table, this::quantity, text).read(lines, problems));
        }
        if (input instanceof Input.Mesh mesh) {
            return given.measuring(mesh.name(), mesh.example());
        }
        return empty ? given : chosen(given, (Input.Choice) input, typed);
    }

    /** A table without an example can be left out; a mesh is never typed. */
    private static boolean mayBeEmpty(Input input) {
        return input instanceof Input.Mesh
                || input instanceof Input.Readings table && table.example().isEmpty();
    }

    private OutOfRangeException asked(Input input) {
        if (input instanceof Input.Choice) {
            return refused(input, "nothing is chosen. Choose one from the list");
        }
        if (input instanceof Input.Readings table) {
            Given.Row first = table.exampleRows().get(0);
            return refused(
                    input,
                    "nothing is written. Write a reading to a line, such as "
                            + ReadingLines.written(table, first, text));
        }
        return refused(input, "nothing is written. Write a number, such as " + example(input));
    }

    private String example(Input input) {
        if (input instanceof Input.Anything anything) {
            return text.of(anything.defaultQuantity(), anything.defaultUnit());
        }
        Input.Measured measured = (Input.Measured) input;
        double number = measured.byDefault() == null ? measured.low() : measured.byDefault();
        return text.of(number, measured.unit());
    }

    private boolean nothing(String typed) {
        return reader.read(typed).outcome() == ReadingOutcome.EMPTY;
    }

    private Given byDefault(Given given, Input.Measured input) {
        if (input.byDefault() == null) {
            throw refused(input, "write a number, such as " + text.of(input.low(), input.unit()));
        }
        return given.with(input.name(), input.defaultQuantity());
    }

    private Given measured(Given given, Input.Measured input, String typed) {
        Quantity quantity = quantity(input, typed);
        Unit unit = reading(input, typed).typedUnit().orElse(input.unit()).whenAskedFor(input.kind());
        return unit == input.unit() ? given.with(input.name(), quantity) : given.with(input.name(), quantity, unit);
    }

    private Quantity quantity(Input.Measured input, String typed) {
        Reading reading = reading(input, typed);
        Unit unit = reading.typedUnit().orElse(input.unit()).whenAskedFor(input.kind());
        if (unit.kind() != input.kind()) {
            throw refused(
                    input,
                    "“%s” is %s, but %s is asked for. Write it %s"
                            .formatted(
                                    typed.strip(),
                                    unit.kind().one(),
                                    input.kind().one(),
                                    inWords(input.unit())));
        }
        double base = unit.toBase(reading.value()).toDouble();
        InputRange.check(input, input.unit().fromBase(base), text);
        return Quantity.ofBase(input.kind(), base);
    }

    private Given anything(Given given, Input.Anything input, String typed) {
        Reading reading = reading(input, typed);
        Unit unit = reading.typedUnit()
                .orElseThrow(() -> refused(
                        input,
                        "“%s” has no unit. Write the unit behind the number, as in %s"
                                .formatted(typed.strip(), text.of(input.defaultQuantity(), input.defaultUnit()))));
        return given.with(
                input.name(),
                Quantity.ofBase(unit.kind(), unit.toBase(reading.value()).toDouble()),
                unit);
    }

    private Reading reading(Input input, String typed) {
        Reading reading = reader.read(typed);
        if (!reading.ok()) {
            throw OutOfRangeException.because(input.label(), input.label() + ": " + reading.message());
        }
        return reading;
    }

    private static Given chosen(Given given, Input.Choice input, String typed) {
        if (input.options().stream().noneMatch(option -> option.value().equals(typed))) {
            throw refused(input, "“%s” is not among the choices. Choose one from the list".formatted(typed));
        }
        return given.choosing(input.name(), typed);
    }

    private static String inWords(Unit unit) {
        return unit.symbol().isEmpty() ? "as a plain number" : "in " + unit.symbol();
    }

    private static OutOfRangeException refused(Input input, String why) {
        return OutOfRangeException.because(input.label(), input.label() + ": " + why + ".");
    }
}
