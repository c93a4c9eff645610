package org.riseandgel.exercise;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.Rational;
import org.riseandgel.core.quantity.Unit;

class ToleranceTest {
    private static final Rational TENTH = Rational.of("0.1");

    @Test
    void edgesAreInsideWhereDoublesWouldFail() {
        assertThat(0.8 - 0.7)
                .as("the trap: in doubles this is more than a tenth")
                .isGreaterThan(0.1);
        Band band =
                Band.around(Rational.of("0.8"), tolerance("0.1", "0", "0.01").halfWidth(Rational.of("0.8")));
        assertThat(band.contains(Rational.of("0.7"))).isTrue();
        assertThat(band.contains(Rational.of("0.9"))).isTrue();
        assertThat(band.contains(Rational.of("0.6999999999"))).isFalse();
        assertThat(band.contains(Rational.of("0.9000000001"))).isFalse();
    }

    @Test
    void takesTheWiderOfFixedAndPercent() {
        Tolerance both = tolerance("1", "2", "0.1");
        assertThat(both.halfWidth(Rational.of(20))).isEqualTo(Rational.ONE);
        assertThat(both.halfWidth(Rational.of(50))).isEqualTo(Rational.ONE);
        assertThat(both.halfWidth(Rational.of(80))).isEqualTo(Rational.of("1.6"));
        assertThat(both.halfWidth(Rational.of(-80)))
                .as("of the size, not the sign")
                .isEqualTo(Rational.of("1.6"));
    }

    @Test
    void isNeverNarrowerThanHalfAStepOfTheInstrument() {
        assertThat(tolerance("0", "1", "0.5").halfWidth(Rational.of(2))).isEqualTo(Rational.of("0.25"));
    }

    @Test
    void wordsBesideTheQuestionDoNotDependOnTheAnswer() {
        assertThat(tolerance("1", "0", "1").words(Unit.MILLIMETRE, DecimalMark.POINT))
                .isEqualTo("within 1\u00a0mm");
        assertThat(tolerance("0.5", "0", "1").words(Unit.DEGREE_CELSIUS, DecimalMark.COMMA))
                .isEqualTo("within 0,5\u00a0°C");
        assertThat(tolerance("0", "2.5", "0.1").words(Unit.GRAM, DecimalMark.POINT))
                .isEqualTo("within 2.5\u00a0%, or 0.05\u00a0g if that is more");
        assertThat(tolerance("0.05", "0", "0.1").words(Unit.ONE, DecimalMark.POINT))
                .isEqualTo("within 0.05");
    }

    @Test
    void wordsAfterTheAnswerSayWhatThePercentageCameTo() {
        assertThat(tolerance("0", "2", "0.1").wordsFor(Rational.of(20), Unit.GRAM, DecimalMark.POINT))
                .isEqualTo("within 2\u00a0%, that is 0.4\u00a0g");
        assertThat(tolerance("0", "0.5", "0.1").wordsFor(Rational.of("269.32046"), Unit.GRAM, DecimalMark.POINT))
                .isEqualTo("within 0.5\u00a0%, that is 1.35\u00a0g");
        assertThat(tolerance("1", "2", "1").wordsFor(Rational.of(20), Unit.GRAM, DecimalMark.POINT))
                .isEqualTo("within 1\u00a0g");
    }

    @Test
    void bandsThatTouchAreNotApart() {
        Band low = Band.around(Rational.ZERO, TENTH);
        assertThat(low.apartFrom(Band.around(Rational.of("0.2"), TENTH))).isFalse();
        assertThat(low.apartFrom(Band.around(Rational.of("0.21"), TENTH))).isTrue();
        assertThat(low.apartFrom(Band.around(Rational.of("-0.21"), TENTH))).isTrue();
    }

    private static Tolerance tolerance(String abs, String percent, String readability) {
        return new Tolerance(Rational.of(abs), Rational.of(percent), Rational.of(readability), "for a test");
    }
}
