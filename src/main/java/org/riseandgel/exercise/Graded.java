package org.riseandgel.exercise;

import java.util.Optional;
import org.riseandgel.bench.Slip;
import org.riseandgel.core.quantity.Rational;
import org.riseandgel.core.quantity.Reading;
import org.riseandgel.core.quantity.Unit;

/**
 * An answer that was judged.
 *
 * @param slip the slip that was recognised; present for {@link Verdict#SLIP}, {@link Verdict#POWER_OF_TEN} and
 *     {@link Verdict#ROUNDED_EARLY}
 * @param line one line that says why it is not right; empty when it is, and when nobody can tell
 * @param read what was read, in the part's unit, exact
 * @param expected the right value in the part's unit, to twelve figures
 * @param unit the part's unit
 * @param reading the answer as it was read
 */
public record Graded(
        Verdict verdict,
        Optional<Slip> slip,
        String line,
        Rational read,
        Rational expected,
        Unit unit,
        Reading reading) {}
