package org.riseandgel.core.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.DoubleStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.riseandgel.core.mold.FoamNeeded;
import org.riseandgel.core.quantity.Concentration;
import org.riseandgel.core.quantity.Density;
import org.riseandgel.core.quantity.Length;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Php;
import org.riseandgel.core.quantity.Ratio;
import org.riseandgel.core.quantity.Volume;
import org.riseandgel.core.vessel.StraightVessel;
import org.riseandgel.core.vessel.TaperedVessel;

class BatchTargetsTest {
    private static final Formula USUAL = Formula.usual();
    private static final Density LIQUID = Density.ofGramsPerMillilitre(1.02);
    private static final Ratio FIVE = Ratio.of(5);

    @Property(tries = 100)
    void everyTargetLeadsBackToItsBatch(@ForAll @DoubleRange(min = 1, max = 10_000) double grams) {
        Batch batch = Batch.ofBase(USUAL, Mass.ofGrams(grams));
        assertThat(Batch.ofTotal(USUAL, batch.total()).base().inGrams()).isCloseTo(grams, withinPercentage(1e-10));
        assertThat(Batch.ofLiquid(USUAL, batch.liquid(LIQUID), LIQUID).base().inGrams())
                .isCloseTo(grams, withinPercentage(1e-10));
        assertThat(Batch.ofFoam(USUAL, batch.foam(LIQUID, FIVE), FIVE, LIQUID)
                        .base()
                        .inGrams())
                .isCloseTo(grams, withinPercentage(1e-10));
        assertThat(Batch.ofBase(USUAL, Mass.ofGrams(2 * grams)).total().inGrams())
                .isCloseTo(2 * batch.total().inGrams(), withinPercentage(1e-10));
    }

    // By hand: 300 mL × 1.2 × 2 ÷ 0.9 = 800 mL of foam, 160 mL of liquid, 163.2 g, 163.2 ÷ 1.24333… = 131.2601 g of
    // base.
    @Test
    void batchForPieces() {
        FoamNeeded foam =
                new FoamNeeded(Volume.ofMillilitres(300), Concentration.ofPercent(20), 2, Concentration.ofPercent(10));
        Batch batch = Batch.ofPieces(USUAL, foam, FIVE, LIQUID);
        assertThat(batch.total().inGrams()).isCloseTo(163.2, within(1e-9));
        assertThat(batch.base().inGrams()).isCloseTo(163.2 / 1.24333333333333, within(1e-9));
        assertThat(foam.piecesFrom(batch.foam(LIQUID, FIVE))).isEqualTo(2);
    }

    // By hand: 20 g of gelling agent at 11 php are good for 181.8181… g of base, less than the others are.
    @Test
    void theMostThatStockAllows() {
        Stock stock = stock(1000, 60, 100, 20);
        Stock.Most most = stock.most(USUAL);
        assertThat(most.limiting()).containsExactly("Gelling agent");
        assertThat(most.batch().base().inGrams()).isCloseTo(20 / 0.11, within(1e-9));
        assertThat(Batch.ofStock(USUAL, stock)).isEqualTo(most.batch());
    }

    @Test
    void whatRunsOutTogetherIsNamedTogether() {
        assertThat(stock(150, 15, 5, 16.5).most(USUAL).limiting())
                .containsExactly("Base", "Foaming agent", "Water", "Gelling agent");
    }

    @Test
    void whatIsNotInStockIsNamed() {
        assertThatThrownBy(() -> new Stock(Map.of("Base", Mass.ofGrams(100))).most(USUAL))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageStartingWith("stock of Foaming agent in grams is 0.0, must be more than 0");
    }

    @Property(tries = 100)
    void noIngredientRunsShort(
            @ForAll @DoubleRange(min = 1, max = 1000) double base,
            @ForAll @DoubleRange(min = 1, max = 1000) double soap,
            @ForAll @DoubleRange(min = 1, max = 1000) double agent) {
        Batch batch = stock(base, soap, 1000, agent).most(USUAL).batch();
        assertThat(batch.portions().get(0).mass().inGrams()).isLessThanOrEqualTo(base * (1 + 1e-12));
        assertThat(batch.portions().get(1).mass().inGrams()).isLessThanOrEqualTo(soap * (1 + 1e-12));
        assertThat(batch.portions().get(3).mass().inGrams()).isLessThanOrEqualTo(agent * (1 + 1e-12));
    }

