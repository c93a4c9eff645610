package org.riseandgel.exercise;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.riseandgel.core.quantity.DecimalMark;

/** What a draw of an exercise without numbers shows: by chance, fairly, and without telling what is right. */
class ChoiceDrawsTest {
    private static final int DRAWS = 2_000;

    static Stream<ChoiceTemplate> all() {
        return RealExercisesTest.all().filter(ChoiceTemplate.class::isInstance).map(ChoiceTemplate.class::cast);
    }

    @ParameterizedTest
    @MethodSource("all")
    void whatIsShownBeforeTheAnswerHasNoReasonAndNoNameOfAMistake(ChoiceTemplate template) {
        for (long seed = 0; seed < 20; seed++) {
            DrawnChoice drawn = template.drawn(seed);
            String shown = PublicView.of(
                            drawn,
                            0,
                            DecimalMark.POINT,
                            List.of(),
                            template.hints().size())
                    .toString();
            assertThat(drawn.notes(drawn.right())).extracting(ChoiceNote::why).noneMatch(shown::contains);
            assertThat(drawn.slip(drawn.wrong()).filter(shown::contains)).isEmpty();
            assertThat(shown).doesNotContain("right=");
            assertThat(drawn.toString()).isEqualTo("a draw of " + template);
        }
    }

    /** Of 2,000 draws each of n places has the right option in 2,000 ÷ n, give or take five standard deviations. */
    @ParameterizedTest
    @MethodSource("all")
    void theRightOptionStandsAnywhere(ChoiceTemplate template) {
        if (template.kind() != ExerciseKind.CHOOSE_ONE) {
            return;
        }
        Map<String, Integer> places = new HashMap<>();
        for (long seed = 0; seed < DRAWS; seed++) {
            places.merge(template.drawn(seed).right(), 1, Integer::sum);
        }
        double share = 1.0 / template.shown();
        double spread = 5 * Math.sqrt(DRAWS * share * (1 - share));
        assertThat(places).hasSize(template.shown());
        assertThat(places.values()).allMatch(count -> Math.abs(count - DRAWS * share) < spread);
    }

    @ParameterizedTest
    @MethodSource("all")
    void everyThingOfTheFileIsShownSoonerOrLater(ChoiceTemplate template) {
        Set<String> met = new HashSet<>();
        for (long seed = 0; seed < DRAWS; seed++) {
            template.drawn(seed).view().rows().forEach(row -> met.add(row.text()));
        }
        int there = template instanceof OptionsTemplate options
                ? options.options().size()
                : template instanceof OrderTemplate order
                        ? order.steps().size()
                        : ((MatchTemplate) template).pairs().size();
        assertThat(met).hasSize(there);
    }

    @Test
    void aShuffleGivesEveryOrderAlike() {
        Map<List<Integer>, Integer> orders = new HashMap<>();
        for (long seed = 0; seed < 6_000; seed++) {
            orders.merge(Shuffle.of(List.of(1, 2, 3), new SplitMix(seed)), 1, Integer::sum);
        }
        // Six orders, 1,000 times each; the standard deviation is 29.
        assertThat(orders).hasSize(6);
        assertThat(orders.values()).allMatch(count -> Math.abs(count - 1_000) < 5 * 29);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "-", "0", "1", "aa", "z", "a,,z", "é", "١", "a b", "a a b"})
    void whatIsNoSinglePlaceIsAskedAgain(String typed) {
        ChoiceTemplate one = all().filter(template -> template.kind() == ExerciseKind.CHOOSE_ONE)
                .findFirst()
                .orElseThrow();
        ReadAnswer read = one.drawn(3).read(typed);
        assertThat(read.isClear()).isFalse();
        assertThat(read.typed()).isEqualTo(typed);
        assertThat(read.question()).endsWith(".");
    }
}
