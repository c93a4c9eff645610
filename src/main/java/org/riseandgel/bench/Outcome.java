package org.riseandgel.bench;

import java.util.List;
import java.util.Map;
import org.riseandgel.core.quantity.Quantity;
import org.riseandgel.core.quantity.Unit;

/** What a run of a calculation gave: results by name, the working, the slips with their wrong answers, and notes. */
public record Outcome(Map<String, Quantity> results, List<Step> steps, List<SlipAnswer> slips, List<String> notes) {

    /**
     * One line of the working. Numbers are kept as quantities so that the reader's own decimal mark is used when they
     * are written: {@code numbers} has {@code {}} for each of {@code in}.
     */
    public record Step(
            String id, String label, String formula, String numbers, List<Work.In> in, Quantity value, Unit unit) {}

    /** The answer somebody gets for a result by making a slip, with one line that says why. */
    public record SlipAnswer(Slip slip, String result, Quantity wrong, String line) {}
}
