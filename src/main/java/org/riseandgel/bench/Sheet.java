package org.riseandgel.bench;

import io.quarkus.qute.RawString;
import java.util.List;

/** What a bench sheet's page shows. Everything is written out, in the school's decimal mark. */
public record Sheet(
        String id,
        String title,
        String purpose,
        List<Field> fields,
        List<String> cautions,
        List<FieldProblem> problems,
        Worked worked,
        String stickAddress,
        UnitSwitch units) {

    /** The units shown now, and where the same sheet is in the others; absent where the person chooses a unit. */
    public record UnitSwitch(UnitSystem shown, String otherAddress) {}

    /** One field of the form; options only where one is to be picked, else null; lines where a table is written, file where one is sent. */
    public record Field(
            String name,
            String label,
            String help,
            String value,
            String unit,
            List<Input.Option> options,
            boolean lines,
            boolean file) {}

    /** What came out; absent while something is wrong. The drawing is our own SVG, or null. */
    public record Worked(
            List<Line> results, List<Step> steps, List<Table> tables, List<String> notes, RawString drawing) {}

    /** A label and what it is worth: a number with its unit, or a finding in words. */
    public record Line(String label, String value, boolean words) {}

    /** A line of the working, in the words of the tag that shows it. */
    public record Step(String label, String formula, String numbers, String value) {}

    /** A table, written out; numbers and the headings above them are set to the right. */
    public record Table(String caption, List<Cell> headings, List<List<Cell>> rows) {}

    /** A cell of a table. */
    public record Cell(String text, boolean number) {}

    /** Whether a file comes with the form, which no address can carry. */
    public boolean isSent() {
        return fields.stream().anyMatch(Field::file);
    }

    /** Whether there is nothing wrong. */
    public boolean isWorked() {
        return worked != null;
    }
}
