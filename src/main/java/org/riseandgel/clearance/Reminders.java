package org.riseandgel.clearance;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.riseandgel.account.People;
import org.riseandgel.account.Roles;
import org.riseandgel.account.feed.CalendarSource;
import org.riseandgel.account.feed.NoticeSource.Notice;
import org.riseandgel.clearance.rule.Reason;
import org.riseandgel.clearance.rule.Standing;
import org.riseandgel.clearance.rule.Status;
import org.riseandgel.platform.calendar.CalendarEvent;
import org.riseandgel.platform.school.SchoolSettings;
import org.riseandgel.platform.time.SchoolTime;

/**
 * Ends of clearances, told 60, 30 and 7 days before: on the first page, on the register's page and in calendars. A safety
 * lead's calendar has the ends of everybody, as numbers without names: calendars are often kept elsewhere.
 */
@ApplicationScoped
public class Reminders implements CalendarSource {
    /** How many days before the last day. */
    public static final List<Integer> DAYS_BEFORE = List.of(60, 30, 7);

    private final Register register;
    private final People people;
    private final SchoolTime time;
    private final SchoolSettings school;
    private final Clock clock;

    Reminders(Register register, People people, SchoolTime time, SchoolSettings school, Clock clock) {
        this.register = register;
        this.people = people;
        this.time = time;
        this.school = school;
        this.clock = clock;
    }

    /** A clearance that ends. */
    public record Ending(UUID person, String name, String scope, LocalDate validThrough, long daysLeft) {}

    /** The clearances that end within 60 days, soonest first, of somebody. */
    public List<Ending> of(UUID person, LocalDate today) {
        return endings(register.standings(person), today);
    }

    /** The clearances on a board that end within 60 days, soonest first. */
    public List<Ending> on(Register.Board board, LocalDate today) {
        return endings(board.rows(), today);
    }

    /** What to tell somebody on the first page about clearances of theirs that end, the most pressing first. */
    public List<Notice> noticesFor(UUID person) {
        LocalDate today = LocalDate.ofInstant(clock.instant(), school.zone());
        return Stream.concat(
                        of(person, today).stream().map(this::notice),
                        before(person, today.plusDays(DAYS_BEFORE.get(0))).stream()
                                .map(coming -> notice(coming, today)))
                .sorted(Comparator.comparing((Notice notice) -> !notice.pressing()))
                .toList();
    }

    /** What ends a clearance earlier than its own last day, if nothing is done before. */
    public List<Register.Coming> before(UUID person, LocalDate latest) {
        return register.coming(person).stream()
                .filter(coming -> coming.reason() != Reason.EXPIRED)
                .filter(coming -> !coming.lastDay().isAfter(latest))
                .toList();
    }

    private Notice notice(Register.Coming coming, LocalDate today) {
        long days = ChronoUnit.DAYS.between(today, coming.lastDay());
        return new Notice(
                "After %s you will not be cleared for “%s” unless something is done before: %s"
                        .formatted(time.date(coming.lastDay()), coming.scope().title(), Words.ahead(coming.reason())),
                "/register/mine",
                "Your clearance",
                days <= DAYS_BEFORE.get(2));
    }

    private Notice notice(Ending ending) {
        return new Notice(
                "Your clearance for “%s” ends %s, on %s. %s"
                        .formatted(
                                ending.scope(),
                                inDays(ending.daysLeft()),
                                time.date(ending.validThrough()),
                                whatToDo(ending.daysLeft())),
                "/register/mine",
                "Your clearance",
                ending.daysLeft() <= DAYS_BEFORE.get(2));
    }

    private static String inDays(long days) {
        if (days == 0) {
            return "today";
        }
        return days == 1 ? "tomorrow" : "in %d days".formatted(days);
    }

    private static String whatToDo(long days) {
        if (days <= DAYS_BEFORE.get(2)) {
            return "After that day you may not do this work until it is renewed.";
        }
        return days <= DAYS_BEFORE.get(1)
                ? "Ask for the practical now, and sit the checks."
                : "Renewing needs fresh checks and a fresh practical.";
    }

    @Override
    public List<CalendarEvent> eventsFor(UUID person) {
        List<CalendarEvent> events = new ArrayList<>();
        for (Register.BoardRow row : register.standings(person)) {
            if (holds(row.standing())) {
                events.addAll(told(
                        row.validThrough(),
                        "clearance-" + row.standing().grant(),
                        "Clearance ends: " + row.scope().title(),
                        "Renewal needs fresh sittings and a fresh practical."));
            }
        }
        for (Register.Coming coming : before(person, LocalDate.MAX)) {
            events.add(CalendarEvent.on(
                            coming.lastDay(),
                            "clearance-needs-" + coming.scope().id(),
                            "Last day: " + coming.scope().title(),
                            Words.ahead(coming.reason()))
                    .remindedBefore(Duration.ofDays(7)));
        }
        if (people.find(person)
                .filter(one -> one.roles().contains(Roles.SAFETY_LEAD))
                .isPresent()) {
            events.addAll(ofTheSchool());
        }
        return events;
    }

    private List<CalendarEvent> ofTheSchool() {
        Map<LocalDate, Long> ends = register.board(null, null).rows().stream()
                .filter(row -> holds(row.standing()))
                .collect(Collectors.groupingBy(Register.BoardRow::validThrough, TreeMap::new, Collectors.counting()));
        List<CalendarEvent> events = new ArrayList<>();
        ends.forEach((day, count) -> events.addAll(told(
                day,
                "clearances-" + day,
                count == 1 ? "1 clearance of the school ends" : count + " clearances of the school end",
                "The register's page says whose.")));
        return events;
    }

    private static List<CalendarEvent> told(LocalDate last, String uid, String title, String text) {
        List<CalendarEvent> events = new ArrayList<>();
        for (int days : DAYS_BEFORE) {
            events.add(CalendarEvent.on(
                    last.minusDays(days), uid + "-" + days, "In %d days: %s".formatted(days, title), text));
        }
        events.add(CalendarEvent.on(last, uid, title, text).remindedBefore(Duration.ofDays(1)));
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
                .sorted(Comparator.comparing(Ending::validThrough).thenComparing(Ending::name))
                .toList();
    }

    private static boolean holds(Standing standing) {
        return standing.status() != Status.NOT_CLEARED && standing.validThrough() != null;
    }
}
