package org.riseandgel.exercise;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.riseandgel.bench.Outcome;
import org.riseandgel.bench.Slip;
import org.riseandgel.core.quantity.Quantity;
import org.riseandgel.core.quantity.Rational;
import org.riseandgel.core.quantity.Unit;

/** Prepares a part of a draw for judging: the right band, and the band of every slip that applies. */
final class PartMaker {
    /** Slips that every exercise looks for where the calculation knows an answer to them. */
    static final Set<Slip> ALWAYS = EnumSet.of(
            Slip.OUNCES_FOR_GRAMS,
            Slip.POUNDS_FOR_GRAMS,
            Slip.INCHES_FOR_CENTIMETRES,
            Slip.INCHES_FOR_MILLIMETRES,
            Slip.CUBIC_INCHES_FOR_MILLILITRES,
            Slip.ONE_SIDE_FOR_CUBE,
            Slip.SECONDS_AS_HUNDREDTHS,
            Slip.FAHRENHEIT_FOR_CELSIUS,
            Slip.SCALE_WITHOUT_OFFSET);

    private final NumericTemplate.Part part;
    private final Unit unit;
    private final Rational expected;
    private final Rational halfWidth;

    private PartMaker(NumericTemplate.Part part, Quantity right) {
        this.part = part;
        unit = part.unit();
        expected = CoreValue.in(unit, right);
        halfWidth = part.tolerance().halfWidth(expected);
    }

    static DrawnPart make(NumericTemplate template, NumericTemplate.Part part, Outcome outcome) {
        return new PartMaker(part, needed(part.of(), outcome)).made(template, outcome);
    }

    /** A step that is missing is a mistake of the file, which is reported when it is loaded; a result may not be told. */
    private static Quantity needed(ValueRef.Worked ref, Outcome outcome) {
        return ref instanceof ValueRef.OfStep ? value(ref, outcome).orElseThrow() : outcome.told(ref.name());
    }

    /** The value of a result or of a step, each by its own name. */
    static Optional<Quantity> value(ValueRef.Worked ref, Outcome outcome) {
        return ref instanceof ValueRef.OfStep
                ? outcome.step(ref.name()).map(Outcome.Step::value)
                : Optional.ofNullable(outcome.results().get(ref.name()));
    }

    private DrawnPart made(NumericTemplate template, Outcome outcome) {
        List<WrongAnswer> wrongAnswers = new ArrayList<>();
        Optional<WrongAnswer> roundedEarly = Optional.empty();
        for (Outcome.SlipAnswer slip : outcome.slipsOf(part.of().name())) {
            if (slip.wrong().kind() != unit.kind()) {
                continue;
            }
            if (slip.slip() == Slip.ROUNDED_EARLY) {
                roundedEarly = Optional.of(wrong(slip));
            } else if (template.slips().contains(slip.slip()) || ALWAYS.contains(slip.slip())) {
                wrongAnswers.add(wrong(slip));
            }
        }
        return new DrawnPart(part, expected, band(expected, halfWidth), wrongAnswers, roundedEarly);
    }

    private WrongAnswer wrong(Outcome.SlipAnswer slip) {
        Rational wrong = CoreValue.in(unit, slip.wrong());
        return new WrongAnswer(slip.slip(), slip.line(), band(wrong, width(wrong)));
    }

    /**
     * How close an answer must come to a wrong one to be taken for it: the tolerance at that value, but no wider in
     * proportion than around the right one, and half the readability in any case, since people round to that.
     */
    private Rational width(Rational wrong) {
        Rational atWrong = part.tolerance().halfWidth(wrong);
        Rational inProportion =
                expected.signum() == 0 ? atWrong : halfWidth.times(wrong.abs()).dividedBy(expected.abs());
        Rational narrower = atWrong.compareTo(inProportion) <= 0 ? atWrong : inProportion;
        Rational least = part.readability().times(Rational.of(1, 2));
        return narrower.compareTo(least) >= 0 ? narrower : least;
    }

    private Band band(Rational number, Rational width) {
        return Band.around(unit.toBase(number), width.times(unit.factor()));
    }
}
