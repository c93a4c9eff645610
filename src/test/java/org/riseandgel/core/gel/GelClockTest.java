package org.riseandgel.core.gel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.TimeSpan;

class GelClockTest {
    private static final GelForecast FORECAST = new GelForecast(minutes(10), minutes(12.5), minutes(15), 0.9);

    // The limits are the class's own: 2 minutes of slack, common practice, no source.
    @ParameterizedTest
    @CsvSource({"2, GO", "3, GO", "3.01, TIGHT", "5, TIGHT", "5.01, DO_NOT_START", "30, DO_NOT_START"})
    void adviceByHowLongFillingTakes(double filling, GelClock.Advice advice) {
        WorkPlan work = WorkPlan.inTurn(minutes(1), minutes(2), minutes(filling), minutes(2));
        assertThat(GelClock.of(work, FORECAST, GelClock.USUAL_COMFORT).advice()).isEqualTo(advice);
    }

    @Property(tries = 100)
    void slackIsWhatIsLeftAtTheEarlyEnd(@ForAll @DoubleRange(min = 0, max = 20) double filling) {
        WorkPlan work = WorkPlan.inTurn(minutes(1), minutes(2), minutes(filling), minutes(1));
        GelClock clock = GelClock.of(work, FORECAST, GelClock.USUAL_COMFORT);
        assertThat(clock.slackSeconds()).isCloseTo(60 * (10 - 4 - filling), within(1e-9));
        assertThat(clock.closed().inSeconds() + clock.slackSeconds())
                .isCloseTo(clock.latestClose().inSeconds(), within(1e-9));
        assertThat(clock.latestStart(work.fill()).inSeconds())
                .isCloseTo(180 + Math.max(0, clock.slackSeconds()), within(1e-9));
    }

    @Test
    void stepsMayOverlapButNotRunBackwards() {
        WorkPlan.Step disperse = step(0, 2);
        WorkPlan.Step refine = step(1, 2);
        WorkPlan.Step fill = step(2, 3);
        assertThat(new WorkPlan(disperse, refine, fill, step(4, 2)).closed()).isEqualTo(minutes(6));
        assertThatThrownBy(() -> new WorkPlan(disperse, fill, refine, step(4, 2)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessage("fill is at 60.0 s, must be at 120.0 s or later");
        assertThatThrownBy(() -> new WorkPlan(disperse, refine, fill, step(3, 1)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessage("end of close is at 240.0 s, must be at 300.0 s or later");
    }

    @Test
    void aForecastIsInOrder() {
        assertThatThrownBy(() -> new GelForecast(minutes(13), minutes(12), minutes(15), 0.9))
                .isInstanceOf(OutOfRangeException.class);
    }

    private static WorkPlan.Step step(double start, double duration) {
        return new WorkPlan.Step(minutes(start), minutes(duration));
    }

    private static TimeSpan minutes(double value) {
        return TimeSpan.ofMinutes(value);
    }
}