    // By hand: 4 g dry at 25 % are 16 g of dispersion, which bring 12 g of water.
    @Test
    void dispersionByHand() {
        Dispersion quarter = new Dispersion(Concentration.ofPercent(25));
        assertThat(quarter.forDry(Mass.ofGrams(4)).inGrams()).isCloseTo(16, within(1e-12));
        assertThat(quarter.waterIn(Mass.ofGrams(16)).inGrams()).isCloseTo(12, within(1e-12));
        assertThat(quarter.waterIn(Php.ofPartsPerHundred(16)).inPartsPerHundred())
                .isCloseTo(12, within(1e-12));
    }

    @Property(tries = 200)
    void dispersionAndDryAreInverse(
            @ForAll @DoubleRange(min = 1, max = 100) double solids,
            @ForAll @DoubleRange(min = 0, max = 900) double dry) {
        Dispersion dispersion = new Dispersion(Concentration.ofPercent(solids));
        Mass mass = Mass.ofGrams(dry);
        Mass wet = dispersion.forDry(mass);
        assertThat(dispersion.dryIn(wet).inGrams()).isCloseTo(dry, within(1e-9));
        assertThat(dispersion.dryIn(wet).inGrams() + dispersion.waterIn(wet).inGrams())
                .isCloseTo(wet.inGrams(), within(1e-9 * (1 + wet.inGrams())));
        Php php = Php.ofPartsPerHundred(dry);
        assertThat(dispersion.dryIn(dispersion.forDry(php)).inPartsPerHundred()).isCloseTo(dry, within(1e-9));
    }

    @Test
    void aFormulaFromDispersionHasTheSameSum() {
        Formula dry = new Formula(List.of(
                Formula.Row.base("Base"),
                Formula.Row.free("Water", Php.ofPartsPerHundred(12)),
                Formula.Row.ranged(
                        "Gelling agent",
                        Php.ofPartsPerHundred(3),
                        Php.ofPartsPerHundred(2),
                        Php.ofPartsPerHundred(4))));
        Formula wet = new Dispersion(Concentration.ofPercent(25)).in(dry, "Gelling agent", "Water");
        assertThat(wet.sum().inPartsPerHundred()).isCloseTo(dry.sum().inPartsPerHundred(), within(1e-9));
        assertThat(wet.row("Gelling agent").php().inPartsPerHundred()).isCloseTo(12, within(1e-9));
        assertThat(wet.row("Gelling agent").high().inPartsPerHundred()).isCloseTo(16, within(1e-9));
        assertThat(wet.row("Water").php().inPartsPerHundred()).isCloseTo(3, within(1e-9));
        assertThatThrownBy(() -> new Dispersion(Concentration.ofPercent(10)).in(dry, "Gelling agent", "Water"))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("must bring at most the formula's 12.0 php");
        assertThatThrownBy(() -> new Dispersion(Concentration.ofPercent(0))).isInstanceOf(OutOfRangeException.class);
    }

