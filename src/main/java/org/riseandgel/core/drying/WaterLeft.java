package org.riseandgel.core.drying;

import org.riseandgel.core.quantity.Concentration;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.OutOfRangeException;

/**
 * How wet a piece still is, from three masses of it: at first, now, and dry. Water at first = first − dry, water left =
 * now − dry, share left = water left ÷ water at first. The dry mass is that of an earlier piece of the same mold and
 * batch, or what {@link WeighBack} finds.
 *
 * @param first the piece when it was first weighed, more than when dry
 * @param now the piece now, from its mass when dry up to its first mass
 * @param dry the piece when all water has left it
 */
public record WaterLeft(Mass first, Mass now, Mass dry) {
    public WaterLeft {
        if (!(first.inGrams() > dry.inGrams())) {
            throw refused("first", first, "more than the %s g of the dry piece".formatted(dry.inGrams()));
        }
        if (now.inGrams() < dry.inGrams() || now.inGrams() > first.inGrams()) {
            throw refused("now", now, "from %s g, dry, to %s g, at first".formatted(dry.inGrams(), first.inGrams()));
        }
    }

    /** Water in the piece when it was first weighed. */
    public Mass atFirst() {
        return Mass.ofGrams(first.inGrams() - dry.inGrams());
    }

    /** Water still in it. */
    public Mass left() {
        return Mass.ofGrams(now.inGrams() - dry.inGrams());
    }

    /** Share of the first water that is still in it, 0 to 100 %. */
    public Concentration shareLeft() {
        return Concentration.ofPercent(100 * left().inGrams() / atFirst().inGrams());
    }

    private static OutOfRangeException refused(String what, Mass mass, String allowed) {
        return OutOfRangeException.because(
                what, "the piece at “%s” is %s g, must be %s".formatted(what, mass.inGrams(), allowed));
    }
}
