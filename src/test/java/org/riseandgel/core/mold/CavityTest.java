package org.riseandgel.core.mold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.riseandgel.core.quantity.Concentration;
import org.riseandgel.core.quantity.Density;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Temperature;
import org.riseandgel.core.quantity.TimeSpan;
import org.riseandgel.core.quantity.Volume;

class CavityTest {
    // Tanaka and others, Metrologia 38 (2001); recomputed with IAPWS-95, which agrees to 0.0012 kg/m³.
    @ParameterizedTest
    @CsvSource({
        "4, 999.9749",
        "10, 999.7027",
        "15, 999.1026",
        "18, 998.5984",
        "20, 998.2067",
        "21, 997.9950",
        "22, 997.7730",
        "23, 997.5408",
        "24, 997.2988",
        "25, 997.0470",
        "30, 995.6488",
        "35, 994.0326",
        "40, 992.2152"
    })
    void densityOfWater(double celsius, double expected) {
        assertThat(WaterDensity.at(Temperature.ofCelsius(celsius)).inKilogramsPerCubicMetre())
                .isCloseTo(expected, within(5.1e-5));
    }

    // Form of ISO 8655-6, recomputed with 1.2 kg/m³ of air and weights of 8,000 kg/m³; the standard's own table has
    // them to
    // four places.
    @ParameterizedTest
    @CsvSource({
        "15, 1.00195, 1.0020",
        "20, 1.00285, 1.0029",
        "22, 1.00329, 1.0033",
        "25, 1.00402, 1.0040",
        "30, 1.00543, 1.0054"
    })
    void liftOfTheAir(double celsius, double expected, double table) {
        double factor = WaterDensity.millilitresPerGramShown(Temperature.ofCelsius(celsius));
        assertThat(factor).isCloseTo(expected, within(5.1e-6));
        assertThat(factor).isCloseTo(table, within(1e-4));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.1, 40.1})
    void noWaterOutOfRange(double celsius) {
        assertThatThrownBy(() -> WaterDensity.at(Temperature.ofCelsius(celsius)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessage("water temperature in °C is " + celsius + ", must be from 0.0 to 40.0");
    }

    // By hand: 460 g at 1.6 g/mL; 500 g of water at 20 °C with the densities above.
    @Test
    void cavityByHand() {
        assertThat(Cavity.fromClay(Mass.ofGrams(460), Density.ofGramsPerMillilitre(1.6))
                        .inMillilitres())
                .isCloseTo(287.5, within(1e-9));
        Temperature room = Temperature.ofCelsius(20);
        assertThat(Cavity.fromWater(Mass.ofGrams(500), room).inMillilitres())
                .isCloseTo(500 / 0.9982067, withinPercentage(1e-5));
        assertThat(Cavity.fromWaterInAir(Mass.ofGrams(500), room).inMillilitres())
                .isCloseTo(500 * 1.00285, withinPercentage(1e-3));
        assertThatThrownBy(() -> Cavity.fromWater(Mass.ofGrams(0), room)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Cavity.fromClay(Mass.ofGrams(Double.NaN), Density.ofGramsPerMillilitre(1)))
                .isInstanceOf(OutOfRangeException.class);
    }

    @Property(tries = 100)
    void moreFillingIsMoreRoom(@ForAll @DoubleRange(min = 1, max = 10_000) double grams) {
        Temperature room = Temperature.ofCelsius(20);
        assertThat(Cavity.fromWater(Mass.ofGrams(2 * grams), room).inMillilitres())
                .isCloseTo(2 * Cavity.fromWater(Mass.ofGrams(grams), room).inMillilitres(), withinPercentage(1e-12));
        assertThat(Cavity.fromWater(Mass.ofGrams(grams), Temperature.ofCelsius(30))
                        .inMillilitres())
                .isGreaterThan(Cavity.fromWater(Mass.ofGrams(grams), room).inMillilitres());
    }

    // By hand: 300 mL × 1.2 × 3 ÷ 0.9 = 1200 mL.
    @Test
    void foamNeededByHand() {
        FoamNeeded needed = foam(300, 20, 3, 10);
        assertThat(needed.intoMolds().inMillilitres()).isCloseTo(1080, within(1e-9));
        assertThat(needed.total().inMillilitres()).isCloseTo(1200, within(1e-9));
    }

    @Property(tries = 200)
    void piecesAreTheInverseOfFoam(
            @ForAll @DoubleRange(min = 1, max = 5000) double cavity,
            @ForAll @DoubleRange(min = 0, max = 100) double overfill,
            @ForAll @IntRange(min = 1, max = 50) int pieces,
            @ForAll @DoubleRange(min = 0, max = 80) double loss) {
        FoamNeeded needed = foam(cavity, overfill, pieces, loss);
        assertThat(needed.piecesFrom(needed.total())).isEqualTo(pieces);
        assertThat(needed.piecesFrom(Volume.ofMillilitres(needed.total().inMillilitres() * 0.999)))
                .isEqualTo(pieces - 1);
        assertThat(needed.total().inMillilitres())
                .isGreaterThanOrEqualTo(needed.intoMolds().inMillilitres());
    }

    @Test
    void nothingLostNothingAdded() {
        assertThat(foam(300, 0, 1, 0).total()).isEqualTo(Volume.ofMillilitres(300));
    }

    @Test
    void impossibleFoamIsRefused() {
        assertThatThrownBy(() -> foam(0, 10, 1, 10)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> foam(300, 10, 0, 10)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> foam(300, 10, 1, 91))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessage("bowl loss in % is 91.0, must be from 0.0 to 90.0");
        assertThatThrownBy(() -> foam(Double.POSITIVE_INFINITY, 10, 1, 10)).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void partsAreFilledInTurn() {
        FillPlan plan = FillPlan.of(
                List.of(part("nose", 50), part("brow", 150), part("rest", 200)),
                Concentration.ofPercent(10),
                TimeSpan.ofMinutes(5),
                TimeSpan.ofMinutes(4));
        assertThat(plan.portions()).extracting(FillPlan.Portion::name).containsExactly("nose", "brow", "rest");
        assertThat(plan.portions().get(1).foam().inMillilitres()).isCloseTo(165, within(1e-9));
        assertThat(plan.portions().get(1).start().inMinutes()).isCloseTo(5.5, within(1e-9));
        assertThat(plan.portions().get(1).end().inMinutes()).isCloseTo(7, within(1e-9));
        assertThat(plan.end().inMinutes()).isCloseTo(9, within(1e-9));
        assertThat(plan.foam().inMillilitres()).isCloseTo(440, within(1e-9));
    }

    @Test
    void noPlanWithoutParts() {
        Concentration none = Concentration.ofPercent(0);
        TimeSpan minute = TimeSpan.ofMinutes(1);
        assertThatThrownBy(() -> FillPlan.of(List.of(), none, minute, minute)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> FillPlan.of(List.of(part("a", 1)), none, minute, TimeSpan.ofSeconds(0)))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> part(" ", 1)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> part("a", 0)).isInstanceOf(OutOfRangeException.class);
    }

    private static FillPlan.Part part(String name, double millilitres) {
        return new FillPlan.Part(name, Volume.ofMillilitres(millilitres));
    }

    private static FoamNeeded foam(double cavity, double overfill, int pieces, double loss) {
        return new FoamNeeded(
                Volume.ofMillilitres(cavity), Concentration.ofPercent(overfill), pieces, Concentration.ofPercent(loss));
    }
}
