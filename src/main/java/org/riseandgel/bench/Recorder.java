package org.riseandgel.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Quantity;
import org.riseandgel.core.quantity.Unit;

/** Writes down a run with exact values and with its slips. */
final class Recorder implements Work {
    private final Map<String, Quantity> results = new LinkedHashMap<>();
    private final Map<String, Unit> units = new LinkedHashMap<>();
    private final List<Outcome.Step> steps = new ArrayList<>();
    private final List<Outcome.SlipAnswer> slips = new ArrayList<>();
    private final List<Outcome.Table> tables = new ArrayList<>();
    private final List<Outcome.Note> notes = new ArrayList<>();
    private final Map<String, String> findings = new LinkedHashMap<>();

    Recorder(Calculation calculation) {
        for (Result result : calculation.results()) {
            if (result.unit() != null) {
                units.put(result.name(), result.unit());
            }
        }
    }

    @Override
    public <Q extends Quantity> Q step(
            String id, String label, String formula, String numbers, Q value, Unit unit, In... in) {
        steps.add(new Outcome.Step(id, label, formula, numbers, List.of(in), value, unit));
        return value;
    }

    @Override
    public void result(String name, Quantity value) {
        results.put(name, value);
    }

    @Override
    public void result(String name, Quantity value, Unit unit) {
        result(name, value);
        units.put(name, unit);
    }

    @Override
    public void finding(String name, String words) {
        findings.put(name, words);
    }

    @Override
    public void slip(Slip slip, String result, Supplier<? extends Quantity> wrong, String line) {
        try {
            slips.add(new Outcome.SlipAnswer(slip, result, wrong.get(), line));
        } catch (OutOfRangeException impossible) {
            // This slip leads to no answer that anybody could hand in, so there is none to look for.
            return;
        }
    }

    @Override
    public void table(Outcome.Table table) {
        tables.add(table);
    }

    @Override
    public void note(String note, In... in) {
        notes.add(new Outcome.Note(note, List.of(in)));
    }

    /** Results by name and steps by id. */
    Map<String, Quantity> values() {
        Map<String, Quantity> values = new LinkedHashMap<>();
        steps.forEach(step -> values.put(step.id(), step.value()));
        values.putAll(results);
        return values;
    }

    /** What was written down, with more slips after its own; without those that give a right or a known answer. */
    Outcome outcome(List<Outcome.SlipAnswer> further) {
        Outcome bare = new Outcome(results, units, steps, List.of(), tables, notes, findings);
        List<Outcome.SlipAnswer> telling = new ArrayList<>();
        for (Outcome.SlipAnswer slip : joined(slips, further)) {
            if (differsFromRight(bare, slip) && differsFromAll(telling, slip)) {
                telling.add(slip);
            }
        }
        return new Outcome(results, units, steps, telling, tables, notes, findings);
    }

    private static List<Outcome.SlipAnswer> joined(List<Outcome.SlipAnswer> own, List<Outcome.SlipAnswer> further) {
        List<Outcome.SlipAnswer> all = new ArrayList<>(own);
        all.addAll(further);
        return all;
    }

    private static boolean differsFromRight(Outcome outcome, Outcome.SlipAnswer slip) {
        Quantity right = outcome.value(slip.result())
                .orElseThrow(() -> new IllegalStateException("a slip for " + slip.result() + ", which is no result"));
        return !Sameness.same(right, slip.wrong());
    }

    private static boolean differsFromAll(List<Outcome.SlipAnswer> others, Outcome.SlipAnswer slip) {
        return others.stream()
                .filter(other -> other.result().equals(slip.result()))
                .noneMatch(other -> Sameness.same(other.wrong(), slip.wrong()));
    }
}
