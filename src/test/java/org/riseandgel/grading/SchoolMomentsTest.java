package org.riseandgel.grading;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;

/** Times of the school's clocks. The changes of 2027 are those of the IANA time zone database. */
class SchoolMomentsTest {
    private static final ZoneId BERLIN = ZoneId.of("Europe/Berlin");
    private static final ZoneId LORD_HOWE = ZoneId.of("Australia/Lord_Howe");

    @Test
    void anHourThatDoesNotExistIsRefusedAndTheNextTimeIsNamed() {
        LocalDateTime inGap = LocalDateTime.parse("2027-03-28T02:30");
        assertThat(SchoolMoments.problem(inGap, BERLIN))
                .contains("The clocks are put forward on 2027-03-28, from 02:00 to 03:00, so 02:30 does not exist."
                        + " Write 03:00 or later.");
        assertThat(SchoolMoments.problem(LocalDateTime.parse("2027-03-28T01:59"), BERLIN))
                .isEmpty();
        assertThat(SchoolMoments.problem(LocalDateTime.parse("2027-03-28T03:00"), BERLIN))
                .isEmpty();
    }

    @Test
    void anHourThatComesTwiceOpensAtTheFirstAndClosesAtTheSecond() {
        LocalDateTime twice = LocalDateTime.parse("2027-10-31T02:30");
        assertThat(SchoolMoments.opening(twice, BERLIN)).isEqualTo(Instant.parse("2027-10-31T00:30:00Z"));
        assertThat(SchoolMoments.closing(twice, BERLIN)).isEqualTo(Instant.parse("2027-10-31T01:30:00Z"));
        assertThat(SchoolMoments.remarks(twice, twice, BERLIN)).hasSize(2);
        assertThat(SchoolMoments.remarks(null, LocalDateTime.parse("2027-10-31T03:00"), BERLIN))
                .isEmpty();
    }

    @Test
    void aChangeOfHalfAnHourIsFollowedToo() {
        assertThat(SchoolMoments.problem(LocalDateTime.parse("2027-10-03T02:15"), LORD_HOWE))
                .hasValueSatisfying(message -> assertThat(message).contains("02:00 to 02:30"));
    }

    @Test
    void anOrdinaryTimeIsOneMoment() {
        LocalDateTime plain = LocalDateTime.parse("2027-06-01T20:00");
        assertThat(SchoolMoments.opening(plain, BERLIN)).isEqualTo(SchoolMoments.closing(plain, BERLIN));
        assertThat(SchoolMoments.opening(plain, BERLIN)).isEqualTo(Instant.parse("2027-06-01T18:00:00Z"));
    }

    @Test
    void onlyDaysAndTimesAsAskedForAreRead() {
        assertThat(SchoolMoments.day(" 2027-02-28 ")).isPresent();
        for (String wrong :
                new String[] {"", "2027-02-30", "28.2.2027", "2027/02/28", "tomorrow", "0206-11-26", "+300000-01-01"}) {
            assertThat(SchoolMoments.day(wrong)).as(wrong).isEmpty();
        }
        assertThat(SchoolMoments.time("8:05")).isPresent();
        for (String wrong : new String[] {"", "24:00", "8", "8.30", "7:60"}) {
            assertThat(SchoolMoments.time(wrong)).as(wrong).isEmpty();
        }
    }
}
