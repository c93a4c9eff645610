package org.riseandgel.practice;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.riseandgel.account.feed.CalendarSource;
import org.riseandgel.course.Content;
import org.riseandgel.course.CourseContent;
import org.riseandgel.platform.calendar.CalendarEvent;

/** The days on which skills come back, for people's calendars; what is overdue stands on today. */
@ApplicationScoped
class ReturnDates implements CalendarSource {
    private final Standings standings;
    private final CourseContent content;

    ReturnDates(Standings standings, CourseContent content) {
        this.standings = standings;
        this.content = content;
    }

    @Override
    public List<CalendarEvent> eventsFor(UUID person) {
        Content now = content.current();
        Standings.Begun begun = standings.of(person);
        return begun.standings().values().stream()
                .filter(standing -> standing.returns().dueOn() != null)
                .filter(standing -> !now.exercises().ofSkill(standing.skill()).isEmpty())
                .map(standing -> event(now, standing, begun.today()))
                .toList();
    }

    private static CalendarEvent event(Content now, StandingView standing, LocalDate today) {
        LocalDate due = standing.returns().dueOn();
        return CalendarEvent.on(
                due.isBefore(today) ? today : due,
                "practice-" + standing.skill(),
                "Practise again: " + Today.title(now, standing.skill()),
                "It comes up by itself in your mixed practice.");
    }
}
