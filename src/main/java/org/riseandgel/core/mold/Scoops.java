package org.riseandgel.core.mold;

import org.riseandgel.core.quantity.Checks;
import org.riseandgel.core.quantity.TimeSpan;
import org.riseandgel.core.quantity.Volume;

/**
 * Foam carried into a mold scoop by scoop: scoops = foam ÷ scoop, rounded up; each then takes foam ÷ scoops.
 *
 * @param foam all that is to go in, more than zero
 * @param largest what a scoop holds, more than zero
 */
public record Scoops(Volume foam, Volume largest) {
    private static final double MOST = 100_000;

    public Scoops {
        Checks.positive("foam in millilitres", foam.inMillilitres());
        Checks.positive("scoop in millilitres", largest.inMillilitres());
        Checks.inRange("number of scoops", foam.inMillilitres() / largest.inMillilitres(), 0, MOST);
    }

    /** foam ÷ scoop, before it is rounded up. */
    public double exact() {
        return foam.inMillilitres() / largest.inMillilitres();
    }

    /** How many scoops it takes. */
    public int count() {
        return roundedUp(exact());
    }

    /** What each holds when all are filled alike: foam ÷ scoops. */
    public Volume each() {
        return Volume.ofMillilitres(foam.inMillilitres() / count());
    }

    /** The time for each: filling ÷ scoops. */
    public TimeSpan pace(TimeSpan filling) {
        return TimeSpan.ofSeconds(filling.inSeconds() / count());
    }

    /** Whole scoops, 1 or more; 900 mL in scoops of 60 mL are 15 whatever the last bit of the division says. */
    public static int roundedUp(double scoops) {
        return (int) Math.max(1, Math.ceil(scoops * (1 - 1e-12)));
    }
}
