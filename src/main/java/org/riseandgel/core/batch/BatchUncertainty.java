package org.riseandgel.core.batch;

import java.util.List;
import org.riseandgel.core.quantity.Density;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.Ratio;
import org.riseandgel.core.quantity.Volume;
import org.riseandgel.core.statistics.CombinedUncertainty;
import org.riseandgel.core.statistics.CombinedUncertainty.Part;

/**
 * How sure the foam of a batch is: from the balance, the density of the liquid and the expansion ratio, all independent.
 *
 * <p>Total mass: u = √Σuᵢ² over the weighings. Foam V = m·R ÷ ρ: (u ÷ V)² = (uₘ ÷ m)² + (u_R ÷ R)² + (u_ρ ÷ ρ)². All are standard
 * uncertainties; twice that holds about 95 %. Source: JCGM 100:2008, 5.1.2 and 5.1.6.
 *
 * @param total the mass of all ingredients as weighed
 * @param totalUncertainty its standard uncertainty
 * @param foam the foam it gives
 * @param foamUncertainty its standard uncertainty
 */
public record BatchUncertainty(Mass total, Mass totalUncertainty, Volume foam, Volume foamUncertainty) {

    /**
     * For a plan as weighed.
     *
     * @param density of the liquid, and its standard uncertainty in g/mL of zero or more
     * @param expansion the ratio, 1 or more, and its standard uncertainty of zero or more
     */
    public static BatchUncertainty of(
            WeighingPlan plan,
            Density density,
            double densityUncertainty,
            Ratio expansion,
            double expansionUncertainty) {
        Mass total = Mass.ofGrams(
                plan.rows().stream().mapToDouble(row -> row.toWeigh().inGrams()).sum());
        Mass totalUncertainty = totalUncertainty(plan);
        Volume foam = Expansion.foamFrom(Batch.volumeOf(total, density), expansion);
        double relative = CombinedUncertainty.relativeOfProduct(List.of(
                new Part(total.inGrams(), totalUncertainty.inGrams()),
                new Part(density.inGramsPerMillilitre(), densityUncertainty),
                new Part(expansion.asNumber(), expansionUncertainty)));
        return new BatchUncertainty(
                total, totalUncertainty, foam, Volume.ofMillilitres(foam.inMillilitres() * relative));
    }

    /** The standard uncertainty of all weighings together; an ingredient of 0 php is not weighed. */
    private static Mass totalUncertainty(WeighingPlan plan) {
        return Mass.ofGrams(StrictMath.sqrt(plan.rows().stream()
                .filter(row -> row.exact().inGrams() > 0)
                .mapToDouble(row ->
                        row.massUncertainty().inGrams() * row.massUncertainty().inGrams())
                .sum()));
    }
}
