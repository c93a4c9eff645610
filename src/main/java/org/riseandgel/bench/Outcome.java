package org.riseandgel.bench;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Quantity;
import org.riseandgel.core.quantity.Unit;

/**
 * What a run of a calculation gave: results by name and the unit each is shown in, the working, the slips with their
 * wrong answers, tables, notes, and findings in words by name. A result that cannot be told is absent. Numbers stay quantities all the way, so that the reader's own decimal mark is used
 * when they are written.
 */
public record Outcome(
        Map<String, Quantity> results,
        Map<String, Unit> units,
        List<Step> steps,
        List<SlipAnswer> slips,
        List<Table> tables,
        List<Note> notes,
        Map<String, String> findings) {
    public Outcome {
        results = Collections.unmodifiableMap(new LinkedHashMap<>(results));
        units = Collections.unmodifiableMap(new LinkedHashMap<>(units));
        steps = List.copyOf(steps);
        slips = List.copyOf(slips);
        tables = List.copyOf(tables);
        notes = List.copyOf(notes);
        findings = Collections.unmodifiableMap(new LinkedHashMap<>(findings));
    }

    /**
     * One line of the working: {@code numbers} is the formula with {@code {}} for each of {@code in}. A step that gives
     * a result carries the result's name as its id.
     */
    public record Step(
            String id, String label, String formula, String numbers, List<Work.In> in, Quantity value, Unit unit) {
        public Step {
            in = List.copyOf(in);
        }
    }

    /** The answer somebody gets for a result, or for a step by its id, by making a slip, and one line that says why. */
    public record SlipAnswer(Slip slip, String result, Quantity wrong, String line) {}

    /** A remark, with {@code {}} for each number. */
    public record Note(String text, List<Work.In> in) {
        public Note {
            in = List.copyOf(in);
        }
    }

    /** Several results that belong together: the marks of a stick, the rows of a batch. */
    public record Table(String caption, List<String> headings, List<List<Cell>> rows) {
        public Table {
            headings = List.copyOf(headings);
            rows = rows.stream().map(List::copyOf).toList();
        }
    }

    /** Words, or a quantity at the readability of its instrument in that unit; the other is null. */
    public record Cell(String words, Quantity quantity, Unit unit, double readability) {
        /** A cell of words. */
        public static Cell of(String words) {
            return new Cell(words, null, null, 0);
        }

        /** A cell with a number, rounded when it is written. */
        public static Cell of(Quantity quantity, Unit unit, double readability) {
            return new Cell(null, quantity, unit, readability);
        }
    }

    /** The value of a result, or of a step by its id. */
    public Optional<Quantity> value(String name) {
        Quantity result = results.get(name);
        return result != null ? Optional.of(result) : step(name).map(Step::value);
    }

    /**
     * The value of a result that is needed.
     *
     * @throws OutOfRangeException when these inputs do not tell it
     */
    public Quantity told(String result) {
        Quantity value = results.get(result);
        if (value == null) {
            throw OutOfRangeException.because(result, result + " cannot be told from these numbers");
        }
        return value;
    }

    /** The step of that id. */
    public Optional<Step> step(String id) {
        return steps.stream().filter(step -> step.id().equals(id)).findFirst();
    }

    /** The wrong answers to one result or step. */
    public List<SlipAnswer> slipsOf(String name) {
        return slips.stream().filter(slip -> slip.result().equals(name)).toList();
    }
}
