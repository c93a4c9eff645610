package org.riseandgel.core.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.riseandgel.core.quantity.OutOfRangeException;

class StraightLineFitTest {
    // NIST StRD Norris, certified values; a double should keep ten of the fifteen digits.
    @Test
    void norris() {
        StraightLineFit fit = StraightLineFit.of(NistSets.norris());
        assertThat(fit.intercept()).isCloseTo(-0.262323073774029, withinPercentage(1e-8));
        assertThat(fit.slope()).isCloseTo(1.00211681802045, withinPercentage(1e-8));
        assertThat(fit.interceptError()).isCloseTo(0.232818234301152, withinPercentage(1e-8));
        assertThat(fit.slopeError()).isCloseTo(0.429796848199937E-03, withinPercentage(1e-8));
        assertThat(fit.residualDeviation()).isCloseTo(0.884796396144373, withinPercentage(1e-8));
        assertThat(fit.rSquared()).isCloseTo(0.999993745883712, within(1e-13));
    }

    // Recomputed from the certified values of Norris with an independent library; six places were noted.
    @Test
    void norrisAtFiveHundred() {
        StraightLineFit fit = StraightLineFit.of(NistSets.norris());
        assertThat(fit.at(500)).isCloseTo(500.796086, within(1e-6));
        assertInterval(fit.lineAt(500, 0.95), 500.488196, 501.103975, 1e-6);
        assertInterval(fit.readingAt(500, 0.95), 498.971794, 502.620378, 1e-6);
    }

    // JCGM 100:2008, H.3: calibration of a thermometer, 11 readings, reference 20 °C; figures as printed there, the
    // longer ones recomputed with independent libraries.
    @Test
    void thermometer() {
        StraightLineFit fit = thermometerFit();
        assertThat(fit.intercept()).isCloseTo(-0.1712, within(5e-5));
        assertThat(fit.interceptError()).isCloseTo(0.0029, within(5e-5));
        assertThat(fit.slope()).isCloseTo(0.00218, within(5e-6));
        assertThat(fit.slopeError()).isCloseTo(0.00067, within(5e-6));
        assertThat(fit.correlation()).isCloseTo(-0.930, within(5e-4));
        Estimate correction = fit.lineAt(10, 0.95);
        assertThat(correction.value()).isCloseTo(-0.149377, within(1e-6));
        assertThat(correction.standardError()).isCloseTo(0.0041386, within(1e-7));
        assertInterval(correction, -0.158739, -0.140015, 1e-6);
        assertInterval(fit.readingAt(10, 0.95), -0.161634, -0.137119, 1e-6);
    }

    @Property(tries = 100)
    void pointsOnALineGiveTheLine(
            @ForAll @DoubleRange(min = -100, max = 100) double intercept,
            @ForAll @DoubleRange(min = -100, max = 100) double slope) {
        StraightLineFit fit = StraightLineFit.of(IntStream.range(0, 5)
                .mapToObj(i -> new Point(i, intercept + slope * i))
                .toList());
        assertThat(fit.intercept()).isCloseTo(intercept, within(1e-10));
        assertThat(fit.slope()).isCloseTo(slope, within(1e-10));
        assertThat(fit.residualDeviation()).isLessThan(1e-10);
    }

    @Property(tries = 100)
    void theFurtherOffTheWider(@ForAll @DoubleRange(min = 0, max = 1000) double off) {
        StraightLineFit fit = thermometerFit();
        double near = fit.readingAt(fit.meanX() + off, 0.9).standardError();
        double far = fit.readingAt(fit.meanX() + off + 1, 0.9).standardError();
        assertThat(far).isGreaterThan(near);
    }

    @Test
    void whatCannotBeFittedIsRefused() {
        assertThatThrownBy(() -> StraightLineFit.of(List.of(new Point(1, 1), new Point(2, 2))))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessage("there are 2 readings, must be 3 or more");
        assertThatThrownBy(() -> StraightLineFit.of(List.of(new Point(1, 1), new Point(1, 2), new Point(1, 3))))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("2 or more places");
        assertThatThrownBy(() -> new Point(Double.NaN, 1)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> new Point(1, Double.POSITIVE_INFINITY)).isInstanceOf(OutOfRangeException.class);
    }

    private static StraightLineFit thermometerFit() {
        double[] t = {21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511};
        double[] b = {-.171, -.169, -.166, -.159, -.164, -.165, -.156, -.157, -.159, -.161, -.160};
        return StraightLineFit.of(IntStream.range(0, t.length)
                .mapToObj(i -> new Point(t[i] - 20, b[i]))
                .toList());
    }

    private static void assertInterval(Estimate estimate, double low, double high, double tolerance) {
        assertThat(estimate.interval().low()).isCloseTo(low, within(tolerance));
        assertThat(estimate.interval().high()).isCloseTo(high, within(tolerance));
    }
}
