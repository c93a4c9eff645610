package org.riseandgel.core.gel;

import org.riseandgel.core.quantity.TimeSpan;

/**
 * Whether the work fits before the gel: the mold must be closed by the early end of the forecast.
 *
 * <p>slack = low end of the gel time − end of closing. It has a sign, so it is no {@link TimeSpan}.
 *
 * @param closed when the mold will be closed, after the agent is added
 * @param latestClose the latest moment at which it must be closed: the early end of the forecast
 * @param slackSeconds latestClose − closed, in seconds; below zero the foam may gel in an open mold
 * @param advice what to do
 */
public record GelClock(TimeSpan closed, TimeSpan latestClose, double slackSeconds, Advice advice) {
    /** Slack that makes the difference between go and tight: 2 minutes. Common practice, no source. */
    public static final TimeSpan USUAL_COMFORT = TimeSpan.ofMinutes(2);

    /** What to do. */
    public enum Advice {
        /** The slack is the comfortable one or more. */
        GO,
        /** There is slack from zero on, but less than the comfortable one. */
        TIGHT,
        /** There is none: the foam may gel before the mold is closed. */
        DO_NOT_START
    }

    /** The clock for some work, a forecast, and the slack from which the work is comfortable. */
    public static GelClock of(WorkPlan work, GelForecast forecast, TimeSpan comfort) {
        double slack = forecast.low().inSeconds() - work.closed().inSeconds();
        return new GelClock(work.closed(), forecast.low(), slack, advice(slack, comfort));
    }

    /** The latest a step may start if all after it stays as planned: its start + slack; its own start when there is no slack. */
    public TimeSpan latestStart(WorkPlan.Step step) {
        return TimeSpan.ofSeconds(step.start().inSeconds() + Math.max(0, slackSeconds));
    }

    private static Advice advice(double slack, TimeSpan comfort) {
        if (slack < 0) {
            return Advice.DO_NOT_START;
        }
        return slack < comfort.inSeconds() ? Advice.TIGHT : Advice.GO;
    }
}
