package org.riseandgel.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.riseandgel.core.quantity.Length;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Quantity;
import org.riseandgel.core.quantity.Ratio;
import org.riseandgel.core.quantity.Unit;
import org.riseandgel.core.quantity.Volume;

class MarkStickTest {
    private final Catalogue catalogue = Catalogue.standard();
    private final MarkStick stick = new MarkStick();

    /** The school-book frustum of radii 6 and 8, 14 deep, holds 2169.79333 (recomputed with π). */
    private final Given beaker = Given.defaultsOf(stick)
            .choosing("shape", "tapered")
            .with("bottomDiameter", Length.ofCentimetres(12))
            .with("topDiameter", Length.ofCentimetres(16))
            .with("depth", Length.ofCentimetres(14))
            .with("charge", Volume.ofMillilitres(500))
            .with("ratio", Ratio.of(3));

    @Test
    void theMarkOfATaperedBeakerHoldsTheFoam() {
        Outcome outcome = catalogue.run(stick, beaker);
        double mark = centimetres(outcome, "markHeight");
        // the radius at the mark by the straight wall, 6 + 2·h/14, and V = πh(r₀² + r₀r + r²)/3 must give 1500 mL
        double radius = 6 + 2 * mark / 14;
        assertThat(Math.PI * mark * (36 + 6 * radius + radius * radius) / 3).isCloseTo(1500, within(1e-8));
        assertThat(outcome.results().get("largestRatio").inBase()).isCloseTo(2169.79333 / 500, within(1e-7));
        assertThat(centimetres(outcome, "freeboard")).isCloseTo(14 - mark, within(1e-9));
    }

    @Test
    void multiplyingTheLiquidsHeightIsNamedInATaperedBeakerOnly() {
        Outcome tapered = catalogue.run(stick, beaker);
        assertThat(wrong(tapered, Slip.LIQUID_HEIGHT_MULTIPLIED, "markHeight").in(Unit.CENTIMETRE))
                .isCloseTo(3 * centimetres(tapered, "liquidHeight"), within(1e-9))
                .isGreaterThan(centimetres(tapered, "markHeight"));
        assertThat(catalogue.run(stick, beaker.choosing("shape", "straight")).slips())
                .extracting(Outcome.SlipAnswer::slip)
                .doesNotContain(Slip.LIQUID_HEIGHT_MULTIPLIED, Slip.STRAIGHT_FOR_TAPERED);
    }

    @Test
    void takingTheBeakerForStraightMarksTooHigh() {
        Outcome outcome = catalogue.run(stick, beaker);
        // by hand: 1500 mL on π·6² = 113.0973 cm² is 13.26291 cm
        assertThat(wrong(outcome, Slip.STRAIGHT_FOR_TAPERED, "markHeight").in(Unit.CENTIMETRE))
                .isCloseTo(13.26291, within(5e-6));
    }

    @Test
    void aWhiskThatStaysInIsCountedOnce() {
        Given jar = Given.defaultsOf(stick).with("whisk", Volume.ofMillilitres(60));
        Outcome outcome = catalogue.run(stick, jar);
        double floor = Math.PI * 36;
        assertThat(centimetres(outcome, "markHeight")).isCloseTo(2060 / floor, within(1e-9));
        assertThat(wrong(outcome, Slip.WHISK_LEFT_OUT, "markHeight").in(Unit.CENTIMETRE))
                .isCloseTo(2000 / floor, within(1e-9));
        assertThat(wrong(outcome, Slip.WHISK_MULTIPLIED, "markHeight").in(Unit.CENTIMETRE))
                .isCloseTo(2240 / floor, within(1e-9));
        assertThat(outcome.notes()).extracting(Outcome.Note::text).anyMatch(note -> note.contains("covered"));
    }

    @Test
    void diameterForRadiusIsAQuarterOfTheHeight() {
        Outcome outcome = catalogue.run(stick, Given.defaultsOf(stick));
        double right = centimetres(outcome, "markHeight");
        assertThat(wrong(outcome, Slip.DIAMETER_FOR_RADIUS, "markHeight").in(Unit.CENTIMETRE))
                .isCloseTo(right / 4, within(1e-9));
        assertThat(wrong(outcome, Slip.RADIUS_FOR_DIAMETER, "markHeight").in(Unit.CENTIMETRE))
                .isCloseTo(right * 4, within(1e-9));
        assertThat(wrong(outcome, Slip.GAIN_FOR_RATIO, "markHeight").in(Unit.CENTIMETRE))
                .isCloseTo(right * 5 / 4, within(1e-9));
    }

    @Test
    void foamOverTheRimIsRefusedNamingTheLargestRatio() {
        assertThatThrownBy(() -> catalogue.run(stick, beaker.with("ratio", Ratio.of(5))))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("the largest ratio that fits is 4.33");
    }

    /** Everything k times as long, and k³ times the liquid, puts the mark k times as high. */
    @Property
    void theMarkScales(@ForAll @Scale(6) @DoubleRange(min = 0.5, max = 3) double k) {
        Given larger = beaker.with("bottomDiameter", Length.ofCentimetres(12 * k))
                .with("topDiameter", Length.ofCentimetres(16 * k))
                .with("depth", Length.ofCentimetres(14 * k))
                .with("charge", Volume.ofMillilitres(500 * k * k * k));
        assertThat(centimetres(catalogue.run(stick, larger), "markHeight"))
                .isCloseTo(
                        k * centimetres(catalogue.run(stick, beaker), "markHeight"), Percentage.withPercentage(1e-9));
    }

    private static double centimetres(Outcome outcome, String result) {
        return outcome.results().get(result).in(Unit.CENTIMETRE);
    }

    private static Quantity wrong(Outcome outcome, Slip slip, String result) {
        return Slips.of(outcome, slip, result);
    }
}
