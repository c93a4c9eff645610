package org.riseandgel.practice;

import java.math.BigInteger;
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
public final class Estimates {
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
        return drawn instanceof DrawnNumbers numbers
                ? Optional.of(numbers.part(numbers.partCount() - 1))
                : Optional.empty();
    }

    /** Whether the estimate of a draw is about this part. */
    static boolean isAskedFor(DrawnExercise drawn, int part) {
        return part == drawn.partCount() - 1;
    }

    /** Whether an estimate has to be made before the open part is answered. */
    static boolean isOpen(StoredDraw stored, DrawnExercise drawn) {
        return stored.setting().wantsEstimate() && isAskedFor(drawn, stored.nextPart());
    }

    /** The estimate that was made for the open part, in words; empty when there is none. */
    static String made(StoredDraw stored, DrawnExercise drawn, DecimalMark mark) {
        Integer exponent = stored.setting().estimate();
        return exponent == null || !isAskedFor(drawn, stored.nextPart())
                ? ""
                : last(drawn)
                        .map(part -> new Decade(exponent).words(part.part().unit(), mark))
                        .orElse("");
    }

    /** A decade to choose. */
    public record Choice(int exponent, String words) {}

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
    public record Check(String words, boolean right, boolean answer, int off) {
        /** The comparison in a sentence or two. */
        public String sentence() {
            if (!right) {
                return "Your estimate, %s, was %s too %s.".formatted(words, powers(), off > 0 ? "low" : "high");
            }
            return answer
                    ? "Your estimate, %s, holds the right value.".formatted(words)
                    : "Your estimate, %s, was right, and your answer lies outside it. When the two disagree, go over the working again before you weigh anything."
                            .formatted(words);
        }

        private String powers() {
            return Math.abs(off) == 1 ? "a power of ten" : Math.abs(off) + " powers of ten";
        }
    }

    /** The comparison for an answered part; empty when no estimate was made for it. */
    static Optional<Check> check(DrawnExercise drawn, StoredAnswer answer, DecimalMark mark) {
        Integer exponent = answer.said().estimate();
        return exponent == null || !isAskedFor(drawn, answer.part())
                ? Optional.empty()
                : last(drawn).map(part -> check(part, exponent, value(part, answer), mark));
    }

    private static Check check(DrawnPart part, int exponent, Rational answered, DecimalMark mark) {
        Decade chosen = new Decade(exponent);
        return new Check(
                chosen.words(part.part().unit(), mark),
                chosen.contains(part.expected()),
                chosen.contains(answered),
                Decade.of(part.expected()).exponent() - exponent);
    }

    /** The number that was read, in the unit that the part asks for. */
    private static Rational value(DrawnPart part, StoredAnswer answer) {
        String[] fraction = answer.readValue().split("/", 2);
        Rational number = new Rational(
                new BigInteger(fraction[0]), fraction.length == 1 ? BigInteger.ONE : new BigInteger(fraction[1]));
        Unit asked = part.part().unit();
        Unit read = Unit.byCode(answer.readUnit()).orElse(Unit.ONE).whenAskedFor(asked.kind());
        return read.kind() == asked.kind() ? asked.fromBase(read.toBase(number)) : number;
    }
}
