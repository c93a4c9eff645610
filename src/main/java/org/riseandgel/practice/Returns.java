package org.riseandgel.practice;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;

/**
 * When a skill comes back, moved on by one whole draw at a time; a pure rule without clock or database.
 *
 * <p>Three right draws on one school day begin it. From then on the skill returns after gaps of 2, 5, 14 and 31 days, that
 * is about 2, 7 and 21 days after the first day and then every four to five weeks. A return is over with the first right
 * draw of that day or, for skills made of facts, with as many as {@code needed}. A miss sets the gap back to the one
 * before and makes the skill due at once: it is relearned, and waits that shorter gap. What was right with help neither
 * helps nor harms. Being early changes nothing; being late starts the next gap from the day it was done.
 *
 * @param step how many gaps have been set; 0 while the skill is first learned
 * @param dueOn the school day from which on it is due; null while it is first learned
 * @param rightOnDay right draws on the day of the latest answer, since a return was over or a miss
 * @param missed whether it was missed since the last return was over
 */
public record Returns(int step, LocalDate dueOn, int rightOnDay, boolean missed) {
    /** Before anything was learned. */
    public static final Returns NONE = new Returns(0, null, 0, false);

    /** The gaps in days. The first three lead to days 2, 7 and 21; the last is between four and five weeks. */
    static final List<Integer> GAPS = List.of(2, 5, 14, 31);

    private static final int TO_LEARN = 3;

    /** How much is wanted of a day of return. */
    public static int needed(boolean madeOfFacts) {
        return madeOfFacts ? 3 : 1;
    }

    /** Whether the skill is due on that day. */
    public boolean isDue(LocalDate day) {
        return dueOn != null && !dueOn.isAfter(day);
    }

    /** How many days it has been due; 0 on the day itself and before. */
    public long daysOverdue(LocalDate day) {
        return isDue(day) ? ChronoUnit.DAYS.between(dueOn, day) : 0;
    }

    /** Once the day is another one, what was right before counts for that day no more. */
    Returns onNewDay() {
        return new Returns(step, dueOn, 0, missed);
    }

    /** After a draw, or a part of one. */
    Returns after(Mark.Ending ending, LocalDate day, int needed) {
        return switch (ending) {
            case NOT_YET, HELPED -> this;
            case RIGHT -> afterRight(day, needed);
            case WRONG -> afterWrong(day);
        };
    }

    private Returns afterRight(LocalDate day, int needed) {
        int right = rightOnDay + 1;
        if (step == 0) {
            return right < TO_LEARN
                    ? new Returns(0, null, right, false)
                    : new Returns(1, day.plusDays(gap(1)), 0, false);
        }
        if (!isDue(day)) {
            return this;
        }
        if (right < needed) {
            return new Returns(step, dueOn, right, missed);
        }
        int next = missed ? step : Math.min(step + 1, GAPS.size());
        return new Returns(next, day.plusDays(gap(next)), 0, false);
    }

    /** Only the first miss before a return is over sets it back. */
    private Returns afterWrong(LocalDate day) {
        if (step == 0) {
            return this;
        }
        int back = missed ? step : Math.max(1, step - 1);
        return new Returns(back, isDue(day) ? dueOn : day, 0, true);
    }

    private static int gap(int step) {
        return GAPS.get(step - 1);
    }
}
