package org.riseandgel.core.statistics;

/**
 * A sum that keeps the digits a plain sum of doubles drops (A. Neumaier, Zeitschrift für Angewandte Mathematik und
 * Mechanik 54, 1974; from memory). Of n terms the error is about one rounding of the total plus n·2⁻¹⁰⁶ of Σ|term|.
 */
public final class CompensatedSum {
    private double sum;
    private double lost;

    /** The sum of the values. */
    public static double of(double... values) {
        CompensatedSum sum = new CompensatedSum();
        for (double value : values) {
            sum.add(value);
        }
        return sum.total();
    }

    /** Adds a term. */
    public void add(double term) {
        double next = sum + term;
        lost += Math.abs(sum) >= Math.abs(term) ? (sum - next) + term : (term - next) + sum;
        sum = next;
    }

    /** What has been added up so far. */
    public double total() {
        return sum + lost;
    }
}
