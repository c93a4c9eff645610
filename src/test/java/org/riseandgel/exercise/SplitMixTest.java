package org.riseandgel.exercise;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

class SplitMixTest {
    /** The five numbers that published implementations of SplitMix64 print for the seed 1234567; from memory. */
    @Test
    void givesThePublishedNumbers() {
        SplitMix numbers = new SplitMix(1_234_567);
        assertThat(LongStream.generate(numbers::next).limit(5).mapToObj(Long::toUnsignedString))
                .containsExactly(
                        "6457827717110365317",
                        "3203168211198807973",
                        "9817491932198370423",
                        "4593380528125082431",
                        "16408922859458223821");
    }

    @Test
    void staysBelowItsBoundAndReachesAllOfIt() {
        SplitMix numbers = new SplitMix(-1);
        int[] seen = new int[7];
        for (int i = 0; i < 7_000; i++) {
            seen[numbers.below(7)]++;
        }
        // Each count is binomial with mean 1000 and deviation 29; five deviations either way.
        assertThat(Arrays.stream(seen)).allMatch(count -> count > 855 && count < 1_145);
    }
}
