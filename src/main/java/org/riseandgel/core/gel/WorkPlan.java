package org.riseandgel.core.gel;

import java.util.List;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.TimeSpan;

/**
 * What is done between adding the agent and closing the mold, each step starting no earlier than the one before; the
 * closing ends last. Times count from the moment the agent is added.
 */
public record WorkPlan(Step disperse, Step refine, Step fill, Step close) {
    /** A step of the work: when it starts after the agent is added, and how long it takes. */
    public record Step(TimeSpan start, TimeSpan duration) {
        /** start + duration. */
        public TimeSpan end() {
            return TimeSpan.ofSeconds(start.inSeconds() + duration.inSeconds());
        }
    }

    public WorkPlan {
        requireOrder("refine", disperse.start(), refine.start());
        requireOrder("fill", refine.start(), fill.start());
        requireOrder("close", fill.start(), close.start());
        for (Step step : List.of(disperse, refine, fill)) {
            requireOrder("end of close", step.end(), close.end());
        }
    }

    /** One step after the other without a pause, from the moment the agent is added. */
    public static WorkPlan inTurn(TimeSpan disperse, TimeSpan refine, TimeSpan fill, TimeSpan close) {
        Step first = new Step(TimeSpan.ofSeconds(0), disperse);
        Step second = new Step(first.end(), refine);
        Step third = new Step(second.end(), fill);
        return new WorkPlan(first, second, third, new Step(third.end(), close));
    }

    /** When the mold is closed. */
    public TimeSpan closed() {
        return close.end();
    }

    private static void requireOrder(String what, TimeSpan before, TimeSpan after) {
        if (after.inSeconds() < before.inSeconds()) {
            throw OutOfRangeException.because(
                    what,
                    "%s is at %s s, must be at %s s or later".formatted(what, after.inSeconds(), before.inSeconds()));
        }
    }
}
