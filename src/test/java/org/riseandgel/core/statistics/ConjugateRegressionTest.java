package org.riseandgel.core.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.statistics.ConjugateRegression.Belief;
import org.riseandgel.core.statistics.ConjugateRegression.Row;

class ConjugateRegressionTest {
    private static final ConjugateRegression ONE_MEAN =
            ConjugateRegression.believing(List.of(new Belief(2, 0.5)), new ReadingNoise(0.1, 6));

    // Closed form of the normal–inverse-gamma model for one mean: precision 4 before, 5 after; mean (4·2 + 3) ÷ 5; sum
    // of
    // squares 6·0.01 + 4/5·(3 − 2)²; 7 degrees of freedom.
    @Test
    void oneRecordByHand() {
        StudentForecast forecast = ONE_MEAN.with(new Row(List.of(1.0), 3, 1)).at(List.of(1.0));
        assertThat(forecast.location()).isCloseTo(11.0 / 5, within(1e-14));
        assertThat(forecast.degreesOfFreedom()).isEqualTo(7);
        double variance = (0.06 + 0.8) / 7;
        assertThat(forecast.scale()).isCloseTo(Math.sqrt(variance * (1 + 1 / 5.0)), within(1e-14));
    }

    @Property(tries = 100)
    void leavingOutUndoesLearning(
            @ForAll @DoubleRange(min = -5, max = 5) double y, @ForAll @DoubleRange(min = 0.1, max = 3) double weight) {
        Row row = new Row(List.of(1.0), y, weight);
        StudentForecast before = ONE_MEAN.at(List.of(1.0));
        StudentForecast after = ONE_MEAN.with(row).without(row).at(List.of(1.0));
        assertThat(after.location()).isCloseTo(before.location(), within(1e-12));
        assertThat(after.scale()).isCloseTo(before.scale(), within(1e-10));
    }

    @Test
    void manyRecordsAreOrdinaryLeastSquares() {
        Random chance = new Random(5);
        List<Point> points = IntStream.range(0, 4000)
                .mapToObj(i -> chance.nextDouble())
                .map(x -> new Point(x, 7 - 3 * x + 0.2 * chance.nextGaussian()))
                .toList();
        ConjugateRegression learned =
                ConjugateRegression.believing(List.of(new Belief(0, 10), new Belief(0, 10)), new ReadingNoise(1, 4));
        for (Point point : points) {
            learned = learned.with(new Row(List.of(1.0, point.x()), point.y(), 1));
        }
        StraightLineFit least = StraightLineFit.of(points);
        // The belief, 0.01 records about 0 against 4,000 records, pulls a coefficient of 7 by about 10⁻⁴.
        assertThat(learned.coefficients().get(0)).isCloseTo(least.intercept(), within(3e-4));
        assertThat(learned.coefficients().get(1)).isCloseTo(least.slope(), within(3e-4));
        assertThat(learned.deviation()).isCloseTo(least.residualDeviation(), within(5e-3));
    }

    @Test
    void whatDoesNotFitIsRefused() {
        assertThatThrownBy(() -> ONE_MEAN.at(List.of(1.0, 2.0)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessage("x has 2 numbers, must have 1");
        assertThatThrownBy(() -> new Row(List.of(1.0), Double.NaN, 1)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> new Row(List.of(1.0), 1, 0)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> ConjugateRegression.believing(List.of(new Belief(0, 1)), ReadingNoise.UNKNOWN))
                .isInstanceOf(OutOfRangeException.class);
    }
}
