package org.riseandgel.platform.calendar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import biweekly.Biweekly;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Calendars against RFC 5545, read back by a reader of other hands. */
class CalendarTextTest {
    private static final Instant NOW = Instant.parse("2026-05-03T08:15:30.123Z");
    private static final String AWKWARD = "Clearance; ends, soon \\ “weigh”\nroom 2 ".repeat(4) + "\u0001end";

    @Test
    void aReaderOfOtherHandsReadsWhatWasMeant() {
        ICalendar read = Biweekly.parse(CalendarText.of(
                        "Dates",
                        List.of(
                                CalendarEvent.on(LocalDate.of(2028, 2, 29), "clearance-1", AWKWARD, "Say, who?")
                                        .remindedBefore(Duration.ofDays(7)),
                                CalendarEvent.at(Instant.parse("2026-06-01T16:00:00Z"), "set-1", "Due", "")),
                        NOW))
                .first();
        assertThat(read.getEvents()).hasSize(2);
        VEvent due = read.getEvents().get(0);
        assertThat(due.getDateStart().getValue().toInstant()).isEqualTo(Instant.parse("2026-06-01T16:00:00Z"));
        assertThat(due.getDateTimeStamp().getValue().toInstant()).isEqualTo(Instant.parse("2026-05-03T08:15:30Z"));
        VEvent day = read.getEvents().get(1);
        assertThat(day.getSummary().getValue()).isEqualTo(AWKWARD.replace("\u0001", ""));
        assertThat(day.getDateStart().getValue().hasTime()).isFalse();
        assertThat(day.getDateStart().getValue().getRawComponents().getMonth()).isEqualTo(2);
        assertThat(day.getDateStart().getValue().getRawComponents().getDate()).isEqualTo(29);
        assertThat(day.getAlarms().get(0).getTrigger().getDuration().toMillis())
                .isEqualTo(-Duration.ofDays(7).toMillis());
        assertThat(read.validate(biweekly.ICalVersion.V2_0).toString()).isEmpty();
    }

    /** RFC 5545, 3.1: lines end with CR LF and are at most 75 octets long. */
    @Test
    void linesAreFoldedByOctetsAndNoCharacterIsCut() {
        String text =
                CalendarText.of("Dates", List.of(CalendarEvent.on(LocalDate.EPOCH, "u", "ü€𝄞".repeat(60), "")), NOW);
        assertThat(text).doesNotContainPattern("[^\r]\n");
        for (String line : text.split("\r\n")) {
            assertThat(line.getBytes(StandardCharsets.UTF_8).length).as(line).isLessThanOrEqualTo(75);
        }
        assertThat(text.replace("\r\n ", "")).contains("ü€𝄞".repeat(60));
    }

    @Test
    void theSameEventsInAnyOrderGiveTheSameText() {
        CalendarEvent one = CalendarEvent.on(LocalDate.of(2027, 1, 2), "a", "A", "");
        CalendarEvent two = CalendarEvent.on(LocalDate.of(2027, 1, 2), "b", "B", "");
        assertThat(CalendarText.of("Dates", List.of(two, one), NOW))
                .isEqualTo(CalendarText.of("Dates", List.of(one, two), NOW));
    }

    @Test
    void anEventHasADayOrAMomentAndNotBoth() {
        assertThatThrownBy(() -> new CalendarEvent("u", Optional.empty(), Optional.empty(), "t", "", Optional.empty()))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
