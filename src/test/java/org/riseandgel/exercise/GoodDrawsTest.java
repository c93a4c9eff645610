package org.riseandgel.exercise;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What every draw that is given out must keep, over a thousand seeds for each sample. */
class GoodDrawsTest {
    private static final int SEEDS = 1_000;

    @ParameterizedTest
    @MethodSource("org.riseandgel.exercise.Samples#ids")
    void everyDrawIsAGoodExercise(String id) {
        NumericTemplate template = Samples.template("/" + id);
        for (long seed = 0; seed < SEEDS; seed++) {
            DrawnNumbers drawn = Samples.LIBRARY.drawer().draw(template, seed);
            Judge.checkDraw(drawn);
        }
    }

    @ParameterizedTest
    @MethodSource("org.riseandgel.exercise.Samples#ids")
    void answersAreJudgedAsWhatTheyAre(String id) {
        NumericTemplate template = Samples.template("/" + id);
        for (long seed = 0; seed < SEEDS; seed++) {
            Judge.checkAnswers(Samples.LIBRARY.drawer().draw(template, seed));
        }
    }

    @ParameterizedTest
    @MethodSource("org.riseandgel.exercise.Samples#ids")
    void seedsGiveDifferentNumbers(String id) {
        NumericTemplate template = Samples.template("/" + id);
        List<Map<String, DrawnValue>> all = new ArrayList<>();
        for (long seed = 0; seed < 30; seed++) {
            all.add(Samples.LIBRARY.drawer().draw(template, seed).values());
        }
        assertThat(all.stream().distinct().count()).as("different draws of 30").isGreaterThan(10);
    }
}
