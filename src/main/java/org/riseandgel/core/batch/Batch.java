package org.riseandgel.core.batch;

import java.util.List;
import org.riseandgel.core.quantity.Checks;
import org.riseandgel.core.quantity.Density;
import org.riseandgel.core.quantity.Mass;
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
        return ofTotal(formula, Mass.ofGrams(liquid.inMillilitres() * density.inGramsPerMillilitre()));
    }

    /** From the foam that is wanted: liquid = foam ÷ expansion ratio, the ratio being 1 or more. */
    public static Batch ofFoam(Formula formula, Volume foam, Ratio expansion, Density liquidDensity) {
        return ofLiquid(formula, Expansion.liquidFor(foam, expansion), liquidDensity);
    }

    /** Each ingredient in the formula's order. */
    public List<Portion> portions() {
        return formula.rows().stream().map(row -> new Portion(row, massOf(row))).toList();
    }

    /** The mass of one ingredient: base × php ÷ 100. */
    public Mass massOf(Formula.Row row) {
        return Mass.ofGrams(base.inGrams() * row.php().asShareOfBase());
    }

    /** What all ingredients weigh together: base × Σphp ÷ 100. */
    public Mass total() {
        return Mass.ofGrams(base.inGrams() * formula.sum().asShareOfBase());
    }

    /** The liquid before whipping: total ÷ density of the liquid. */
    public Volume liquid(Density density) {
        return Volume.ofMillilitres(total().inGrams() / density.inGramsPerMillilitre());
    }

    /** The foam after whipping: liquid × expansion ratio. */
    public Volume foam(Density density, Ratio expansion) {
        return Expansion.foamFrom(liquid(density), expansion);
    }

    /** What a balance can weigh of it. */
    public WeighingPlan weighing(Mass readability, boolean tared) {
        return WeighingPlan.of(this, readability, tared);
    }
}
