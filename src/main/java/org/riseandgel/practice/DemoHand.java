package org.riseandgel.practice;

import org.riseandgel.bench.Slip;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.NumberWriter;
import org.riseandgel.core.quantity.Rational;
import org.riseandgel.core.quantity.Unit;
import org.riseandgel.exercise.DrawnChoice;
import org.riseandgel.exercise.DrawnExercise;
import org.riseandgel.exercise.DrawnNumbers;
import org.riseandgel.exercise.DrawnPart;
import org.riseandgel.exercise.WrongAnswer;

/** What an invented person types: the right answer, or what a mistake leads to. */
final class DemoHand {
    private static final int FIGURES = 4;
    private static final Rational FAR_OFF = Rational.of("1.37");

    private final DrawnPart part;
    private final Unit unit;
    private final NumberWriter writer;

    private DemoHand(DrawnPart part, DecimalMark mark) {
        this.part = part;
        this.unit = part.part().unit();
        this.writer = NumberWriter.of(mark);
    }

    /** What somebody hands in who acts as the letter says; see {@link DemoVisit}. */
    static String typed(DrawnExercise drawn, int part, char act, DecimalMark mark) {
        if (drawn instanceof DrawnChoice choice) {
            return act == 'r' || act == 'h' ? choice.right() : choice.wrong();
        }
        return new DemoHand(((DrawnNumbers) drawn).part(part), mark).typed(act);
    }

    private String typed(char act) {
        return switch (act) {
            case 's', 'S' -> written(slip(), unit);
            case 't' -> written(part.expected().times(powerOfTen()), unit);
            case 'u' -> written(part.expected(), mixedUp(unit));
            case 'w' -> written(part.expected().times(FAR_OFF), unit);
            default -> written(part.expected(), unit);
        };
    }

    /** A power of ten that is no other unit: ten times a number of centimetres would be right in millimetres. */
    private Rational powerOfTen() {
        return unit == Unit.CENTIMETRE ? Rational.of("0.1") : Rational.of(10);
    }

    private Rational slip() {
        return part.wrongAnswers().stream()
                .filter(wrong -> wrong.slip() != Slip.ROUNDED_EARLY)
                .map(WrongAnswer::band)
                .findFirst()
                .map(band -> unit.fromBase(band.centre()))
                .orElse(part.expected().times(FAR_OFF));
    }

    private String written(Rational value, Unit in) {
        String number = writer.figures(value.toDouble(), FIGURES);
        return in.symbol().isEmpty() ? number : number + " " + in.symbol();
    }

    private static Unit mixedUp(Unit unit) {
        return switch (unit) {
            case MILLIMETRE -> Unit.CENTIMETRE;
            case CENTIMETRE -> Unit.MILLIMETRE;
            case GRAM -> Unit.OUNCE;
            case OUNCE -> Unit.GRAM;
            case MILLILITRE -> Unit.LITRE;
            case GRAM_PER_MILLILITRE -> Unit.KILOGRAM_PER_CUBIC_METRE;
            default -> unit;
        };
    }
}
