package org.riseandgel.exercise;

/**
 * A small generator of numbers that look random and are the same for ever: SplitMix64.
 *
 * <p>state ← state + 0x9E3779B97F4A7C15; z = state; z = (z ⊕ z≫30) · 0xBF58476D1CE4E5B9; z = (z ⊕ z≫27) ·
 * 0x94D049BB133111EB; out = z ⊕ z≫31, all modulo 2⁶⁴. Source: Steele, Lea and Flood, "Fast splittable pseudorandom number
 * generators", 2014. It is written out here because a stored seed must give the same draw on every Java release, and
 * because all 64 bits of the seed count.
 */
public final class SplitMix {
    private static final long STEP = 0x9E3779B97F4A7C15L;

    private long state;

    public SplitMix(long seed) {
        state = seed;
    }

    /** The next 64 bits. */
    public long next() {
        state += STEP;
        long z = state;
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }

    /** A number from 0 to bound − 1; for bounds of some thousands no value is favoured by more than one in 10¹⁵. */
    public int below(int bound) {
        return (int) Long.remainderUnsigned(next(), bound);
    }
}
