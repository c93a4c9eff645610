package org.riseandgel.platform.calendar;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;

/**
 * Writes events as iCalendar (RFC 5545): UTC times, lines ended by CR LF and folded at 75 octets, text escaped. The same
 * events give the same text but for the stamp, which is the moment of writing.
 */
public final class CalendarText {
    public static final String MEDIA_TYPE = "text/calendar;charset=UTF-8";

    private static final DateTimeFormatter DAY = DateTimeFormatter.BASIC_ISO_DATE;
    private static final DateTimeFormatter MOMENT =
            DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss'Z'").withZone(ZoneOffset.UTC);
    private static final int LONGEST_LINE = 75;

    private final StringBuilder text = new StringBuilder();

    private CalendarText() {}

    /** A calendar of that name, its events in order of time. */
    public static String of(String name, List<CalendarEvent> events, Instant now) {
        CalendarText out = new CalendarText();
        out.line("BEGIN:VCALENDAR");
        out.line("VERSION:2.0");
        out.line("PRODID:-//Rise and Gel//Dates//EN");
        out.line("NAME:" + escaped(name));
        out.line("REFRESH-INTERVAL;VALUE=DURATION:PT6H");
        events.stream()
                .sorted(Comparator.comparing(CalendarText::start).thenComparing(CalendarEvent::uid))
                .forEach(event -> out.event(event, now.truncatedTo(ChronoUnit.SECONDS)));
        out.line("END:VCALENDAR");
        return out.text.toString();
    }

    private static Instant start(CalendarEvent event) {
        return event.at()
                .orElseGet(() ->
                        event.day().orElseThrow().atStartOfDay(ZoneOffset.UTC).toInstant());
    }

    private void event(CalendarEvent event, Instant stamp) {
        line("BEGIN:VEVENT");
        line("UID:" + escaped(event.uid()));
        line("DTSTAMP:" + MOMENT.format(stamp));
        event.day().ifPresent(this::wholeDay);
        event.at().ifPresent(at -> line("DTSTART:" + MOMENT.format(at)));
        line("SUMMARY:" + escaped(event.title()));
        if (!event.text().isEmpty()) {
            line("DESCRIPTION:" + escaped(event.text()));
        }
        line("TRANSP:TRANSPARENT");
        event.reminder().ifPresent(before -> reminder(event, before.toMinutes()));
        line("END:VEVENT");
    }

    private void wholeDay(LocalDate day) {
        line("DTSTART;VALUE=DATE:" + DAY.format(day));
        line("DTEND;VALUE=DATE:" + DAY.format(day.plusDays(1)));
    }

    private void reminder(CalendarEvent event, long minutesBefore) {
        line("BEGIN:VALARM");
        line("ACTION:DISPLAY");
        line("DESCRIPTION:" + escaped(event.title()));
        line("TRIGGER;RELATED=START:-PT" + minutesBefore + "M");
        line("END:VALARM");
    }

    /** RFC 5545, 3.3.11. Control characters cannot be written at all and are left out. */
    private static String escaped(String plain) {
        return plain.replace("\\", "\\\\")
                .replace(";", "\\;")
                .replace(",", "\\,")
                .replace("\r\n", "\n")
                .replace("\n", "\\n")
                .replaceAll("\\p{Cntrl}", "");
    }

    /** A content line, folded so that no line is longer than 75 octets and no character is cut (3.1). */
    private void line(String content) {
        int octets = 0;
        for (int i = 0; i < content.length(); ) {
            int character = content.codePointAt(i);
            String letter = Character.toString(character);
            int more = letter.getBytes(StandardCharsets.UTF_8).length;
            if (octets + more > LONGEST_LINE) {
                text.append("\r\n ");
                octets = 1;
            }
            text.append(letter);
            octets += more;
            i += Character.charCount(character);
        }
        text.append("\r\n");
    }
}
