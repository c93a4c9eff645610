package org.riseandgel.exercise;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.List;
import org.riseandgel.bench.Slip;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.NumberReader;
import org.riseandgel.core.quantity.NumberWriter;
import org.riseandgel.core.quantity.Rational;
import org.riseandgel.core.quantity.Reading;
import org.riseandgel.core.quantity.Unit;

/** Checks that hold for every draw of every exercise, worked out anew from what an answerer sees. */
final class Judge {
    private static final Rational THREE = Rational.of(3);

    private Judge() {}

    /** The answer cannot be copied or guessed, rounds one way only, and is told apart from every slip. */
    static void checkDraw(DrawnNumbers drawn) {
        for (DrawnPart part : drawn.parts()) {
            Unit unit = part.part().unit();
            Rational tolerance = part.right().halfWidth();
            assertThat(part.right().contains(unit.toBase(part.expected()))).isTrue();
            assertThat(part.right().contains(unit.toBase(Rational.ZERO)))
                    .as("0")
                    .isFalse();
            assertThat(part.right().contains(unit.toBase(Rational.ONE))).as("1").isFalse();
            for (DrawnValue value : drawn.values().values()) {
                assertThat(part.right().contains(unit.toBase(value.exact())))
                        .as("%s of %s copied", value.name(), drawn)
                        .isFalse();
            }
            assertThat(tolerance.times(Rational.of(2)))
                    .isGreaterThanOrEqualTo(part.part().readability().times(unit.factor()));
            apart(drawn, part, tolerance);
        }
    }

    private static void apart(DrawnNumbers drawn, DrawnPart part, Rational tolerance) {
        List<WrongAnswer> wrong = part.wrongAnswers();
        for (int i = 0; i < wrong.size(); i++) {
            Band band = wrong.get(i).band();
            assertThat(band.distance(part.right().centre()))
                    .as("%s of %s from the right answer", wrong.get(i).slip(), drawn)
                    .isGreaterThanOrEqualTo(tolerance.times(THREE));
            assertThat(band.apartFrom(part.right())).isTrue();
            for (WrongAnswer other : wrong.subList(i + 1, wrong.size())) {
                assertThat(band.distance(other.band().centre()))
                        .as("%s and %s of %s", wrong.get(i).slip(), other.slip(), drawn)
                        .isGreaterThanOrEqualTo(tolerance.times(THREE));
            }
        }
    }

    /** Right answers in every unit and both marks are right; slips, other units and moved marks are named. */
    static void checkAnswers(DrawnNumbers drawn) {
        for (int part = 0; part < drawn.parts().size(); part++) {
            for (DecimalMark mark : DecimalMark.values()) {
                rightInEveryUnit(drawn, part, mark);
                slips(drawn, part, mark);
                movedMarks(drawn, part, mark);
            }
            otherUnits(drawn, part);
        }
    }

    /** Every slip is named, and the right answer is right in its own unit and in another: which one takes turns. */
    static void checkInTurn(DrawnNumbers drawn, long turn) {
        DecimalMark mark = DecimalMark.values()[(int) (turn % DecimalMark.values().length)];
        for (int part = 0; part < drawn.parts().size(); part++) {
            Unit own = drawn.part(part).part().unit();
            List<Unit> units = Arrays.stream(Unit.values())
                    .filter(unit -> unit.kind() == own.kind())
                    .toList();
            Unit other = units.get((int) (turn / DecimalMark.values().length % units.size()));
            right(drawn, part, own, mark);
            right(drawn, part, other, mark);
            slips(drawn, part, mark);
        }
    }

    private static void right(DrawnNumbers drawn, int part, Unit unit, DecimalMark mark) {
        Unit own = drawn.part(part).part().unit();
        Rational number = unit.fromBase(own.toBase(drawn.part(part).expected()));
        assertThat(judged(drawn, part, number, unit, mark).verdict()).isEqualTo(Verdict.RIGHT);
    }

    private static void rightInEveryUnit(DrawnNumbers drawn, int part, DecimalMark mark) {
        DrawnPart asked = drawn.part(part);
        Unit own = asked.part().unit();
        Arrays.stream(Unit.values())
                .filter(unit -> unit.kind() == own.kind())
                .forEach(unit -> right(drawn, part, unit, mark));
        String rounded = Feedback.rounded(asked.expected(), asked.part().readability(), own, mark);
        assertThat(judged(drawn, part, rounded, mark).verdict())
                .as("rounded to what the instrument shows: %s", rounded)
                .isEqualTo(Verdict.RIGHT);
    }

    private static void slips(DrawnNumbers drawn, int part, DecimalMark mark) {
        Unit unit = drawn.part(part).part().unit();
        for (WrongAnswer wrong : drawn.part(part).wrongAnswers()) {
            Rational number = unit.fromBase(wrong.band().centre());
            Graded graded = judged(drawn, part, number, unit, mark);
            assertThat(graded.verdict()).as("%s of %s", wrong.slip(), drawn).isEqualTo(Verdict.SLIP);
            assertThat(graded.slip()).contains(wrong.slip());
            assertThat(graded.line()).isEqualTo(wrong.line()).isNotBlank();
        }
    }

    /** A moved mark often is another metric unit just as well; it never passes and never is just wrong. */
    private static void movedMarks(DrawnNumbers drawn, int part, DecimalMark mark) {
        Unit unit = drawn.part(part).part().unit();
        for (PowerOfTen power : PowerOfTen.ALL) {
            Rational number = power.shift(drawn.part(part).expected());
            Graded graded = judged(drawn, part, number, unit, mark);
            assertThat(graded.verdict())
                    .as("%s times of %s", power.factor(), drawn)
                    .isIn(Verdict.POWER_OF_TEN, Verdict.WRONG_UNIT);
            if (graded.verdict() == Verdict.POWER_OF_TEN) {
                assertThat(graded.slip()).contains(Slip.POWER_OF_TEN);
            }
        }
    }

    private static void otherUnits(DrawnNumbers drawn, int part) {
        Unit own = drawn.part(part).part().unit();
        for (Unit unit : KindredUnits.of(own.kind())) {
            if (!unit.factor().equals(own.factor())) {
                Rational number = drawn.part(part).expected();
                Graded graded = judged(drawn, part, number, unit, DecimalMark.POINT);
                assertThat(graded.verdict()).isEqualTo(Verdict.WRONG_UNIT);
                assertThat(graded.line()).contains(own.symbol()).contains(unit.symbol());
            }
        }
    }

    private static Graded judged(DrawnNumbers drawn, int part, Rational number, Unit unit, DecimalMark mark) {
        double value = new BigDecimal(number.numerator())
                .divide(new BigDecimal(number.denominator()), MathContext.DECIMAL128)
                .doubleValue();
        return judged(drawn, part, NumberWriter.of(mark).figures(value, 13) + " " + unit.symbol(), mark);
    }

    private static Graded judged(DrawnNumbers drawn, int part, String typed, DecimalMark mark) {
        Reading reading = NumberReader.of(mark).read(typed);
        assertThat(Grader.check(drawn, part, reading)).as("typed “%s”", typed).isEmpty();
        return Grader.grade(drawn, part, reading);
    }
}
