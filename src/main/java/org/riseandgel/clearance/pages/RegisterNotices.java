package org.riseandgel.clearance.pages;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.riseandgel.account.feed.NoticeSource;
import org.riseandgel.clearance.Reminders;
import org.riseandgel.clearance.ledger.Ledger;

/**
 * What the register has to tell somebody on the first page. Working it out reads all of their record, and the first page is
 * looked at far more often than the register is written to; so it is remembered until the register has a newer line or
 * the hour is over, and the page asks one short question instead. Lines are known by their hash: an emptied register
 * numbers its lines anew.
 */
@ApplicationScoped
class RegisterNotices implements NoticeSource {
    private final Ledger ledger;
    private final Reminders reminders;
    private final RecordNotices waiting;
    private final Clock clock;
    private final Map<UUID, Remembered> remembered = new ConcurrentHashMap<>();

    RegisterNotices(Ledger ledger, Reminders reminders, RecordNotices waiting, Clock clock) {
        this.ledger = ledger;
        this.reminders = reminders;
        this.waiting = waiting;
        this.clock = clock;
    }

    private record Remembered(String newestLine, Instant hour, List<Notice> notices) {}

    @Override
    public List<Notice> noticesFor(UUID person) {
        String newest = ledger.head().hash();
        Instant hour = clock.instant().truncatedTo(ChronoUnit.HOURS);
        Remembered known = remembered.get(person);
        if (known == null || !known.newestLine().equals(newest) || !known.hour().equals(hour)) {
            known = new Remembered(newest, hour, workedOut(person));
            remembered.put(person, known);
        }
        return known.notices();
    }

    private List<Notice> workedOut(UUID person) {
        return Stream.concat(reminders.noticesFor(person).stream(), waiting.noticesFor(person).stream())
                .toList();
    }
}
