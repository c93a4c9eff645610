package org.riseandgel.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.riseandgel.core.quantity.Length;
import org.riseandgel.core.quantity.TimeSpan;
import org.riseandgel.core.quantity.Unit;

class CompareThicknessTest {
    private final Catalogue catalogue = Catalogue.standard();
    private final CompareThickness compare = new CompareThickness();
    private final Given given = Given.defaultsOf(compare);

    @Test
    void bothWaysByHand() {
        Outcome outcome = catalogue.run(
                compare, given.with("thickness", Length.ofCentimetres(4.5)).with("time", TimeSpan.ofHours(16)));
        // 4.5 ÷ 3 = 1.5, squared 2.25, × 4 h = 9 h; 16 ÷ 4 = 4, root 2, × 3 cm = 6 cm
        assertThat(value(outcome, "timeForThickness")).isCloseTo(9 * 3600, within(1e-6));
        assertThat(value(outcome, "thicknessForTime")).isCloseTo(60, within(1e-9));
        assertThat(wrong(outcome, Slip.SQUARE_LEFT_OUT, "timeForThickness")).isCloseTo(6 * 3600, within(1e-6));
        assertThat(wrong(outcome, Slip.SQUARE_LEFT_OUT, "thicknessForTime")).isCloseTo(120, within(1e-9));
        assertThat(wrong(outcome, Slip.RATIO_TURNED_ROUND, "thicknessForTime")).isCloseTo(15, within(1e-9));
        // 4 h × 1.5 × 2; half of 4 is 2, which the root of 4 is too, so that slip cannot be told here
        assertThat(wrong(outcome, Slip.DOUBLED_FOR_SQUARED, "timeForThickness")).isCloseTo(12 * 3600, within(1e-6));
        assertThat(outcome.slipsOf("thicknessForTime")).noneMatch(slip -> slip.slip() == Slip.DOUBLED_FOR_SQUARED);
    }

    @Test
    void halfIsNoRoot() {
        Outcome outcome = catalogue.run(compare, given.with("time", TimeSpan.ofHours(36)));
        // 36 ÷ 4 = 9, half of it 4.5, × 30 mm; the root would be 3
        assertThat(wrong(outcome, Slip.DOUBLED_FOR_SQUARED, "thicknessForTime")).isCloseTo(135, within(1e-9));
    }

    @Test
    void slipsAreApart() {
        SlipsApart.check(compare, catalogue.run(compare, given));
    }

    @Property
    void oneWayAndBack(@ForAll @Scale(3) @DoubleRange(min = 0.5, max = 45) double centimetres) {
        Outcome there = catalogue.run(compare, given.with("thickness", Length.ofCentimetres(centimetres)));
        Outcome back = catalogue.run(
                compare,
                given.with(
                        "time",
                        TimeSpan.ofHours(there.results().get("timeForThickness").in(Unit.HOUR))));
        assertThat(value(back, "thicknessForTime")).isCloseTo(10 * centimetres, Percentage.withPercentage(1e-9));
    }

    private static double value(Outcome outcome, String name) {
        return outcome.results().get(name).inBase();
    }

    private static double wrong(Outcome outcome, Slip slip, String result) {
        return Slips.of(outcome, slip, result).inBase();
    }
}
