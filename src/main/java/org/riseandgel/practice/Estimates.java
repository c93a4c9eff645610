package org.riseandgel.practice;

import java.util.List;
import java.util.Optional;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.Rational;
import org.riseandgel.core.quantity.Unit;
import org.riseandgel.exercise.DrawnExercise;
import org.riseandgel.exercise.DrawnNumbers;
import org.riseandgel.exercise.DrawnPart;

/**
 * Estimates before reckoning: which draws ask for one, which decades are offered, and what is said afterwards.
 *
 * <p>Every third draw asks, and every draw about the gelling salt, as far as a decade says anything about the value. The
 * estimate is for the last part of a draw, which is the value that is acted upon, and comes before its answer field. It is
 * a habit of checking and never changes the mark.
 */
final class Estimates {
    private Estimates() {}

    /** Whether a new draw asks for an estimate; null where none makes sense. */
    static Boolean asks(DrawnExercise drawn, boolean itsTime) {
        return last(drawn)
                .filter(part -> Decade.suits(part.expected(), part.part().unit()))
                .map(part -> itsTime || SaltItems.contains(drawn.template()))
                .orElse(null);
    }

    /** The last part, of a draw that asks for numbers. */
    private static Optional<DrawnPart> last(DrawnExercise drawn) {
        return drawn instanceof DrawnNumbers numbers ? Optional.of(numbers.part(numbers.partCount() - 1)) : Optional.empty();
    }

    /** Whether the estimate of a draw is about this part. */
    static boolean isAskedFor(DrawnExercise drawn, int part) {
        return part == drawn.partCount() - 1;
    }

    /** A decade to choose. */
    record Choice(int exponent, String words) {}

    /** The decades to choose from; where the right one stands among them comes from the seed. */
    static List<Choice> choices(DrawnExercise drawn, DecimalMark mark) {
        return last(drawn)
                .map(part -> Decade.choices(part.expected(), drawn.seed()).stream()
                        .map(decade -> new Choice(
                                decade.exponent(), decade.words(part.part().unit(), mark)))
                        .toList())
                .orElse(List.of());
    }

    /**
     * How an estimate compares, once the answer is stored.
     *
     * @param words the decade that was chosen
     * @param right whether the right value lies in it
     * @param answer whether the answer that was given lies in it
     * @param off how many powers of ten the right value lies above it; negative when below
     */
    record Check(String words, boolean right, boolean answer, int off) {}

    static Check check(DrawnPart part, int exponent, Rational answered, DecimalMark mark) {
        Unit unit = part.part().unit();
        Decade chosen = new Decade(exponent);
        return new Check(
                chosen.words(unit, mark),
                chosen.contains(part.expected()),
                chosen.contains(answered),
                Decade.of(part.expected()).exponent() - exponent);
    }
}
