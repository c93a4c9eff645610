package org.riseandgel.core.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.riseandgel.core.quantity.OutOfRangeException;

class WilsonTest {
    // 81/263, 15/148, 0/20 and 1/29: Newcombe, Statistics in Medicine 17 (1998), table I, method 3, to four places; all
    // recomputed to six.
    @ParameterizedTest
    @CsvSource({
        "0, 10, 0, 0.277533",
        "5, 10, 0.236593, 0.763407",
        "10, 10, 0.722467, 1",
        "9, 10, 0.595850, 0.982124",
        "8, 10, 0.490162, 0.943318",
        "0, 20, 0, 0.161125",
        "15, 148, 0.062386, 0.160487",
        "81, 263, 0.255289, 0.366210",
        "1, 29, 0.006113, 0.171755"
    })
    void ninetyFivePercent(int right, int n, double low, double high) {
        Interval interval = Wilson.interval(right, n, 0.95);
        assertThat(interval.low()).isCloseTo(low, within(1e-6));
        assertThat(interval.high()).isCloseTo(high, within(1e-6));
    }

    @Property(tries = 200)
    void holdsTheShareAndMirrors(@ForAll @IntRange(min = 1, max = 500) int n, @ForAll @IntRange(max = 500) int right) {
        Assume.that(right <= n);
        Interval interval = Wilson.interval(right, n, 0.9);
        Interval mirrored = Wilson.interval(n - right, n, 0.9);
        assertThat(interval.contains((double) right / n)).isTrue();
        assertThat(interval.low()).isCloseTo(1 - mirrored.high(), within(1e-12));
        assertThat(interval.low()).isBetween(0.0, 1.0);
    }

    @Property(tries = 100)
    void moreTriesAreNarrower(@ForAll @IntRange(min = 1, max = 200) int n) {
        assertThat(Wilson.interval(2 * n, 4 * n, 0.9).width())
                .isLessThan(Wilson.interval(n, 2 * n, 0.9).width());
    }

    @Test
    void impossibleCountsAreRefused() {
        assertThatThrownBy(() -> Wilson.interval(0, 0, 0.9)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Wilson.interval(3, 2, 0.9))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessage("number right is 3.0, must be from 0.0 to 2.0");
        assertThatThrownBy(() -> Wilson.interval(-1, 2, 0.9)).isInstanceOf(OutOfRangeException.class);
    }
}
