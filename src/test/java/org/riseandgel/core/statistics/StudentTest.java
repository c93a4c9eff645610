package org.riseandgel.core.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.riseandgel.core.quantity.OutOfRangeException;

class StudentTest {
    // Recomputed with two independent libraries to six places; to two places they are NIST TN 1297, table B.1.
    @ParameterizedTest
    @CsvSource({
        "1, 12.706205",
        "2, 4.302653",
        "3, 3.182446",
        "4, 2.776445",
        "5, 2.570582",
        "9, 2.262157",
        "10, 2.228139",
        "16, 2.119905",
        "20, 2.085963",
        "30, 2.042272"
    })
    void ninetyFivePercent(double degrees, double factor) {
        assertThat(Student.factor(0.95, degrees)).isCloseTo(factor, within(1e-6));
    }

    // NIST TN 1297, table B.1, 99 %, printed to two places.
    @ParameterizedTest
    @CsvSource({"1, 63.66", "5, 4.03", "10, 3.17", "20, 2.85"})
    void ninetyNinePercent(double degrees, double factor) {
        assertThat(Student.factor(0.99, degrees)).isCloseTo(factor, within(0.005));
    }

    @Property(tries = 100)
    void belowIsTheInverseOfTheFactor(
            @ForAll @DoubleRange(min = 0.01, max = 0.99) double probability,
            @ForAll @DoubleRange(min = 1, max = 200) double degrees) {
        double factor = Student.factor(probability, degrees);
        assertThat(Student.below(factor, degrees) - Student.below(-factor, degrees))
                .isCloseTo(probability, within(1e-8));
    }

    @Property(tries = 100)
    void moreKnowledgeIsNarrower(@ForAll @DoubleRange(min = 1, max = 100) double degrees) {
        assertThat(Student.factor(0.9, degrees + 1)).isLessThan(Student.factor(0.9, degrees));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1, -0.5, 2, Double.NaN, Double.POSITIVE_INFINITY})
    void noProbabilityOutsideNoughtToOne(double probability) {
        assertThatThrownBy(() -> Student.factor(probability, 5))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("must be more than 0 and less than 1");
    }

    @Test
    void noFreedomNoFactor() {
        assertThatThrownBy(() -> Student.factor(0.9, 0)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Student.factor(0.9, Double.NaN)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Student.below(Double.NaN, 3)).isInstanceOf(OutOfRangeException.class);
    }
}
