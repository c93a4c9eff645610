package org.riseandgel.platform.school;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.PersistenceException;
import java.time.Clock;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.jboss.logging.Logger;
import org.riseandgel.core.quantity.DecimalMark;

/** The school's own row. Read once and kept for a few seconds, so that pages do not ask for it each time. */
@ApplicationScoped
public class SchoolSettings {
    private static final Logger LOG = Logger.getLogger(SchoolSettings.class);
    private static final long KEEP_MILLIS = 5_000;

    private final SchoolRepository table;
    private final Clock clock;
    private final AtomicReference<Kept> kept = new AtomicReference<>();

    SchoolSettings(SchoolRepository table, Clock clock) {
        this.table = table;
        this.clock = clock;
    }

    /** The school, if it has been set up. */
    public Optional<School> school() {
        Kept last = kept.get();
        long age = last == null ? Long.MAX_VALUE : System.nanoTime() / 1_000_000 - last.readAtMillis;
        if (age < KEEP_MILLIS && last.school.isPresent()) {
            return last.school;
        }
        Optional<School> fresh = read();
        kept.set(new Kept(fresh, System.nanoTime() / 1_000_000));
        return fresh;
    }

    /** The school as it was last read, without asking the database. */
    public Optional<School> lastKnown() {
        Kept last = kept.get();
        return last == null ? Optional.empty() : last.school;
    }

    /** The school, or what was last read of it while the database cannot be asked: an error page must still appear. */
    public Optional<School> schoolOrLastKnown() {
        try {
            return school();
        } catch (IllegalStateException e) {
            LOG.warn("The school's settings are shown as they were last read", e);
            return lastKnown();
        }
    }

    /** The school's decimal mark; a point before the school is set up. */
    public DecimalMark decimalMark() {
        return school().map(School::decimalMark).orElse(DecimalMark.POINT);
    }

    /** The school's time zone; UTC before the school is set up. */
    public ZoneId zone() {
        return school().map(School::zone).orElse(ZoneOffset.UTC);
    }

    /** Whether there is a school, asked of the database itself. */
    public boolean isFounded() {
        return table.exists();
    }

    /** Writes the school's row; the primary key refuses a second school. Runs in the caller's transaction. */
    public void found(School school) {
        try {
            table.persistAndFlush(new SchoolEntity(school, clock.instant()));
        } catch (PersistenceException e) {
            throw new IllegalStateException("The school could not be set up: " + e.getMessage(), e);
        }
        forget();
    }

    /** Holds the school's row until the caller's transaction ends, so that acts that must not cross wait here. */
    public void hold() {
        table.hold();
    }

    /** Forgets what was read, so that the next question asks the database. */
    public void forget() {
        kept.set(null);
    }

    private Optional<School> read() {
        try {
            return table.school();
        } catch (PersistenceException e) {
            throw new IllegalStateException("The school's settings could not be read: " + e.getMessage(), e);
        }
    }

    private record Kept(Optional<School> school, long readAtMillis) {}
}
