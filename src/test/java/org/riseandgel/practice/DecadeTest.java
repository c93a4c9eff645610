package org.riseandgel.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.Rational;
import org.riseandgel.core.quantity.Unit;

/** LX-09: decades hold the values between two powers of ten, and where the right one stands gives nothing away. */
class DecadeTest {
    @Test
    void aDecadeHoldsItsEnds() {
        Decade tens = new Decade(1);
        assertThat(tens.contains(Rational.of(10))).isTrue();
        assertThat(tens.contains(Rational.of(100))).isTrue();
        assertThat(tens.contains(Rational.of("9.99"))).isFalse();
        assertThat(tens.contains(Rational.of("100.01"))).isFalse();
        assertThat(tens.words(Unit.GRAM, DecimalMark.POINT)).isEqualTo("10 to 100\u00a0g");
        assertThat(new Decade(-2).words(Unit.GRAM, DecimalMark.COMMA)).isEqualTo("0,01 to 0,1\u00a0g");
    }

    @Test
    void noDecadesForNothingAndForTemperatures() {
        assertThat(Decade.suits(Rational.of(0), Unit.GRAM)).isFalse();
        assertThat(Decade.suits(Rational.of(-3), Unit.GRAM)).isFalse();
        assertThat(Decade.suits(Rational.of(43), Unit.DEGREE_CELSIUS)).isFalse();
        assertThat(Decade.suits(Rational.of(43), Unit.GRAM)).isTrue();
    }

    @Property
    void theChoicesHoldTheValueAndFollowEachOther(
            @ForAll @IntRange(min = 1, max = 100_000_000) int thousandths, @ForAll long seed) {
        Rational value = Rational.of(thousandths, 1_000);
        List<Decade> choices = Decade.choices(value, seed);
        assertThat(choices).hasSize(5).anyMatch(decade -> decade.contains(value));
        for (int i = 1; i < choices.size(); i++) {
            assertThat(choices.get(i).exponent()).isEqualTo(choices.get(i - 1).exponent() + 1);
        }
        assertThat(Decade.of(value).contains(value)).isTrue();
    }

    @Test
    void theRightOneStandsAnywhereAboutAsOften() {
        Map<Integer, Integer> places = new HashMap<>();
        int draws = 5_000;
        for (long seed = 0; seed < draws; seed++) {
            int first =
                    Decade.choices(Rational.of(37), seed * 0x5DEE_CE66DL).get(0).exponent();
            places.merge(1 - first, 1, Integer::sum);
        }
        assertThat(places.keySet()).containsExactlyInAnyOrder(0, 1, 2, 3, 4);
        assertThat(places.values()).allMatch(count -> count > draws / 5 / 2 && count < draws / 5 * 2);
    }
}
