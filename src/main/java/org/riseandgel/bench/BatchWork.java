package org.riseandgel.bench;

import static org.riseandgel.core.quantity.Unit.GRAM;
import static org.riseandgel.core.quantity.Unit.GRAM_PER_MILLILITRE;
import static org.riseandgel.core.quantity.Unit.MILLILITRE;
import static org.riseandgel.core.quantity.Unit.ONE;
import static org.riseandgel.core.quantity.Unit.PHP;

import java.util.List;
import org.riseandgel.core.batch.Batch;
import org.riseandgel.core.batch.Expansion;
import org.riseandgel.core.batch.Formula;
import org.riseandgel.core.batch.WeighingPlan;
import org.riseandgel.core.quantity.Density;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.Php;
import org.riseandgel.core.quantity.Ratio;
import org.riseandgel.core.quantity.Volume;

/** The steps from an amount that is wanted to the mass of each ingredient. */
final class BatchWork {
    private final Given given;
    private final Work work;
    private final Formula formula;
    private final Density density;

    BatchWork(Given given, Work work) {
        this.given = given;
        this.work = work;
        this.formula = formula(given);
        this.density = density(given);
    }

    void write() {
        switch (given.choice(ScaleBatch.TARGET)) {
            case ScaleBatch.FROM_BASE -> fromBase(given.get(ScaleBatch.BASE, Mass.class));
            case ScaleBatch.FROM_TOTAL -> fromTotal(given.get(ScaleBatch.TOTAL, Mass.class));
            case ScaleBatch.FROM_LIQUID -> fromLiquid(given.get(ScaleBatch.LIQUID, Volume.class));
            default -> fromFoam(given.get(ScaleBatch.FOAM, Volume.class));
        }
    }

    void writeWeighing() {
        WeighingPlan plan = batch(given).weighing(given.get(ScaleBatch.READABILITY, Mass.class), true);
        work.table(BatchTable.of(plan));
        plan.rows().stream().filter(row -> !row.inRange()).forEach(this::remark);
        work.note("The last column is the standard uncertainty from the balance's display alone, tare included.");
    }

    /** The batch that was asked for. */
    static Batch batch(Given given) {
        Formula formula = formula(given);
        return switch (given.choice(ScaleBatch.TARGET)) {
            case ScaleBatch.FROM_BASE -> Batch.ofBase(formula, given.get(ScaleBatch.BASE, Mass.class));
            case ScaleBatch.FROM_TOTAL -> Batch.ofTotal(formula, given.get(ScaleBatch.TOTAL, Mass.class));
            case ScaleBatch.FROM_LIQUID ->
                Batch.ofLiquid(formula, given.get(ScaleBatch.LIQUID, Volume.class), density(given));
            default ->
                Batch.ofFoam(
                        formula,
                        given.get(ScaleBatch.FOAM, Volume.class),
                        given.get(ScaleBatch.EXPANSION, Ratio.class),
                        given.get(ScaleBatch.DENSITY, Density.class));
        };
    }

    /** The density of the liquid. */
    static Density density(Given given) {
        return given.get(ScaleBatch.DENSITY, Density.class);
    }

    /** The usual formula at the php that were given. */
    static Formula formula(Given given) {
        List<Formula.Row> usual = Formula.usual().rows();
        return new Formula(List.of(
                usual.get(0),
                usual.get(1).at(given.get(ScaleBatch.FOAMING_PHP, Php.class)),
                usual.get(2).at(given.get(ScaleBatch.WATER_PHP, Php.class)),
                usual.get(3).at(given.get(ScaleBatch.GELLING_PHP, Php.class))));
    }

    private void fromBase(Mass base) {
        work.result(ScaleBatch.BASE_MASS, base);
        portions(base);
        Php sum = sum();
        Mass total = work.step(
                ScaleBatch.TOTAL_MASS,
                "Whole batch",
                "total = base × sum of php ÷ 100",
                "{} × {} ÷ 100",
                Batch.portionOf(base, sum),
                GRAM,
                Work.In.of(base, GRAM),
                Work.In.of(sum, PHP));
        work.result(ScaleBatch.TOTAL_MASS, total);
        liquid(total);
    }

