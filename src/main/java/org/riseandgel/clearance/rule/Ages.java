package org.riseandgel.clearance.rule;

import java.time.LocalDate;
import java.util.UUID;

/** Answers whether somebody is of age on a day, without telling when they were born. */
@FunctionalInterface
public interface Ages {
    /** What is known of an age on one day. */
    enum Age {
        ADULT,
        UNDER_18,
        UNKNOWN
    }

    /** The age on this day; once adult, always adult. */
    Age on(UUID person, LocalDate day);

    /** Nobody's age is known. */
    static Ages unknown() {
        return (person, day) -> Age.UNKNOWN;
    }

    /**
     * The first day on which somebody born on this day is of age: the 18th birthday. For those born on 29 February it is
     * 1 March, the later of the two days that laws name.
     */
    static LocalDate adultFrom(LocalDate born) {
        LocalDate day = born.plusYears(18);
        return day.getDayOfMonth() == born.getDayOfMonth() ? day : day.plusDays(1);
    }
}
