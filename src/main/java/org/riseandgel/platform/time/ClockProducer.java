package org.riseandgel.platform.time;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Produces;
import java.time.Clock;

/** The one place where the time of day comes from; tests put another clock here. */
@ApplicationScoped
public class ClockProducer {
    @Produces
    @ApplicationScoped
    Clock clock() {
        return Clock.systemUTC();
    }
}
