package org.riseandgel.core.gel;

import org.riseandgel.core.quantity.Checks;
import org.riseandgel.core.quantity.Php;
import org.riseandgel.core.quantity.Temperature;
import org.riseandgel.core.quantity.TimeSpan;

/**
 * What is believed of gelling before a school has records of its own.
 *
 * <p>As the model is conjugate, the deviations of a and Ea stand in a fixed ratio to the scatter and shrink with it when a
 * school works more evenly than believed; they are taken wide for that reason. A school far from t₀ is followed all the
 * same, but its forecasts stay somewhat wide until it has some hundred records: too wide is the safe side.
 *
 * @param dose d₀, the reference dose
 * @param temperature T₀, the reference temperature
 * @param middle t₀, the middle gel time at the reference, between low and high
 * @param low with high: a share of gels at the reference falls between them
 * @param high more than low
 * @param share of gels between low and high, more than 0 and less than 1
 * @param exponent a: gel time goes with dose to the power −a
 * @param exponentDeviation how far off a may be, one standard deviation, more than zero
 * @param activation Ea, kJ/mol, zero or more
 * @param activationDeviation how far off Ea may be, one standard deviation in kJ/mol, more than zero
 * @param records how many records the belief in t₀ is worth, more than zero
 * @param scatterRecords how many records the belief in the scatter is worth, more than zero
 */
public record GelPrior(
        Php dose,
        Temperature temperature,
        TimeSpan middle,
        TimeSpan low,
        TimeSpan high,
        double share,
        double exponent,
        double exponentDeviation,
        double activation,
        double activationDeviation,
        double records,
        double scatterRecords) {
    public GelPrior {
        GelRecord.checked(dose);
        GelRecord.checked(temperature);
        Checks.positive("lowest usual gel time in seconds", low.inSeconds());
        Checks.inRange("middle gel time in seconds", middle.inSeconds(), low.inSeconds(), high.inSeconds());
        Checks.inRange("share between low and high", share, 0.01, 0.99);
        Checks.inRange("dose exponent", exponent, -10, 10);
        Checks.inRange("deviation of the dose exponent", exponentDeviation, 1e-6, 10);
        Checks.inRange("activation energy in kJ/mol", activation, 0, 500);
        Checks.inRange("deviation of the activation energy in kJ/mol", activationDeviation, 1e-6, 500);
        Checks.inRange("records the belief is worth", records, 1e-3, 1e6);
        Checks.inRange("records the scatter is worth", scatterRecords, 1, 1e6);
    }

    /**
     * The teaching defaults: 12.5 minutes at 11 php as weighed and 21 °C, 90 % of gels there within 10 to 15 minutes, a = 1 ± 0.5, Ea
     * = 50 ± 20 kJ/mol (twice as fast for about 10 °C more), worth 4 records, the scatter worth 6. Common practice, no
     * source.
     */
    public static GelPrior usual() {
        return new GelPrior(
                Php.ofPartsPerHundred(11),
                Temperature.ofCelsius(21),
                TimeSpan.ofMinutes(12.5),
                TimeSpan.ofMinutes(10),
                TimeSpan.ofMinutes(15),
                0.9,
                1,
                0.5,
                50,
                20,
                4,
                6);
    }
}
