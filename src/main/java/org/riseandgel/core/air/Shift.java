package org.riseandgel.core.air;

import java.util.List;
import org.riseandgel.core.quantity.Checks;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.TimeSpan;

/**
 * A working day in spells of different air, all together 24 hours at most. A teaching estimate: it measures nothing and
 * clears nobody.
 */
public record Shift(List<Spell> spells) {
    /**
     * 2.5 mg/m³ as F over 8 hours: OSHA, 29 CFR 1910.1000, table Z-1; NIOSH and ACGIH have the same. Other countries have
     * their own.
     */
    public static final FluorideInAir LIMIT = FluorideInAir.ofMilligramsPerCubicMetre(2.5);

    private static final double REFERENCE_HOURS = 8;
    private static final double LONGEST_HOURS = 24;

    /** A time in one and the same air. */
    public record Spell(FluorideInAir air, TimeSpan time) {}

    /** @throws OutOfRangeException when the spells take more than 24 hours together */
    public Shift {
        spells = List.copyOf(spells);
        double hours =
                spells.stream().mapToDouble(spell -> spell.time().inHours()).sum();
        Checks.inRange("hours of all spells together", hours, 0, LONGEST_HOURS);
    }

    /**
     * The 8-hour time-weighted average, E = Σ Cᵢ·Tᵢ ÷ 8 h. The divisor is 8 whatever the spells add up to: what is missing
     * is clean air, and a longer day comes out higher. Source: 29 CFR 1910.1000(d)(1).
     */
    public FluorideInAir average() {
        return new FluorideInAir(spells.stream()
                        .mapToDouble(spell -> spell.air().inMilligramsPerCubicMetre()
                                * spell.time().inHours())
                        .sum()
                / REFERENCE_HOURS);
    }

    /** The average as a share of a limit of more than zero: above 1 it is exceeded. */
    public double shareOf(FluorideInAir limit) {
        return average().inMilligramsPerCubicMetre()
                / Checks.positive("limit in mg/m³ as F", limit.inMilligramsPerCubicMetre());
    }
}