    // By hand: 510 g at 1.02 g/mL are 500 mL; in an upright vessel of 100 mm they stand 63.66 mm high, five times as
    // much
    // foam 318.31 mm; 81.69 mm are left of 400.
    @Test
    void levelsInAVessel() {
        StraightVessel vessel = new StraightVessel(Length.ofMillimetres(100), Length.ofMillimetres(400));
        Batch batch = Batch.ofTotal(USUAL, Mass.ofGrams(510));
        BatchInVessel stands = BatchInVessel.of(batch, LIQUID, FIVE, vessel, Volume.ofMillilitres(0));
        assertThat(stands.liquid().inMillilitres()).isCloseTo(500, within(1e-9));
        assertThat(stands.liquidLevel().inMillimetres()).isCloseTo(500_000 / (Math.PI * 2500), within(1e-9));
        assertThat(stands.foamLevel().inMillimetres()).isCloseTo(2_500_000 / (Math.PI * 2500), within(1e-9));
        assertThat(stands.freeboard().inMillimetres()).isCloseTo(400 - 2_500_000 / (Math.PI * 2500), within(1e-9));
        assertThat(stands.largestRatio().asNumber()).isCloseTo(Math.PI * 2500 * 400 / 500_000, within(1e-9));
        assertThatThrownBy(() -> BatchInVessel.of(batch, LIQUID, Ratio.of(7), vessel, Volume.ofMillilitres(0)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("the largest ratio that fits is 6.28");
    }

    @Property(tries = 50)
    void aWhiskRaisesTheLevel(@ForAll @DoubleRange(min = 1, max = 100) double displaced) {
        TaperedVessel vessel =
                new TaperedVessel(Length.ofMillimetres(100), Length.ofMillimetres(140), Length.ofMillimetres(400));
        Batch batch = Batch.ofTotal(USUAL, Mass.ofGrams(300));
        BatchInVessel without = BatchInVessel.of(batch, LIQUID, FIVE, vessel, Volume.ofMillilitres(0));
        BatchInVessel with = BatchInVessel.of(batch, LIQUID, FIVE, vessel, Volume.ofMillilitres(displaced));
        assertThat(with.liquidLevel().inMillimetres())
                .isGreaterThan(without.liquidLevel().inMillimetres());
        assertThat(with.freeboard().inMillimetres())
                .isLessThan(without.freeboard().inMillimetres());
    }

    // JCGM 100:2008, 4.3.7, seen in numbers: errors spread evenly over d have the deviation d ÷ (2·√3).
    @Test
    void roundingErrorsSpreadLikeThat() {
        Random chance = new Random(8);
        double meanSquare = DoubleStream.generate(() -> 100 * chance.nextDouble())
                .limit(100_000)
                .map(m ->
                        WeighingPlan.rounded(Mass.ofGrams(m), Mass.ofGrams(0.5)).inGrams() - m)
                .map(error -> error * error)
                .average()
                .orElseThrow();
        assertThat(Math.sqrt(meanSquare)).isCloseTo(0.5 / (2 * Math.sqrt(3)), withinPercentage(1));
    }

    // By hand: four weighings to 1 g with tare, √(4/6) = 0.8165 g of 187 g; with 1 % on density and 2 % on ratio the
    // foam is
    // sure to √(0.00437² + 0.01² + 0.02²) = 2.278 %.
    @Test
    void overallUncertainty() {
        WeighingPlan plan = Batch.ofBase(USUAL, Mass.ofGrams(150)).weighing(Mass.ofGrams(1), true);
        BatchUncertainty sure = BatchUncertainty.of(plan, LIQUID, 0.0102, FIVE, 0.1);
        assertThat(sure.total().inGrams()).isCloseTo(187, within(1e-9));
        assertThat(sure.totalUncertainty().inGrams()).isCloseTo(Math.sqrt(4 / 6.0), within(1e-9));
        double relative = Math.sqrt(4 / 6.0 / 187 / 187 + 0.0001 + 0.0004);
        assertThat(sure.foam().inMillilitres()).isCloseTo(187 / 1.02 * 5, within(1e-9));
        assertThat(sure.foamUncertainty().inMillilitres()).isCloseTo(187 / 1.02 * 5 * relative, within(1e-9));
        assertThatThrownBy(() -> BatchUncertainty.of(plan, LIQUID, Double.NaN, FIVE, 0.1))
                .isInstanceOf(OutOfRangeException.class);
    }

    private static Stock stock(double base, double soap, double water, double agent) {
        return new Stock(Map.of(
                "Base", Mass.ofGrams(base),
                "Foaming agent", Mass.ofGrams(soap),
                "Water", Mass.ofGrams(water),
                "Gelling agent", Mass.ofGrams(agent)));
    }
}
