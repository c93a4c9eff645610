package org.riseandgel.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.Density;
import org.riseandgel.core.quantity.Length;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Ratio;
import org.riseandgel.core.quantity.TimeSpan;
import org.riseandgel.core.quantity.Unit;
import org.riseandgel.core.quantity.Volume;

class ProfileVesselTest {
    private final Catalogue catalogue = Catalogue.standard();
    private final ProfileVessel profile = new ProfileVessel();

    /** A straight vessel of 100 cm² poured out: by hand, every 100 mL are 1 cm. */
    private final Given straight = Given.defaultsOf(profile)
            .reading("volumes", volumes(500, 5, 1000, 10, 2000, 20))
            .with("charge", Volume.ofMillilitres(400));

    @Test
    void aStraightVesselByHand() {
        Outcome outcome = catalogue.run(profile, straight);
        assertThat(centimetres(outcome, "liquidHeight")).isCloseTo(4, within(1e-9));
        assertThat(centimetres(outcome, "markHeight")).isCloseTo(16, within(1e-9));
        assertThat(centimetres(outcome, "freeboard")).isCloseTo(4, within(1e-9));
        assertThat(outcome.results().get("largestRatio").inBase()).isCloseTo(5, within(1e-12));
    }

    /** A liquid of 0.8 g/mL: the same vessel takes 0.8 times the grams. */
    @Test
    void pouredByMassItIsTheSameVessel() {
        Given poured = straight.choosing("poured", "mass")
                .reading(
                        "masses",
                        List.of(
                                Given.Row.of(Mass.ofGrams(400), Length.ofCentimetres(5)),
                                Given.Row.of(Mass.ofGrams(1600), Length.ofCentimetres(20))))
                .with("pouredDensity", Density.ofGramsPerMillilitre(0.8))
                .with("ratio", Ratio.of(3));
        Outcome outcome = catalogue.run(profile, poured);
        assertThat(centimetres(outcome, "markHeight")).isCloseTo(12, within(1e-9));
        // 1200 mL in a vessel that seems to hold 80 mL in a centimetre
        assertThat(Slips.of(outcome, Slip.DENSITY_LEFT_OUT, "markHeight").in(Unit.CENTIMETRE))
                .isCloseTo(15, within(1e-9));
    }

    /** Poured rows of a frustum of 12 cm and 16 cm, 14 cm deep; 500 mL stand 4.02327 cm high (textbook frustum). */
    @Test
    void aTaperedVesselFromItsTable() {
        double slope = 2.0 / 14;
        List<Given.Row> rows = IntStream.rangeClosed(1, 28)
                .mapToObj(i -> i * 0.5)
                .map(h -> Given.Row.of(Volume.ofMillilitres(frustum(6, 6 + slope * h, h)), Length.ofCentimetres(h)))
                .toList();
        Given tapered = straight.reading("volumes", rows).with("charge", Volume.ofMillilitres(500));
        Outcome outcome = catalogue.run(profile, tapered);
        assertThat(centimetres(outcome, "liquidHeight")).isCloseTo(4.02327, within(1e-4));
        assertThat(Slips.of(outcome, Slip.LIQUID_HEIGHT_MULTIPLIED, "markHeight")
                        .in(Unit.CENTIMETRE))
                .isCloseTo(4 * centimetres(outcome, "liquidHeight"), within(1e-9));
    }

    @Test
    void theWhiskCountsAndIsNoFoam() {
        Given whisk = straight.with("whisk", Volume.ofMillilitres(100)).with("ratio", Ratio.of(3));
        Outcome outcome = catalogue.run(profile, whisk);
        assertThat(centimetres(outcome, "markHeight")).isCloseTo(13, within(1e-9));
        assertThat(Slips.of(outcome, Slip.WHISK_LEFT_OUT, "markHeight").in(Unit.CENTIMETRE))
                .isCloseTo(12, within(1e-9));
        assertThat(Slips.of(outcome, Slip.GAIN_FOR_RATIO, "markHeight").in(Unit.CENTIMETRE))
                .isCloseTo(17, within(1e-9));
    }

    @Test
    void aTableThatDoesNotRiseAndAMarkBeyondTheRimAreRefused() {
        assertThatThrownBy(() -> catalogue.run(profile, straight.reading("volumes", volumes(500, 5, 400, 10))))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("row 2");
        assertThatThrownBy(() -> catalogue.run(profile, straight.with("ratio", Ratio.of(5.1))))
                .isInstanceOfSatisfying(
                        OutOfRangeException.class,
                        refused -> assertThat(profile.inputAt(refused.what())).isEqualTo("ratio"))
                .hasMessageContaining("largest ratio that fits is 5");
    }

    @Test
    void aRowOfAnotherKindIsAMistakeOfTheProgram() {
        Given.Row wrong = Given.Row.of(TimeSpan.ofMinutes(1), Length.ofCentimetres(2));
        assertThatThrownBy(() -> catalogue.run(profile, straight.reading("volumes", List.of(wrong))))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void theChartShowsEveryStepAndTheFloor() {
        String svg = profile.drawing(straight, catalogue.run(profile, straight), QuantityText.of(DecimalMark.POINT))
                .orElseThrow();
        assertThat(svg.split("<circle", -1)).hasSize(5);
        assertThat(svg)
                .contains("The mark for 4× is at 16.0\u00a0cm of 20.0\u00a0cm.")
                .doesNotContain("NaN", "style=");
    }

    private static double frustum(double floor, double level, double height) {
        return Math.PI * height * (floor * floor + floor * level + level * level) / 3;
    }

    private static List<Given.Row> volumes(double... pairs) {
        return IntStream.range(0, pairs.length / 2)
                .mapToObj(i -> Given.Row.of(Volume.ofMillilitres(pairs[2 * i]), Length.ofCentimetres(pairs[2 * i + 1])))
                .toList();
    }

    private static double centimetres(Outcome outcome, String result) {
        return outcome.results().get(result).in(Unit.CENTIMETRE);
    }
}
