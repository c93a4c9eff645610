package org.riseandgel.core.drying;

import org.riseandgel.core.quantity.Checks;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Temperature;

/**
 * What it takes to evaporate water. Formulas of Wagner and Pruß, IAPWS 1992; see the class that holds them for the source
 * and how far they were checked.
 */
public final class Evaporation {
    private static final double HOTTEST = 100;
    private static final double COLDEST = 0.01;
    private static final double LEAST_PASCALS = 1000;
    private static final double MOST_PASCALS = 1e6;
    private static final int HALVINGS = 60;

    /** An amount of heat, zero or more. */
    public record Heat(double inKilojoules) {
        private static final double KILOJOULES_PER_WATT_HOUR = 3.6;

        public Heat {
            Checks.notNegative("heat in kilojoules", inKilojoules);
        }

        /** The same in watt-hours: 1 Wh = 3.6 kJ. */
        public double inWattHours() {
            return inKilojoules / KILOJOULES_PER_WATT_HOUR;
        }
    }

    private Evaporation() {}

    /**
     * The heat of evaporation of water, in kJ/kg.
     *
     * @param temperature from 0.01 to 100 °C
     * @throws OutOfRangeException outside
     */
    public static double kilojoulesPerKilogram(Temperature temperature) {
        Checks.inRange("temperature in °C", temperature.inCelsius(), COLDEST, HOTTEST);
        return SaturatedWater.at(temperature).joulesPerKilogram() / 1000;
    }

    /** The heat to evaporate a mass of water at a temperature from 0.01 to 100 °C: mass × heat of evaporation. */
    public static Heat heat(Mass water, Temperature temperature) {
        return new Heat(water.inKilograms() * kilojoulesPerKilogram(temperature));
    }

    /**
     * The temperature at which water boils under a pressure.
     *
     * @param pascals absolute pressure from 1,000 to 1,000,000 Pa; 101,325 at sea level
     * @throws OutOfRangeException outside
     */
    public static Temperature boilingPoint(double pascals) {
        Checks.inRange("air pressure in pascals", pascals, LEAST_PASCALS, MOST_PASCALS);
        double low = 0.01;
        double high = 200;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = low + (high - low) / 2;
            if (SaturatedWater.at(Temperature.ofCelsius(middle)).pascals() > pascals) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return Temperature.ofCelsius(low);
    }
}
