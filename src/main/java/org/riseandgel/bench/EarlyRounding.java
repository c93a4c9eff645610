package org.riseandgel.bench;

import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import org.riseandgel.core.quantity.Quantity;
import org.riseandgel.core.quantity.Rounding;
import org.riseandgel.core.quantity.Unit;

/**
 * Works a calculation as somebody does who rounds every value to two figures before going on. The last value is left as
 * it comes: rounding there is no slip.
 */
final class EarlyRounding implements Work {
    private static final int FIGURES_KEPT = 2;

    private final Map<String, Quantity> values = new LinkedHashMap<>();
    private final Map<Quantity, Quantity> beforeRounding = new IdentityHashMap<>();

    /** Results by name and steps by id, each as it comes out when all before it was rounded. */
    Map<String, Quantity> values() {
        return values;
    }

    @Override
    public <Q extends Quantity> Q step(
            String id, String label, String formula, String numbers, Q value, Unit unit, In... in) {
        values.put(id, value);
        Q rounded = rounded(value, unit);
        beforeRounding.put(rounded, value);
        return rounded;
    }

    @Override
    public void result(String name, Quantity value) {
        values.put(name, beforeRounding.getOrDefault(value, value));
    }

    @Override
    public void result(String name, Quantity value, Unit unit) {
        result(name, value);
    }

    @Override
    public void finding(String name, String words) {
        // Words are not rounded.
    }

    @Override
    public void slip(Slip slip, String result, Supplier<? extends Quantity> wrong, String line) {
        // One slip at a time.
    }

    @Override
    public void table(Outcome.Table table) {
        // Only the numbers that are asked for matter here.
    }

    @Override
    public void note(String note, In... in) {
        // Nobody reads this run.
    }

    @SuppressWarnings("unchecked") // a quantity of the same kind is of the same class
    private static <Q extends Quantity> Q rounded(Q value, Unit unit) {
        double number = Rounding.toSignificant(value.in(unit), FIGURES_KEPT);
        return (Q) Quantity.of(number, unit);
    }
}
