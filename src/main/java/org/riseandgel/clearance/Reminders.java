package org.riseandgel.clearance;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.riseandgel.account.feed.CalendarSource;
import org.riseandgel.clearance.rule.Standing;
import org.riseandgel.clearance.rule.Status;
import org.riseandgel.platform.calendar.CalendarEvent;

/** Ends of clearances, told 60, 30 and 7 days before, in the app and in calendars. */
@ApplicationScoped
public class Reminders implements CalendarSource {
    /** How many days before the last day. */
    public static final List<Integer> DAYS_BEFORE = List.of(60, 30, 7);

    private final Register register;

    Reminders(Register register) {
        this.register = register;
    }

    /** A clearance that ends. */
    public record Ending(UUID person, String name, String scope, LocalDate validThrough, long daysLeft) {}

    /** The clearances that end within 60 days, soonest first, of somebody. */
    public List<Ending> of(UUID person, LocalDate today) {
        return endings(register.standings(person), today);
    }

    /** The clearances that end within 60 days, soonest first, of everybody. */
    public List<Ending> all(LocalDate today) {
        return endings(register.board(null, null).rows(), today);
    }

    @Override
    public List<CalendarEvent> eventsFor(UUID person) {
        List<CalendarEvent> events = new ArrayList<>();
        for (Register.BoardRow row : register.standings(person)) {
            if (holds(row.standing())) {
                String uid = "clearance-" + row.standing().grant();
                String title = "Clearance ends: " + row.scope().title();
                String text = "Renewal needs fresh sittings and a fresh practical.";
                for (int days : DAYS_BEFORE) {
                    events.add(CalendarEvent.on(
                            row.validThrough().minusDays(days),
                            uid + "-" + days,
                            "In %d days: %s".formatted(days, title),
                            text));
                }
                events.add(
                        CalendarEvent.on(row.validThrough(), uid, title, text).remindedBefore(Duration.ofDays(1)));
            }
        }
        return events;
    }

    private static List<Ending> endings(List<Register.BoardRow> rows, LocalDate today) {
        return rows.stream()
                .filter(row -> holds(row.standing()))
                .map(row -> new Ending(
                        row.person(),
                        row.name(),
                        row.scope().title(),
                        row.validThrough(),
                        ChronoUnit.DAYS.between(today, row.validThrough())))
                .filter(ending -> ending.daysLeft() <= DAYS_BEFORE.get(0))
                .sorted(java.util.Comparator.comparing(Ending::validThrough).thenComparing(Ending::name))
                .toList();
    }

    private static boolean holds(Standing standing) {
        return standing.status() != Status.NOT_CLEARED && standing.validThrough() != null;
    }
}
