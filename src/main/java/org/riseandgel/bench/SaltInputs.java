package org.riseandgel.bench;

import static org.riseandgel.core.quantity.Unit.GRAM;
import static org.riseandgel.core.quantity.Unit.MILLIGRAM_PER_CUBIC_METRE;
import static org.riseandgel.core.quantity.Unit.ONE;
import static org.riseandgel.core.quantity.Unit.PERCENT;

import java.util.List;
import org.riseandgel.core.air.FluorideInAir;
import org.riseandgel.core.air.Fluorosilicate;
import org.riseandgel.core.air.SaltMass;
import org.riseandgel.core.air.Shift;
import org.riseandgel.core.quantity.Concentration;
import org.riseandgel.core.quantity.Density;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.Quantity;
import org.riseandgel.core.quantity.Ratio;

/** What every calculation around the salt asks, warns of and starts with. */
final class SaltInputs {
    static final String SALT = "salt";
    static final String SODIUM = "sodium";
    static final String POTASSIUM = "potassium";
    static final String MASS = "saltMass";
    static final String PURITY = "purity";
    static final String SHARE_OF_LIMIT = "shareOfLimit";
    static final String ESTIMATE_ONLY =
            "Numbers for the air are teaching estimates. They measure nothing and clear nobody:"
                    + " the supplier's safety data sheet, local codes and licensed practice decide.";

    private SaltInputs() {}

    static Input salt() {
        return new Input.Choice(
                SALT,
                "Gelling salt",
                "As the safety data sheet names it.",
                List.of(
                        new Input.Option(SODIUM, "sodium fluorosilicate"),
                        new Input.Option(POTASSIUM, "potassium fluorosilicate")));
    }

    static Input mass() {
        return new Input.Measured(
                MASS,
                "Salt as weighed",
                "The dry salt, without the water of a dispersion. 16.5 g of a 40 % dispersion hold 6.6 g.",
                GRAM,
                0.001,
                100_000,
                6.6);
    }

    static Input purity() {
        return new Input.Measured(
                PURITY,
                "Purity of the product",
                "The share that is salt, from its data sheet. 100 % if that says nothing.",
                PERCENT,
                1,
                100,
                100.0);
    }

    static Fluorosilicate salt(Given given) {
        return given.choice(SALT).equals(SODIUM) ? Fluorosilicate.SODIUM : Fluorosilicate.POTASSIUM;
    }

    /** The salt as weighed times its purity. */
    static Mass pure(Given given, Work work) {
        Mass mass = given.get(MASS, Mass.class);
        Concentration purity = given.get(PURITY, Concentration.class);
        return work.step(
                "pureSalt",
                "Pure salt in it",
                "m = salt as weighed × purity",
                "{} × {}",
                Mass.ofGrams(mass.inGrams() * purity.asFraction()),
                GRAM,
                Work.In.of(mass, GRAM),
                Work.In.of(purity, PERCENT));
    }

    static SaltMass ofPure(Mass pure) {
        return SaltMass.ofGrams(pure.inGrams());
    }

    static Ratio molarMass(Fluorosilicate salt, Work work) {
        return work.step(
                "molarMass",
                "Molar mass of the salt, in g/mol",
                "M = 2 × metal + silicon + 6 × fluorine",
                "2 × {} + {} + 6 × {}",
                Ratio.of(salt.gramsPerMole()),
                ONE,
                number(salt.metalGramsPerMole()),
                number(Fluorosilicate.SILICON),
                number(Fluorosilicate.FLUORINE));
    }

    static Concentration fluorideShare(Ratio molarMass, Work work) {
        double fluorine = Fluorosilicate.FLUORINES * Fluorosilicate.FLUORINE;
        return work.step(
                "fluorideShare",
                "Share of the salt that is fluoride",
                "w = 6 × fluorine ÷ M",
                "6 × {} ÷ {}",
                Concentration.ofPercent(100 * fluorine / molarMass.asNumber()),
                PERCENT,
                number(Fluorosilicate.FLUORINE),
                Work.In.of(molarMass, ONE));
    }

    /** Dust of the salt in air as fluoride. */
    static Density asFluoride(String id, Density salt, Concentration share, Work work) {
        return work.step(
                id,
                "The same as fluoride",
                "as F = as salt × w",
                "{} × {}",
                Density.ofGramsPerMillilitre(salt.inGramsPerMillilitre() * share.asFraction()),
                MILLIGRAM_PER_CUBIC_METRE,
                in(salt),
                Work.In.of(share, PERCENT));
    }

    static Ratio shareOfLimit(Density fluoride, Work work) {
        return work.step(
                SHARE_OF_LIMIT,
                "As a share of the limit",
                "as F ÷ limit as F",
                "{} ÷ {}",
                Ratio.of(milligrams(fluoride) / Shift.LIMIT.inMilligramsPerCubicMetre()),
                ONE,
                in(fluoride),
                in(limit()));
    }

    static void limitNote(Work work) {
        work.note(
                "The limit is {} as F, on average over 8 hours (29 CFR 1910.1000, table Z-1). Other countries have their"
                        + " own.",
                in(limit()));
    }

    static Density limit() {
        return density(Shift.LIMIT);
    }

    static Density density(FluorideInAir air) {
        return inAir(air.inMilligramsPerCubicMetre());
    }

    /** So many milligrams in a cubic metre. */
    static Density inAir(double milligrams) {
        return (Density) Quantity.of(milligrams, MILLIGRAM_PER_CUBIC_METRE);
    }

    static double milligrams(Density air) {
        return air.in(MILLIGRAM_PER_CUBIC_METRE);
    }

    static Work.In in(Density air) {
        return Work.In.of(air, MILLIGRAM_PER_CUBIC_METRE);
    }

    static Work.In number(double value) {
        return Work.In.of(Ratio.of(value), ONE);
    }
}
