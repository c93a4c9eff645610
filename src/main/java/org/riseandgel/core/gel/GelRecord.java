package org.riseandgel.core.gel;

import org.riseandgel.core.quantity.Checks;
import org.riseandgel.core.quantity.Php;
import org.riseandgel.core.quantity.Temperature;
import org.riseandgel.core.quantity.TimeSpan;

/**
 * One batch that gelled: the dose of gelling agent (1 to 100 php), the temperature of the foam (0 to 50 °C), and the time
 * from adding the agent to the gel (10 seconds to 24 hours).
 */
public record GelRecord(Php dose, Temperature temperature, TimeSpan gelTime) {
    private static final double LEAST_PHP = 1;
    private static final double MOST_PHP = 100;
    private static final double COLDEST = 0;
    private static final double WARMEST = 50;
    private static final double SHORTEST_SECONDS = 10;
    private static final double LONGEST_SECONDS = 86_400;

    public GelRecord {
        checked(dose);
        checked(temperature);
        Checks.inRange("gel time in seconds", gelTime.inSeconds(), SHORTEST_SECONDS, LONGEST_SECONDS);
    }

    static Php checked(Php dose) {
        Checks.inRange("dose in php", dose.inPartsPerHundred(), LEAST_PHP, MOST_PHP);
        return dose;
    }

    static Temperature checked(Temperature temperature) {
        Checks.inRange("foam temperature in °C", temperature.inCelsius(), COLDEST, WARMEST);
        return temperature;
    }
}
