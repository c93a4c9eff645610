package org.riseandgel.core.air;

import org.riseandgel.core.quantity.Mass;

/**
 * The salts that gel this foam, M₂SiF₆, by stoichiometry. Teaching estimates: they measure nothing and clear nobody.
 *
 * <p>Conventional atomic weights of IUPAC/CIAAW in g/mol: H 1.008, O 15.999, F 18.998403162, Na 22.98976928, Si 28.085, K
 * 39.0983. In water the ion comes apart fully, SiF₆²⁻ + 2 H₂O → SiO₂ + 4 H⁺ + 6 F⁻: four moles of acid, six of fluoride and
 * one of silica for each mole of salt. A product that is not pure holds less.
 */
public enum Fluorosilicate {
    SODIUM(22.98976928),
    POTASSIUM(39.0983);

    /** Fluorine, in g/mol. */
    public static final double FLUORINE = 18.998403162;
    /** Silicon, in g/mol. */
    public static final double SILICON = 28.085;
    /** Silica, SiO₂ with oxygen of 15.999 g/mol, in g/mol. */
    public static final double SILICA = SILICON + 2 * 15.999;
    /** Fluorines in one unit of the salt. */
    public static final int FLUORINES = 6;
    /** Acid, H⁺, that one unit of the salt sets free. */
    public static final int ACIDS = 4;

    private static final int METALS = 2;
    private static final double MILLIMOLES_PER_MOLE = 1000;

    private final double metal;

    Fluorosilicate(double metal) {
        this.metal = metal;
    }

    /** The metal M, in g/mol. */
    public double metalGramsPerMole() {
        return metal;
    }

    /** M = 2·metal + Si + 6·F, in g/mol. */
    public double gramsPerMole() {
        return METALS * metal + SILICON + FLUORINES * FLUORINE;
    }

    /** The share of the salt's mass that is fluorine: 6·F ÷ M. */
    public double fluorideFraction() {
        return FLUORINES * FLUORINE / gramsPerMole();
    }

    /** The fluoride in some salt: mass × fraction. */
    public FluorideMass fluorideIn(SaltMass salt) {
        return new FluorideMass(salt.inMilligrams() * fluorideFraction());
    }

    /** The salt that holds some fluoride, the inverse: mass ÷ fraction. */
    public SaltMass saltFor(FluorideMass fluoride) {
        return new SaltMass(fluoride.inMilligrams() / fluorideFraction());
    }

    /** Dust of the salt in air, as fluoride: × fraction. */
    public FluorideInAir asFluoride(SaltInAir salt) {
        return new FluorideInAir(salt.inMilligramsPerCubicMetre() * fluorideFraction());
    }

    /** Fluoride in air, as dust of the salt, the inverse: ÷ fraction. */
    public SaltInAir asSalt(FluorideInAir fluoride) {
        return new SaltInAir(fluoride.inMilligramsPerCubicMetre() / fluorideFraction());
    }

    /** The acid set free when all of the salt has come apart, in mmol of H⁺: 4·mass ÷ M. */
    public double acidMillimoles(SaltMass salt) {
        return ACIDS * MILLIMOLES_PER_MOLE * salt.inGrams() / gramsPerMole();
    }

    /** The silica that is left when all of the salt has come apart: mass × SiO₂ ÷ M. */
    public Mass silica(SaltMass salt) {
        return Mass.ofGrams(salt.inGrams() * SILICA / gramsPerMole());
    }
}
