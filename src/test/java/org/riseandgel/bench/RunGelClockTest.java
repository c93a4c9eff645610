package org.riseandgel.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.TimeSpan;
import org.riseandgel.core.quantity.Unit;

class RunGelClockTest {
    private final Catalogue catalogue = Catalogue.standard();
    private final RunGelClock clock = new RunGelClock();
    private final Given usual = Given.defaultsOf(clock);
    private final double early = GelInputs.forecast(usual).low().inMinutes();

    @Test
    void slackIsTheEarlyEndLessTheEndOfClosing() {
        Outcome outcome = catalogue.run(clock, usual);
        // by hand: closing starts at 6 min and takes 1.5 min
        assertThat(minutes(outcome, "closed")).isCloseTo(7.5, within(1e-12));
        assertThat(minutes(outcome, "latestClose")).isCloseTo(early, within(1e-9));
        assertThat(minutes(outcome, "slack")).isCloseTo(early - 7.5, within(1e-9));
    }

    /** Two minutes to spare and more is comfortable, none is too late: common practice, no source. */
    @ParameterizedTest
    @CsvSource({"2.001, GO:", "1.999, TIGHT:", "0.001, TIGHT:", "-0.001, DO NOT START:"})
    void theAdviceFollowsTheSlack(double slack, String advice) {
        Outcome outcome = catalogue.run(clock, closing(early - slack));
        assertThat(outcome.findings().get("advice")).startsWith(advice);
        assertThat(outcome.results().containsKey("slack")).isEqualTo(slack > 0);
    }

    @Test
    void beingTooLateIsToldAndNoTimeToSpareIsGiven() {
        Outcome outcome = catalogue.run(clock, closing(early + 3));
        assertThat(outcome.step("tooLate").orElseThrow().value().in(Unit.MINUTE))
                .isCloseTo(3, within(1e-9));
        assertThat(outcome.notes()).extracting(Outcome.Note::text).anyMatch(note -> note.contains("too late"));
    }

    @Test
    void slipsByHand() {
        Given pause = usual.with("fillStart", TimeSpan.ofMinutes(4)).with("closeStart", TimeSpan.ofMinutes(7));
        Outcome outcome = catalogue.run(clock, pause);
        // closed at 8.5 min; the durations 1 + 2 + 3 + 1.5 leave the pause of a minute out
        assertThat(Slips.of(outcome, Slip.DURATIONS_ADDED, "closed").in(Unit.MINUTE))
                .isCloseTo(7.5, within(1e-9));
        assertThat(Slips.of(outcome, Slip.START_FOR_END, "closed").in(Unit.MINUTE))
                .isCloseTo(7, within(1e-9));
        // nothing overlaps here; where closing begins at 6 and filling ends at 7, who waits closes at 8.5 instead of
        // 7.5
        assertThat(outcome.slipsOf("closed"))
                .extracting(Outcome.SlipAnswer::slip)
                .doesNotContain(Slip.OVERLAP_OVERLOOKED);
        Outcome overlapping = catalogue.run(clock, usual.with("fillStart", TimeSpan.ofMinutes(4)));
        assertThat(Slips.of(overlapping, Slip.OVERLAP_OVERLOOKED, "closed").in(Unit.MINUTE))
                .isCloseTo(8.5, within(1e-9));
        // 90 s written as 0.9 min
        Outcome seconds = catalogue.run(clock, pause.with("closeTime", TimeSpan.ofSeconds(90), Unit.SECOND));
        assertThat(Slips.of(seconds, Slip.SECONDS_AS_HUNDREDTHS, "closed").in(Unit.MINUTE))
                .isCloseTo(7.9, within(1e-9));
        assertThat(Slips.of(outcome, Slip.MIDDLE_FOR_EARLY, "slack").in(Unit.MINUTE))
                .isCloseTo(4, within(1e-9));
    }

    @Test
    void stepsOutOfOrderAreRefusedAtTheirField() {
        assertThatThrownBy(() -> catalogue.run(clock, usual.with("fillStart", TimeSpan.ofMinutes(0.5))))
                .isInstanceOfSatisfying(OutOfRangeException.class, refused -> assertThat(clock.inputAt(refused.what()))
                        .isEqualTo("fillStart"));
    }

    @Test
    void theTimeLineSaysTheSameInWords() {
        Outcome outcome = catalogue.run(clock, usual);
        String svg = clock.drawing(usual, outcome, QuantityText.of(DecimalMark.COMMA))
                .orElseThrow();
        assertThat(svg)
                .contains("closed after 7,5\u00a0min", "half of such batches by 12,5\u00a0min")
                .doesNotContain("style=", "NaN", "Infinity");
    }

    private Given closing(double minutes) {
        return usual.with("closeTime", TimeSpan.ofMinutes(minutes - 6));
    }

    private static double minutes(Outcome outcome, String result) {
        return outcome.results().get(result).in(Unit.MINUTE);
    }
}
