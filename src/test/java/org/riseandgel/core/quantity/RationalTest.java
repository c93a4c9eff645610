package org.riseandgel.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

class RationalTest {
    @Property
    void additionAndMultiplicationObeyTheLawsOfAField(
            @ForAll("rationals") Rational a, @ForAll("rationals") Rational b, @ForAll("rationals") Rational c) {
        assertThat(a.plus(b)).isEqualTo(b.plus(a));
        assertThat(a.times(b)).isEqualTo(b.times(a));
        assertThat(a.plus(b).plus(c)).isEqualTo(a.plus(b.plus(c)));
        assertThat(a.times(b).times(c)).isEqualTo(a.times(b.times(c)));
        assertThat(a.times(b.plus(c))).isEqualTo(a.times(b).plus(a.times(c)));
        assertThat(a.plus(Rational.ZERO)).isEqualTo(a);
        assertThat(a.times(Rational.ONE)).isEqualTo(a);
        assertThat(a.minus(a)).isEqualTo(Rational.ZERO);
        assertThat(a.plus(b).minus(b)).isEqualTo(a);
    }

    @Property
    void divisionUndoesMultiplication(@ForAll("rationals") Rational a, @ForAll("rationals") Rational b) {
        Assume.that(b.signum() != 0);
        assertThat(a.times(b).dividedBy(b)).isEqualTo(a);
    }

    @Property
    void orderIsKeptByAdding(
            @ForAll("rationals") Rational a, @ForAll("rationals") Rational b, @ForAll("rationals") Rational c) {
        assertThat(a.plus(c).compareTo(b.plus(c))).isEqualTo(a.compareTo(b));
        assertThat(a.compareTo(b)).isEqualTo(-b.compareTo(a));
        assertThat(a.compareTo(b) == 0).isEqualTo(a.equals(b));
        assertThat(a.abs().signum()).isGreaterThanOrEqualTo(0);
    }

    @Property
    void theNearestDoubleIsFoundWhateverTheSize(
            @ForAll BigInteger above, @ForAll BigInteger below, @ForAll("shifts") int shift) {
        Assume.that(below.signum() != 0);
        Rational value = new Rational(above.shiftLeft(shift), below);
        // 400 digits put the decimal on the right side of every tie that these sizes allow; parsing it is correctly
        // rounded by the Java SE specification of Double.valueOf.
        BigDecimal near =
                new BigDecimal(value.numerator()).divide(new BigDecimal(value.denominator()), new MathContext(400));
        assertThat(value.toDouble()).isEqualTo(Double.parseDouble(near.toString()));
    }

    @Example
    void aLittleMoreThanATieIsRoundedUp() {
        BigInteger tie = BigInteger.ONE.shiftLeft(53).add(BigInteger.ONE);
        BigInteger huge = BigInteger.TEN.pow(60);
        Rational more = new Rational(tie.multiply(huge).add(BigInteger.ONE), huge);
        // 2^53 + 1 lies half-way between two doubles; ties go to the even one (IEEE 754).
        assertThat(new Rational(tie, BigInteger.ONE).toDouble()).isEqualTo(9007199254740992.0);
        assertThat(more.toDouble()).isEqualTo(9007199254740994.0);
        assertThat(more.negate().toDouble()).isEqualTo(-9007199254740994.0);
    }

    @Property
    void aDoubleSurvivesItsShortestDecimal(@ForAll @DoubleRange(min = -1e12, max = 1e12) @Scale(12) double value) {
        assertThat(Rational.ofPrinted(value).toDouble()).isEqualTo(value);
    }

    @Property
    void aDecimalOfUpToFifteenDigitsIsFoundAgain(@ForAll("decimals") BigDecimal decimal) {
        // Fifteen digits always survive a double (IEEE 754: floor of 52 × log10 2).
        assertThat(Rounding.shortest(decimal.doubleValue())).isEqualTo(plain(decimal));
    }

    private static BigDecimal plain(BigDecimal decimal) {
        BigDecimal stripped = decimal.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }

    @Example
    void theShortestDecimalIsTheOnePeopleMean() {
        assertThat(Rational.ofPrinted(0.1)).isEqualTo(Rational.of(1, 10));
        assertThat(Rational.ofPrinted(1.005)).isEqualTo(Rational.of("1.005"));
        assertThat(Rational.ofPrinted(0.1 + 0.2)).isEqualTo(Rational.of("0.30000000000000004"));
        // Releases of the platform before 19 print this one as 1.9999999999999998E23 (JDK-4511638, from memory).
        assertThat(Rounding.shortest(2e23)).isEqualByComparingTo("2E23");
        assertThatThrownBy(() -> Rational.ofPrinted(Double.NaN)).isInstanceOf(OutOfRangeException.class);
    }

    @Example
    void lowestTermsWithAPositiveDenominator() {
        assertThat(Rational.of(6, -4)).isEqualTo(Rational.of(-3, 2)).hasToString("-3/2");
        assertThat(Rational.of(0, -7)).isEqualTo(Rational.ZERO);
        assertThat(Rational.of("2.0")).isEqualTo(Rational.of("2.00"));
        assertThatThrownBy(() -> Rational.of(1, 0)).isInstanceOf(ArithmeticException.class);
    }

    /** 0.8 − 0.7 is more than 0.1 in doubles; here the edge is the edge. */
    @Example
    void theEdgeOfAToleranceIsExact() {
        Rational gap = Rational.of("0.8").minus(Rational.of("0.7"));
        assertThat(gap).isEqualByComparingTo(Rational.of("0.1"));
    }

    @Provide
    Arbitrary<Rational> rationals() {
        return Combinators.combine(
                        Arbitraries.longs().between(-1_000_000_000_000L, 1_000_000_000_000L),
                        Arbitraries.longs().between(1, 1_000_000))
                .as((above, below) -> Rational.of(above, below));
    }

    @Provide
    Arbitrary<BigDecimal> decimals() {
        return Combinators.combine(
                        Arbitraries.longs().between(-999_999_999_999_999L, 999_999_999_999_999L),
                        Arbitraries.integers().between(-10, 25))
                .as(BigDecimal::valueOf);
    }

    @Provide
    Arbitrary<Integer> shifts() {
        return Arbitraries.integers().between(0, 200);
    }
}
