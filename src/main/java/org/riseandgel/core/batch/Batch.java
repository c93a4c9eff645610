package org.riseandgel.core.batch;

import java.util.List;
import org.riseandgel.core.mold.FoamNeeded;
import org.riseandgel.core.quantity.Checks;
import org.riseandgel.core.quantity.Density;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.Php;
import org.riseandgel.core.quantity.Ratio;
import org.riseandgel.core.quantity.Volume;

/** A formula scaled to a mass of base of more than zero: mass of an ingredient = base × php ÷ 100. */
public record Batch(Formula formula, Mass base) {
    public Batch {
        Checks.positive("base in grams", base.inGrams());
    }

    /** One ingredient with its exact mass. */
    public record Portion(Formula.Row row, Mass mass) {}

    /** From the base that is to be used. */
    public static Batch ofBase(Formula formula, Mass base) {
        return new Batch(formula, base);
    }

    /** From what all ingredients weigh together: base = total ÷ (Σphp ÷ 100). */
    public static Batch ofTotal(Formula formula, Mass total) {
        return new Batch(formula, Mass.ofGrams(total.inGrams() / (formula.sum().inPartsPerHundred() / 100)));
    }

    /** From the liquid before whipping: total = volume × density of the liquid. */
    public static Batch ofLiquid(Formula formula, Volume liquid, Density density) {
        return ofTotal(formula, massOf(liquid, density));
    }

    /** From the foam that is wanted: liquid = foam ÷ expansion ratio, the ratio being 1 or more. */
    public static Batch ofFoam(Formula formula, Volume foam, Ratio expansion, Density liquidDensity) {
        return ofLiquid(formula, Expansion.liquidFor(foam, expansion), liquidDensity);
    }

    /** From what one or more molds take, with overfill and bowl loss: foam = what {@link FoamNeeded} says. */
    public static Batch ofPieces(Formula formula, FoamNeeded foam, Ratio expansion, Density liquidDensity) {
        return ofFoam(formula, foam.total(), expansion, liquidDensity);
    }

    /** The most that a stock allows; {@link Stock#most} also names what runs out. */
    public static Batch ofStock(Formula formula, Stock stock) {
        return stock.most(formula).batch();
    }

    /** Each ingredient in the formula's order. */
    public List<Portion> portions() {
        return formula.rows().stream().map(row -> new Portion(row, massOf(row))).toList();
    }

    /** The mass of one ingredient: base × php ÷ 100. */
    public Mass massOf(Formula.Row row) {
        return portionOf(base, row.php());
    }

    /** What all ingredients weigh together: base × Σphp ÷ 100. */
    public Mass total() {
        return portionOf(base, formula.sum());
    }

    /** The liquid before whipping: total ÷ density of the liquid. */
    public Volume liquid(Density density) {
        return volumeOf(total(), density);
    }

    /** The foam after whipping: liquid × expansion ratio. */
    public Volume foam(Density density, Ratio expansion) {
        return Expansion.foamFrom(liquid(density), expansion);
    }

    /** What a balance can weigh of it. */
    public WeighingPlan weighing(Mass readability, boolean tared) {
        return WeighingPlan.of(this, readability, tared);
    }

    /** The base in a whole batch: total ÷ (Σphp ÷ 100), Σphp being 100 or more. */
    public static Mass baseIn(Mass total, Php sum) {
        double shares = Checks.inRange("sum of php", sum.inPartsPerHundred(), 100, Checks.LARGEST) / 100;
        return Mass.ofGrams(total.inGrams() / shares);
    }

    /** The base that a mass of one ingredient does for: mass ÷ (php ÷ 100), php being above 0. */
    public static Mass baseFor(Mass ingredient, Php php) {
        return Mass.ofGrams(ingredient.inGrams() / (Checks.positive("php", php.inPartsPerHundred()) / 100));
    }

    /** What php of a base weigh: base × php ÷ 100. With Σphp it is the whole batch. */
    public static Mass portionOf(Mass base, Php php) {
        return Mass.ofGrams(base.inGrams() * php.asShareOfBase());
    }

    /** What a liquid weighs: volume × density. */
    public static Mass massOf(Volume liquid, Density density) {
        return Mass.ofGrams(liquid.inMillilitres() * density.inGramsPerMillilitre());
    }

    /** The room that a liquid takes: mass ÷ density. */
    public static Volume volumeOf(Mass liquid, Density density) {
        return Volume.ofMillilitres(liquid.inGrams() / density.inGramsPerMillilitre());
    }
}
