package org.riseandgel.exercise;

import java.util.Comparator;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.riseandgel.bench.Slip;
import org.riseandgel.core.quantity.Rational;
import org.riseandgel.core.quantity.Reading;
import org.riseandgel.core.quantity.Unit;

/**
 * Judges answers. A pure function of the draw and the reading: no clock, no chance, no default locale, exact arithmetic.
 *
 * <p>The first of these that fits is the verdict: right; right number but the typed unit is another than asked; a named
 * slip, the nearest if several fit; the number would be right in a unit people mix up with the typed one; a power of
 * ten; rounded early; wrong. A named slip comes before the mixed-up unit, because it says more: who takes inches for
 * centimetres should read just that.
 */
public final class Grader {
    private final DrawnPart part;
    private final Unit asked;
    private final Reading reading;
    private final Unit typed;
    private final Rational base;

    private Grader(DrawnPart part, Reading reading) {
        this.part = part;
        this.reading = reading;
        asked = part.part().unit();
        typed = reading.typedUnit().orElse(asked).whenAskedFor(asked.kind());
        base = typed.toBase(reading.value());
    }

    /**
     * What must be asked before an answer can be judged: it cannot be read, its unit is missing or of another kind.
     * Costs nothing and tells nothing about how close the answer is. Empty when it can be judged.
     */
    public static Optional<String> check(DrawnNumbers drawn, int part, Reading reading) {
        return Asking.question(drawn.part(part).part().unit(), reading);
    }

    /**
     * Judges an answer to a part, counted from 0.
     *
     * @throws IllegalArgumentException when {@link #check} still has a question
     */
    public static Graded grade(DrawnNumbers drawn, int part, Reading reading) {
        check(drawn, part, reading).ifPresent(question -> {
            throw new IllegalArgumentException("not to be judged yet: " + question);
        });
        return new Grader(drawn.part(part), reading).graded();
    }

    private Graded graded() {
        if (part.right().contains(base)) {
            return graded(Verdict.RIGHT, Optional.empty(), "");
        }
        return Stream.<Supplier<Optional<Graded>>>of(
                        this::otherUnitTyped, this::slip, this::otherUnitMeant, this::powerOfTen, this::roundedEarly)
                .map(Supplier::get)
                .flatMap(Optional::stream)
                .findFirst()
                .orElseGet(() -> graded(Verdict.WRONG, Optional.empty(), ""));
    }

    private Optional<Graded> otherUnitTyped() {
        return typed != asked && isRightIn(asked)
                ? Optional.of(wrongUnit("The number is right in %s; you wrote %s.", asked))
                : Optional.empty();
    }

    private Optional<Graded> slip() {
        return part.wrongAnswers().stream()
                .filter(wrong -> wrong.band().contains(base))
                .min(Comparator.comparing(wrong -> wrong.band().distance(base)))
                .map(wrong -> graded(Verdict.SLIP, Optional.of(wrong.slip()), wrong.line()));
    }

    private Optional<Graded> otherUnitMeant() {
        return KindredUnits.of(asked.kind()).stream()
                .filter(unit -> unit != typed && isRightIn(unit))
                .min(Comparator.comparing(unit -> part.right().distance(unit.toBase(reading.value()))))
                .map(unit -> wrongUnit("The number would be right in %s; you wrote %s.", unit));
    }

    private Optional<Graded> powerOfTen() {
        return PowerOfTen.ALL.stream()
                .filter(power -> part.right().contains(typed.toBase(power.unshift(reading.value()))))
                .findFirst()
                .map(power -> graded(
                        Verdict.POWER_OF_TEN,
                        Optional.of(Slip.POWER_OF_TEN),
                        Slip.POWER_OF_TEN.line() + " Yours is " + power.words() + "."));
    }

    private Optional<Graded> roundedEarly() {
        return part.roundedEarly()
                .filter(wrong -> wrong.band().contains(base))
                .map(wrong -> graded(Verdict.ROUNDED_EARLY, Optional.of(wrong.slip()), wrong.line()));
    }

    private boolean isRightIn(Unit unit) {
        return part.right().contains(unit.toBase(reading.value()));
    }

    private Graded wrongUnit(String line, Unit right) {
        return graded(Verdict.WRONG_UNIT, Optional.empty(), line.formatted(right.symbol(), typed.symbol()));
    }

    private Graded graded(Verdict verdict, Optional<Slip> slip, String line) {
        return new Graded(verdict, slip, line, asked.fromBase(base), part.expected(), asked, reading);
    }
}
