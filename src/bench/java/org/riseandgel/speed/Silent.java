package org.riseandgel.speed;

import java.util.function.Supplier;
import org.riseandgel.bench.Outcome;
import org.riseandgel.bench.Slip;
import org.riseandgel.bench.Work;
import org.riseandgel.core.quantity.Quantity;
import org.riseandgel.core.quantity.Unit;

/** Keeps nothing but the last result. */
final class Silent implements Work {
    private double last;

    double last() {
        return last;
    }

    @Override
    public <Q extends Quantity> Q step(
            String id, String label, String formula, String numbers, Q value, Unit unit, In... in) {
        return value;
    }

    @Override
    public void result(String name, Quantity value) {
        last = value.inBase();
    }

    @Override
    public void result(String name, Quantity value, Unit unit) {
        last = value.inBase();
    }

    @Override
    public void finding(String name, String words) {
        // nothing is shown
    }

    @Override
    public void slip(Slip slip, String result, Supplier<? extends Quantity> wrong, String line) {
        // a bare calculation makes none
    }

    @Override
    public void table(Outcome.Table table) {
        // nothing is shown
    }

    @Override
    public void note(String note, In... in) {
        // nothing is shown
    }
}
