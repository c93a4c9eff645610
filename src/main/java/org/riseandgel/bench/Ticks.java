package org.riseandgel.bench;

import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/** Where an axis has its figures: steps of 1, 2 or 5 times a power of ten. */
record Ticks(double low, double high, double step) {
    private static final int WANTED = 6;

    /** About half a dozen of them over a range that is not empty. */
    static Ticks of(double low, double high) {
        double rough = (high - low) / WANTED;
        double power = StrictMath.pow(10, StrictMath.floor(StrictMath.log10(rough)));
        double times = rough / power;
        return new Ticks(low, high, (times <= 1 ? 1 : times <= 2 ? 2 : times <= 5 ? 5 : 10) * power);
    }

    /** The figures, those at both ends too if they fall there. */
    DoubleStream figures() {
        int first = (int) StrictMath.ceil(low / step - 1e-9);
        int last = (int) StrictMath.floor(high / step + 1e-9);
        return IntStream.rangeClosed(first, last).mapToDouble(i -> i * step);
    }
}
