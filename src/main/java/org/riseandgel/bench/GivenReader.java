package org.riseandgel.bench;

import java.util.ArrayList;
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
 * Reads the inputs of a calculation from typed text. A field that is empty or missing takes its default; a number without
 * a unit is in the input's own; any unit of the same kind is converted exactly. All problems are found, not only the
 * first.
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
        Given given = new Given(Map.of(), Map.of());
        List<FieldProblem> problems = new ArrayList<>();
        for (Input input : calculation.inputs()) {
            try {
                given = with(given, input, typed.getOrDefault(input.name(), ""), problems);
            } catch (OutOfRangeException refused) {
                problems.add(new FieldProblem(input.name(), text.closed(refused.getMessage())));
            }
        }
        return new GivenReading(problems.isEmpty() ? Optional.of(given) : Optional.empty(), problems);
    }

    private Given with(Given given, Input input, String typed, List<FieldProblem> problems) {
        if (input instanceof Input.Measured measured) {
            return nothing(typed) ? byDefault(given, measured) : measured(given, measured, typed);
        }
        if (input instanceof Input.Anything anything) {
            return nothing(typed)
                    ? given.with(anything.name(), anything.defaultQuantity(), anything.defaultUnit())
                    : anything(given, anything, typed);
        }
        if (input instanceof Input.Readings table) {
            return given.reading(table.name(), new ReadingLines(table, this::quantity, text).read(typed, problems));
        }
        if (input instanceof Input.Mesh mesh) {
            return given.measuring(mesh.name(), mesh.example());
        }
        return chosen(given, (Input.Choice) input, typed);
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
        String wanted = typed.isBlank() ? input.options().get(0).value() : typed;
        if (input.options().stream().noneMatch(option -> option.value().equals(wanted))) {
            throw refused(input, "“%s” is not among the choices. Choose one from the list".formatted(wanted));
        }
        return given.choosing(input.name(), wanted);
    }

    private static String inWords(Unit unit) {
        return unit.symbol().isEmpty() ? "as a plain number" : "in " + unit.symbol();
    }

    private static OutOfRangeException refused(Input input, String why) {
        return OutOfRangeException.because(input.label(), input.label() + ": " + why + ".");
    }
}
