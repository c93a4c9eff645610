package org.riseandgel.exercise;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.riseandgel.core.quantity.Quantity;
import org.riseandgel.core.quantity.Rational;
import org.riseandgel.core.quantity.Unit;

/**
 * What makes a draw a poor exercise: a condition of the author is not met; the right answer is 0, 1 or a number of the
 * story, so that copying would do; it lies on a rounding tie; or a slip leads so near to the right answer, or to another
 * slip's, that they could not be told apart. Three tolerances must lie between them.
 */
final class DrawFaults {
    private static final Rational THREE = Rational.of(3);
    private static final Rational HALF = Rational.of(1, 2);
    private static final Rational NEARLY = Rational.of(1, 1_000_000);

    private final DrawnNumbers drawn;

    private DrawFaults(DrawnNumbers drawn) {
        this.drawn = drawn;
    }

    /** The first fault of a draw, in words; nothing when it is a good one. */
    static Optional<String> first(DrawnNumbers drawn) {
        DrawFaults faults = new DrawFaults(drawn);
        Optional<String> condition = faults.condition();
        if (condition.isPresent()) {
            return condition;
        }
        return drawn.parts().stream().map(faults::of).flatMap(Optional::stream).findFirst();
    }

    private Optional<String> condition() {
        for (NumericTemplate.Condition condition : drawn.template().conditions()) {
            Rational value = value(condition.value(), condition.unit());
            if (condition.atLeast().filter(least -> value.compareTo(least) < 0).isPresent()) {
                return Optional.of("%s is below its condition".formatted(condition.value()));
            }
            if (condition.atMost().filter(most -> value.compareTo(most) > 0).isPresent()) {
                return Optional.of("%s is above its condition".formatted(condition.value()));
            }
        }
        return Optional.empty();
    }

    private Rational value(ValueRef ref, Unit unit) {
        if (ref instanceof ValueRef.Drawn name) {
            DrawnValue value = drawn.values().get(name.name());
            return unit.fromBase(value.unit().toBase(value.exact()));
        }
        ValueRef.Worked worked = (ValueRef.Worked) ref;
        Quantity quantity =
                PartMaker.value(worked, drawn.outcomes().get(worked.work())).orElseThrow();
        return CoreValue.in(unit, quantity);
    }

    private Optional<String> of(DrawnPart part) {
        String name = part.part().id();
        if (isAnyOf(part, List.of(Rational.ZERO, Rational.ONE))) {
            return Optional.of("the answer of part %s is 0 or 1".formatted(name));
        }
        if (isAnyOf(
                part, drawn.values().values().stream().map(DrawnValue::exact).toList())) {
            return Optional.of("the answer of part %s is a number that was given".formatted(name));
        }
        if (isTie(part.expected(), part.part().readability())) {
            return Optional.of("the answer of part %s lies half way between two readings".formatted(name));
        }
        return confusable(part).map(what -> "in part %s, %s".formatted(name, what));
    }

    /** Whether writing one of these numbers down would be judged right. */
    private static boolean isAnyOf(DrawnPart part, List<Rational> numbers) {
        Unit unit = part.part().unit();
        return numbers.stream().map(unit::toBase).anyMatch(part.right()::contains);
    }

    private static boolean isTie(Rational value, Rational readability) {
        Rational steps = value.abs().dividedBy(readability);
        BigInteger whole = steps.numerator().divide(steps.denominator());
        Rational rest = steps.minus(new Rational(whole, BigInteger.ONE));
        return rest.minus(HALF).abs().compareTo(NEARLY) < 0;
    }

    private static Optional<String> confusable(DrawnPart part) {
        Rational tolerance = part.right().halfWidth();
        Named right = new Named("the right answer", part.right(), tolerance);
        List<Named> slips = part.wrongAnswers().stream()
                .map(wrong -> new Named("the slip " + wrong.slip().id(), wrong.band(), tolerance))
                .toList();
        List<Named> powers = powersOfTen(part);
        return Stream.<Supplier<Optional<String>>>of(
                        () -> near(right, slips, tolerance),
                        () -> near(right, powers, tolerance),
                        () -> nearEachOther(slips, tolerance),
                        () -> nearAnyPower(slips, powers))
                .map(Supplier::get)
                .flatMap(Optional::stream)
                .findFirst();
    }

    private static Optional<String> nearEachOther(List<Named> slips, Rational tolerance) {
        return IntStream.range(0, slips.size())
                .mapToObj(i -> near(slips.get(i), slips.subList(i + 1, slips.size()), tolerance))
                .flatMap(Optional::stream)
                .findFirst();
    }

    private static Optional<String> nearAnyPower(List<Named> slips, List<Named> powers) {
        return powers.stream()
                .map(power -> near(power, slips, power.tolerance()))
                .flatMap(Optional::stream)
                .findFirst();
    }

    private static Optional<String> near(Named one, List<Named> others, Rational tolerance) {
        return others.stream()
                .filter(other -> one.isNear(other, tolerance))
                .map(other -> "%s is less than three tolerances from %s".formatted(other.name(), one.name()))
                .findFirst();
    }

    /** The right answer with its decimal mark moved; the tolerance moves with it where the number becomes smaller. */
    private static List<Named> powersOfTen(DrawnPart part) {
        List<Named> powers = new ArrayList<>();
        for (PowerOfTen power : PowerOfTen.ALL) {
            Rational width = part.right().halfWidth();
            Rational moved = power.shift(width);
            Band band = Band.around(part.part().unit().toBase(power.shift(part.expected())), moved);
            powers.add(new Named("an answer " + power.words(), band, power.exponent() < 0 ? moved : width));
        }
        return powers;
    }

    /** An answer somebody may give, the values taken for it, and the tolerance that counts near it. */
    private record Named(String name, Band band, Rational tolerance) {
        boolean isNear(Named other, Rational unit) {
            return band.distance(other.band.centre()).compareTo(unit.times(THREE)) < 0 || !band.apartFrom(other.band);
        }
    }
}
