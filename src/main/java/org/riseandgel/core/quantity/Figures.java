package org.riseandgel.core.quantity;

/**
 * How many significant figures a typed number shows: from {@code least} to {@code most}.
 *
 * <p>Zeros at the end of a whole number may or may not count, so 1200 shows 2 to 4 figures; a written mark settles it,
 * so 1200. shows 4. A fraction is exact and shows none. Feet and inches say nothing about figures.
 */
public record Figures(int least, int most, boolean exact) {
    /** A fraction: the value itself, not a rounding of it. */
    public static final Figures EXACT = new Figures(0, 0, true);
    /** Zero, which has no first significant figure. */
    public static final Figures ZERO = new Figures(0, 0, false);
    /** Feet and inches: any number of figures may be meant. */
    public static final Figures UNSTATED = new Figures(0, Integer.MAX_VALUE, false);

    public Figures {
        if (least < 0 || least > most) {
            throw new IllegalArgumentException("figures run from " + least + " to " + most);
        }
    }

    /** The figures of digits as written, without mark, sign or exponent. */
    static Figures of(String digits, boolean markWritten) {
        int first = 0;
        while (first < digits.length() && digits.charAt(first) == '0') {
            first++;
        }
        int last = digits.length();
        while (last > first && digits.charAt(last - 1) == '0') {
            last--;
        }
        if (first == last) {
            return ZERO;
        }
        int most = digits.length() - first;
        return new Figures(markWritten ? most : last - first, most, false);
    }

    /** Whether the number can be meant to show this many figures; a fraction, zero, or feet and inches always can. */
    public boolean allow(int wanted) {
        return exact || equals(ZERO) || least <= wanted && wanted <= most;
    }

    /** "3", "2-4", "exact", "0" for zero and "-" for feet and inches. */
    @Override
    public String toString() {
        if (exact) {
            return "exact";
        }
        if (equals(UNSTATED)) {
            return "-";
        }
        return least == most ? String.valueOf(least) : least + "-" + most;
    }
}
