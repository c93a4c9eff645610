package org.riseandgel;

import io.quarkus.test.Mock;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Produces;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.concurrent.atomic.AtomicReference;

/**
 * The time of day of every test that starts the program. It runs like the real one until a test moves it:
 *
 * <pre>{@code
 * MutableClock.advance(Duration.ofMinutes(31));
 * ...
 * MutableClock.reset(); // in @AfterEach, for the next test
 * }</pre>
 */
public final class MutableClock extends Clock {
    private static final AtomicReference<Duration> AHEAD = new AtomicReference<>(Duration.ZERO);
    private static final Clock REAL = Clock.systemUTC();

    /** Puts this clock in place of the real one. */
    @Mock
    @ApplicationScoped
    public static class Source {
        @Produces
        @Mock
        @ApplicationScoped
        public Clock clock() {
            return new MutableClock();
        }
    }

    /** Moves the clock on; a negative duration moves it back. */
    public static void advance(Duration by) {
        AHEAD.updateAndGet(ahead -> ahead.plus(by));
    }

    /** Sets the clock to a moment, from where it goes on running. */
    public static void moveTo(Instant moment) {
        AHEAD.set(Duration.between(REAL.instant(), moment));
    }

    /** Back to the real time. */
    public static void reset() {
        AHEAD.set(Duration.ZERO);
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
        return Clock.offset(REAL.withZone(zone), AHEAD.get());
    }

    @Override
    public Instant instant() {
        return REAL.instant().plus(AHEAD.get());
    }
}
