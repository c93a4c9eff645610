package org.riseandgel.bench;

import java.util.Map;
import java.util.function.Supplier;
import org.riseandgel.core.batch.Batch;
import org.riseandgel.core.quantity.Density;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.Php;
import org.riseandgel.core.quantity.Ratio;
import org.riseandgel.core.quantity.Volume;

/** The wrong ways from an amount that is wanted to the mass of each ingredient; masses in grams, volumes in millilitres. */
final class BatchSlips {
    private final Given given;
    private final Work work;
    private final Map<String, Php> portions;
    private final double sum;
    private final double density;
    private final double base;
    private final double total;

    BatchSlips(Given given, Work work) {
        this.given = given;
        this.work = work;
        this.portions = Map.of(
                ScaleBatch.FOAMING_MASS, given.get(ScaleBatch.FOAMING_PHP, Php.class),
                ScaleBatch.WATER_MASS, given.get(ScaleBatch.WATER_PHP, Php.class),
                ScaleBatch.GELLING_MASS, given.get(ScaleBatch.GELLING_PHP, Php.class));
        this.sum = BatchWork.formula(given).sum().asShareOfBase();
        this.density = given.get(ScaleBatch.DENSITY, Density.class).inGramsPerMillilitre();
        Batch batch = BatchWork.batch(given);
        this.base = batch.base().inGrams();
        this.total = batch.total().inGrams();
    }

    void write() {
        switch (given.choice(ScaleBatch.TARGET)) {
            case ScaleBatch.FROM_BASE -> fromBase();
            case ScaleBatch.FROM_TOTAL -> fromTotal();
            case ScaleBatch.FROM_LIQUID ->
                fromLiquid(given.get(ScaleBatch.LIQUID, Volume.class).inMillilitres());
            default -> fromFoam();
        }
        portionSlips();
    }

    private void fromBase() {
        double percentTotal = base / baseShareIfPercent();
        mass(Slip.BASE_FOR_TOTAL, ScaleBatch.TOTAL_MASS, () -> base);
        mass(Slip.PERCENT_FOR_PHP, ScaleBatch.TOTAL_MASS, () -> percentTotal);
        portions(Slip.PERCENT_FOR_PHP, percentTotal);
        volume(Slip.BASE_FOR_TOTAL, () -> base / density);
        volume(Slip.PERCENT_FOR_PHP, () -> percentTotal / density);
        liquidFromTotal();
    }

    private void fromTotal() {
        percentOf();
        baseAndPortions(Slip.MULTIPLIED_FOR_DIVIDED, total * sum);
        liquidFromTotal();
    }

    private void fromFoam() {
        double foam = given.get(ScaleBatch.FOAM, Volume.class).inMillilitres();
        double ratio = given.get(ScaleBatch.EXPANSION, Ratio.class).asNumber();
        double liquid = foam / ratio;
        volume(Slip.MULTIPLIED_FOR_DIVIDED, () -> foam * ratio);
        volume(Slip.GAIN_FOR_RATIO, () -> foam / (ratio + 1));
        volume(Slip.MASS_FOR_VOLUME, () -> liquid * density);
        everyMass(Slip.MULTIPLIED_FOR_DIVIDED, foam * ratio * density);
        everyMass(Slip.GAIN_FOR_RATIO, foam / (ratio + 1) * density);
        fromLiquid(liquid);
    }

    private void fromLiquid(double liquid) {
        everyMass(Slip.DENSITY_LEFT_OUT, liquid);
        everyMass(Slip.DIVIDED_FOR_MULTIPLIED, liquid / density);
        percentOf();
    }

    /** Slips of the last step alone, the base being right. */
    private void portionSlips() {
        portions.forEach((name, php) -> mass(Slip.DIVIDED_FOR_MULTIPLIED, name, () -> base / php.asShareOfBase()));
    }

    /** php taken of the whole batch, which is the same mistake as taking the whole batch for the base. */
    private void percentOf() {
        mass(Slip.BASE_FOR_TOTAL, ScaleBatch.BASE_MASS, () -> total);
        mass(Slip.PERCENT_FOR_PHP, ScaleBatch.BASE_MASS, () -> total * baseShareIfPercent());
        portions(Slip.PERCENT_FOR_PHP, total);
    }

    private void liquidFromTotal() {
        volume(Slip.MULTIPLIED_FOR_DIVIDED, () -> total * density);
        volume(Slip.DENSITY_LEFT_OUT, () -> total);
    }

    private void everyMass(Slip slip, double wrongTotal) {
        mass(slip, ScaleBatch.TOTAL_MASS, () -> wrongTotal);
        baseAndPortions(slip, wrongTotal / sum);
    }

    private void baseAndPortions(Slip slip, double wrongBase) {
        mass(slip, ScaleBatch.BASE_MASS, () -> wrongBase);
        portions(slip, wrongBase);
    }

    private void portions(Slip slip, double wrongBase) {
        portions.forEach((name, php) -> mass(slip, name, () -> wrongBase * php.asShareOfBase()));
    }

    private double baseShareIfPercent() {
        return 1 - (sum - 1);
    }

    private void mass(Slip slip, String result, Supplier<Double> grams) {
        work.slip(slip, result, () -> Mass.ofGrams(grams.get()));
    }

    private void volume(Slip slip, Supplier<Double> millilitres) {
        work.slip(slip, ScaleBatch.LIQUID_VOLUME, () -> Volume.ofMillilitres(millilitres.get()));
    }
}
