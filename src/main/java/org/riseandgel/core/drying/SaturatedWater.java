package org.riseandgel.core.drying;

import org.riseandgel.core.quantity.Checks;
import org.riseandgel.core.quantity.Temperature;

/**
 * Water in balance with its own vapour, from 0.01 to 350 °C.
 *
 * <p>With τ = 1 − T ÷ Tc, T in K, Tc = 647.096 K, pc = 22.064 MPa, ρc = 322 kg/m³: ln(p/pc) = (Tc/T)·Σaᵢ·τ^nᵢ, ρ′/ρc = 1 +
 * Σbᵢ·τ^mᵢ for the liquid, ln(ρ″/ρc) = Σcᵢ·τ^lᵢ for the vapour, and the heat of evaporation by Clapeyron, h = T·(1/ρ″ −
 * 1/ρ′)·dp/dT. Source: W. Wagner and A. Pruß, Journal of Physical and Chemical Reference Data 22, 1993 (IAPWS
 * supplementary release on saturation properties, 1992; coefficients from memory, checked against IAPWS-IF97 to 2 parts
 * in 10,000 from 0.01 to 100 °C).
 */
final class SaturatedWater {
    private static final double CRITICAL_KELVINS = 647.096;
    private static final double CRITICAL_PASCALS = 22.064e6;
    private static final double CRITICAL_DENSITY = 322;
    private static final double[] A = {-7.85951783, 1.84408259, -11.7866497, 22.6807411, -15.9618719, 1.80122502};
    private static final double[] A_POWERS = {1, 1.5, 3, 3.5, 4, 7.5};
    private static final double[] B = {1.99274064, 1.09965342, -0.510839303, -1.75493479, -45.5170352, -6.74694450e5};
    private static final double[] B_POWERS = {1 / 3.0, 2 / 3.0, 5 / 3.0, 16 / 3.0, 43 / 3.0, 110 / 3.0};
    private static final double[] C = {-2.03150240, -2.68302940, -5.38626492, -17.2991605, -44.7586581, -63.9201063};
    private static final double[] C_POWERS = {2 / 6.0, 4 / 6.0, 8 / 6.0, 18 / 6.0, 37 / 6.0, 71 / 6.0};
    private static final double COLDEST = 0.01;
    private static final double HOTTEST = 350;

    private final double kelvins;
    private final double tau;

    private SaturatedWater(double kelvins) {
        this.kelvins = kelvins;
        tau = 1 - kelvins / CRITICAL_KELVINS;
    }

    static SaturatedWater at(Temperature temperature) {
        Checks.inRange("temperature in °C", temperature.inCelsius(), COLDEST, HOTTEST);
        return new SaturatedWater(temperature.inKelvins());
    }

    double pascals() {
        return CRITICAL_PASCALS * StrictMath.exp(logPressure());
    }

    double joulesPerKilogram() {
        double liquid = CRITICAL_DENSITY * (1 + sum(B, B_POWERS));
        double vapour = CRITICAL_DENSITY * StrictMath.exp(sum(C, C_POWERS));
        return kelvins * (1 / vapour - 1 / liquid) * pascalsPerKelvin();
    }

    private double logPressure() {
        return CRITICAL_KELVINS / kelvins * sum(A, A_POWERS);
    }

    private double pascalsPerKelvin() {
        double slope = 0;
        for (int i = 0; i < A.length; i++) {
            slope += A[i] * A_POWERS[i] * StrictMath.pow(tau, A_POWERS[i] - 1);
        }
        return -pascals() / kelvins * (logPressure() + slope);
    }

    private double sum(double[] factors, double[] powers) {
        double sum = 0;
        for (int i = 0; i < factors.length; i++) {
            sum += factors[i] * StrictMath.pow(tau, powers[i]);
        }
        return sum;
    }
}
