package org.riseandgel.core.batch;

import org.riseandgel.core.quantity.Checks;
import org.riseandgel.core.quantity.Density;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Ratio;
import org.riseandgel.core.quantity.Volume;

/**
 * Foam against the liquid it was whipped from. Expansion ratio = foam volume ÷ liquid volume; since the mass stays the
 * same, that is liquid density ÷ foam density. The mass of the air in the foam is neglected: about 1.2 g in a litre.
 */
public final class Expansion {
    private Expansion() {}

    /**
     * Density of foam struck off level in a cup: (filled − empty) ÷ volume of the cup.
     *
     * @throws OutOfRangeException when the filled cup is not heavier than the empty one, or the cup holds nothing
     */
    public static Density foamDensity(Mass filled, Mass empty, Volume cup) {
        return foamDensity(foamMass(filled, empty), cup);
    }

    /** Density of a mass of foam that fills a cup: mass ÷ volume. */
    public static Density foamDensity(Mass foam, Volume cup) {
        return Density.ofGramsPerMillilitre(
                foam.inGrams() / Checks.positive("cup volume in millilitres", cup.inMillilitres()));
    }

    /** What the foam in a cup weighs: filled − empty. */
    public static Mass foamMass(Mass filled, Mass empty) {
        if (!(filled.inGrams() > empty.inGrams())) {
            throw OutOfRangeException.because(
                    "filled cup",
                    "the filled cup is %s g, must be more than the empty cup's %s g"
                            .formatted(filled.inGrams(), empty.inGrams()));
        }
        return Mass.ofGrams(filled.inGrams() - empty.inGrams());
    }

    /** Expansion ratio from densities: liquid density ÷ foam density. */
    public static Ratio byDensity(Density liquid, Density foam) {
        return Ratio.of(liquid.inGramsPerMillilitre() / foam.inGramsPerMillilitre());
    }

    /** Expansion ratio from volumes: foam ÷ liquid, the liquid being more than zero. */
    public static Ratio byVolume(Volume foam, Volume liquid) {
        return Ratio.of(foam.inMillilitres() / Checks.positive("liquid in millilitres", liquid.inMillilitres()));
    }

    /** The liquid to whip for a volume of foam: foam ÷ ratio, the ratio being 1 or more. */
    public static Volume liquidFor(Volume foam, Ratio expansion) {
        return Volume.ofMillilitres(foam.inMillilitres() / checked(expansion));
    }

    /** The foam that a liquid gives: liquid × ratio, the ratio being 1 or more. */
    public static Volume foamFrom(Volume liquid, Ratio expansion) {
        return Volume.ofMillilitres(liquid.inMillilitres() * checked(expansion));
    }

    private static double checked(Ratio expansion) {
        return Checks.inRange("expansion ratio", expansion.asNumber(), 1, Checks.LARGEST);
    }
}
