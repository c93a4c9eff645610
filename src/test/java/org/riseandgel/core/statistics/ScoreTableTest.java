package org.riseandgel.core.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.riseandgel.core.quantity.OutOfRangeException;

class ScoreTableTest {
    /** A 10 × 10 teaching example published by East Carolina University; rows are people. */
    private static final ScoreTable TEACHING = table(
            "1111110110",
            "1011011101",
            "1111011001",
            "0010001000",
            "0000010010",
            "1110111111",
            "1101110111",
            "1111111101",
            "0101111101",
            "1101101110");

    // The published note prints Σpq 2.18, variance 5.84 (divided by n) and the facilities; KR-20 follows from them and
    // was recomputed as Cronbach's alpha.
    @Test
    void kuderAndRichardson() {
        assertThat(TEACHING.itemVariance()).isCloseTo(2.18, within(1e-12));
        assertThat(TEACHING.totalVariance()).isCloseTo(5.84, within(1e-12));
        assertThat(TEACHING.kr20().orElseThrow()).isCloseTo(0.696347, within(1e-6));
        assertThat(TEACHING.kr20().orElseThrow())
                .as("the variance divided by n − 1 would be the wrong mix")
                .isNotCloseTo(0.737823, within(1e-3));
        assertThat(TEACHING.totals()).containsExactly(8, 7, 7, 2, 2, 9, 8, 9, 7, 7);
    }

    @Test
    void facilities() {
        double[] published = {.7, .7, .6, .7, .6, .8, .7, .7, .5, .6};
        for (int item = 0; item < published.length; item++) {
            assertThat(TEACHING.facility(item)).isCloseTo(published[item], within(1e-12));
        }
    }

    // Recomputed from the published table with an independent library, six places.
    @Test
    void correctedItemRestCorrelations() {
        double[] expected = {
            0.705889, 0.705889, 0, 0.473589, 0.583874, 0.286147, -0.027445, 0.705889, -0.123613, 0.475867
        };
        for (int item = 0; item < expected.length; item++) {
            assertThat(TEACHING.itemRest(item).orElseThrow())
                    .as("item %d", item)
                    .isCloseTo(expected[item], within(1e-6));
        }
    }

    // The example of the documentation of SciPy's pointbiserialr: r = √3/2.
    @Test
    void pointBiserial() {
        assertThat(Correlation.pointBiserial(
                                List.of(false, false, false, true, true, true, true),
                                List.of(0.0, 1.0, 2.0, 3.0, 4.0, 5.0, 6.0))
                        .orElseThrow())
                .isCloseTo(Math.sqrt(3) / 2, within(1e-12));
    }

    // Complete cases of a public documentation example for Cronbach's alpha, checked there against another package.
    @Test
    void kuderAndRichardsonIsAlphaOfRightAndWrong() {
        ScoreTable table = table(
                "11111111111",
                "11111111010",
                "11101101100",
                "11111000100",
                "11110010000",
                "11111000000",
                "01011000010",
                "11100000000",
                "10010000000");
        assertThat(table.kr20().orElseThrow()).isCloseTo(0.8016949152542373, within(1e-12));
    }

    @Test
    void orderOfPeopleIsOfNoAccount() {
        List<List<Boolean>> mixed = new ArrayList<>(TEACHING.rows());
        Collections.shuffle(mixed, new Random(3));
        assertThat(new ScoreTable(mixed).kr20().orElseThrow())
                .isCloseTo(TEACHING.kr20().orElseThrow(), within(1e-14));
    }

    @Test
    void whatDoesNotVaryHasNoCorrelation() {
        assertThat(table("11", "10").itemRest(0)).isEmpty();
        assertThat(table("1", "0").kr20()).isEmpty();
        assertThat(table("10", "01").kr20()).isEmpty();
    }

    @Test
    void unevenTablesAreRefused() {
        assertThatThrownBy(() -> new ScoreTable(List.of())).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> table("11", "1"))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessage("a row has 1 items, must have 2 as the first");
        assertThatThrownBy(() -> TEACHING.facility(10)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Correlation.pearson(List.of(1.0), List.of())).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Correlation.pearson(List.of(1.0, Double.NaN), List.of(1.0, 2.0)))
                .isInstanceOf(OutOfRangeException.class);
    }

    private static ScoreTable table(String... rows) {
        return new ScoreTable(Stream.of(rows)
                .map(row -> row.chars().mapToObj(c -> c == '1').toList())
                .toList());
    }
}
