package org.riseandgel.sitting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.riseandgel.course.Check;

/**
 * What the rule "11 of 12 right" lets through: the chance that somebody who is right with probability p on each item
 * passes, once and on two days. The table is the one by which the rule was chosen (CR-03); the chances are summed here
 * from the binomial distribution over the rule itself.
 */
class PassRuleTest {
    private static final Check.Pass RULE = new Check.Pass(11, 12, 0);

    @ParameterizedTest
    @CsvSource({
        "0.70, 0.085, 0.007",
        "0.80, 0.275, 0.076",
        "0.90, 0.659, 0.434",
        "0.95, 0.882, 0.777",
        "0.98, 0.977, 0.954"
    })
    void elevenOfTwelve(double p, double once, double twice) {
        double chance = IntStream.rangeClosed(0, RULE.of())
                .filter(right -> RULE.passes(right, 0))
                .mapToDouble(
                        right -> choose(RULE.of(), right) * Math.pow(p, right) * Math.pow(1 - p, RULE.of() - right))
                .sum();
        assertThat(chance).isCloseTo(once, within(0.0006));
        assertThat(chance * chance).isCloseTo(twice, within(0.0006));
    }

    @Test
    void theEdges() {
        assertThat(RULE.passes(12, 0)).isTrue();
        assertThat(RULE.passes(11, 0)).isTrue();
        assertThat(RULE.passes(10, 0)).isFalse();
        assertThat(RULE.passes(11, 1)).isFalse();
        assertThat(new Check.Pass(4, 5, 1).passes(4, 1)).isTrue();
        assertThat(new Check.Pass(4, 5, 1).passes(5, 2)).isFalse();
    }

    private static double choose(int n, int k) {
        return IntStream.rangeClosed(1, k)
                .mapToDouble(i -> (n - k + i) / (double) i)
                .reduce(1, (a, b) -> a * b);
    }
}
