package org.riseandgel.core.statistics;

import java.util.List;
import java.util.stream.IntStream;

/** Data of the NIST Statistical Reference Datasets, as (y, x) in the files; x and y have no units. */
public final class NistSets {
    private NistSets() {}

    /** Norris, linear, 36 readings. */
    static List<Point> norris() {
        return points(
                new double[] {
                    0.1, 338.8, 118.1, 888.0, 9.2, 228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3, 0.1, 778.1, 668.8,
                    339.3, 448.9, 10.8, 557.7, 228.3, 998.0, 888.8, 119.6, 0.3, 0.6, 557.6, 339.3, 888.0, 998.5, 778.9,
                    10.2, 117.6, 228.9, 668.4, 449.2, 0.2
                },
                new double[] {
                    0.2, 337.4, 118.2, 884.6, 10.1, 226.5, 666.3, 996.3, 448.6, 777.0, 558.2, 0.4, 0.6, 775.5, 666.9,
                    338.0, 447.5, 11.6, 556.0, 228.1, 995.8, 887.6, 120.2, 0.3, 0.3, 556.8, 339.1, 887.2, 999.0, 779.0,
                    11.1, 118.3, 229.2, 669.1, 448.9, 0.5
                });
    }

    /** BoxBOD, nonlinear, higher level of difficulty. */
    static List<Point> boxBod() {
        return points(new double[] {109, 149, 149, 191, 213, 224}, new double[] {1, 2, 3, 5, 7, 10});
    }

    /** Misra1a, nonlinear, lower level of difficulty. */
    static List<Point> misra1a() {
        return points(
                new double[] {
                    10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.40, 75.47, 81.78
                },
                new double[] {
                    77.6, 114.9, 141.1, 190.8, 239.9, 289.0, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760.0
                });
    }

    private static List<Point> points(double[] y, double[] x) {
        return IntStream.range(0, y.length).mapToObj(i -> new Point(x[i], y[i])).toList();
    }
}