    private void fromTotal(Mass total) {
        work.result(ScaleBatch.TOTAL_MASS, total);
        portions(base(total, sum()));
        liquid(total);
    }

    private void fromFoam(Volume foam) {
        Ratio expansion = given.get(ScaleBatch.EXPANSION, Ratio.class);
        Volume liquid = work.step(
                ScaleBatch.LIQUID_VOLUME,
                "Liquid before whipping",
                "V = foam ÷ expansion ratio",
                "{} ÷ {}",
                Expansion.liquidFor(foam, expansion),
                MILLILITRE,
                Work.In.of(foam, MILLILITRE),
                Work.In.of(expansion, ONE));
        fromLiquid(liquid);
    }

    private void fromLiquid(Volume liquid) {
        Mass total = work.step(
                ScaleBatch.TOTAL_MASS,
                "Whole batch",
                "total = V × density",
                "{} × {}",
                Batch.massOf(liquid, density),
                GRAM,
                Work.In.of(liquid, MILLILITRE),
                Work.In.of(density, GRAM_PER_MILLILITRE));
        work.result(ScaleBatch.LIQUID_VOLUME, liquid);
        work.result(ScaleBatch.TOTAL_MASS, total);
        portions(base(total, sum()));
    }

    private Php sum() {
        Work.In[] rows =
                formula.rows().stream().map(row -> Work.In.of(row.php(), PHP)).toArray(Work.In[]::new);
        return work.step(
                "phpSum",
                "Sum of php: the whole batch for 100 parts of base",
                "base + foaming agent + water + gelling agent",
                "{} + {} + {} + {}",
                formula.sum(),
                PHP,
                rows);
    }

    private Mass base(Mass total, Php sum) {
        Mass base = work.step(
                ScaleBatch.BASE_MASS,
                "Base",
                "base = total ÷ (sum of php ÷ 100)",
                "{} ÷ ({} ÷ 100)",
                Batch.baseIn(total, sum),
                GRAM,
                Work.In.of(total, GRAM),
                Work.In.of(sum, PHP));
        work.result(ScaleBatch.BASE_MASS, base);
        return base;
    }

    private void portions(Mass base) {
        portion(ScaleBatch.FOAMING_MASS, base, formula.rows().get(1));
        portion(ScaleBatch.WATER_MASS, base, formula.rows().get(2));
        portion(ScaleBatch.GELLING_MASS, base, formula.rows().get(3));
    }

    private void portion(String name, Mass base, Formula.Row row) {
        work.result(
                name,
                work.step(
                        name,
                        row.ingredient(),
                        "m = base × php ÷ 100",
                        "{} × {} ÷ 100",
                        Batch.portionOf(base, row.php()),
                        GRAM,
                        Work.In.of(base, GRAM),
                        Work.In.of(row.php(), PHP)));
    }

    private void liquid(Mass total) {
        work.result(
                ScaleBatch.LIQUID_VOLUME,
                work.step(
                        ScaleBatch.LIQUID_VOLUME,
                        "Liquid before whipping",
                        "V = total ÷ density",
                        "{} ÷ {}",
                        Batch.volumeOf(total, density),
                        MILLILITRE,
                        Work.In.of(total, GRAM),
                        Work.In.of(density, GRAM_PER_MILLILITRE)));
    }

    private void remark(WeighingPlan.Weighing row) {
        work.note(
                row.row().ingredient()
                        + " as weighed is {}, outside {} to {} (common practice, no source). Change the dose, or use a finer"
                        + " balance or a larger batch.",
                Work.In.of(row.real(), PHP),
                Work.In.of(row.row().low(), PHP),
                Work.In.of(row.row().high(), PHP));
    }
}
