package org.riseandgel.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

/** LX-10 and LX-14: what is held, what a sure and wrong answer leaves to do, and how often each word was right. */
class ExerciseStandingTest {
    private static final Instant AT = Instant.parse("2027-03-01T08:00:00Z");
    private static final UUID DRAW = new UUID(0, 7);

    private static ExerciseStanding.Given given(boolean right, boolean helped, Confidence confidence, boolean fast) {
        return new ExerciseStanding.Given(DRAW, 1, right, helped, confidence, fast, AT);
    }

    private static ExerciseStanding.Given wrong() {
        return given(false, false, Confidence.FAIRLY, false);
    }

    private static ExerciseStanding.Given right() {
        return given(true, false, Confidence.FAIRLY, false);
    }

    private static ExerciseStanding after(ExerciseStanding.Given... acts) {
        ExerciseStanding standing = ExerciseStanding.NONE;
        for (ExerciseStanding.Given act : acts) {
            standing = standing.after(act);
        }
        return standing;
    }

    @Test
    void threeWrongInARowHoldIt() {
        assertThat(after(wrong(), wrong()).held()).isNull();
        ExerciseStanding held = after(wrong(), wrong(), wrong());
        assertThat(held.held()).isEqualTo(Held.WRONG);
        assertThat(held.heldAt()).isEqualTo(AT);
        assertThat(after(wrong(), wrong(), right(), wrong(), wrong()).held()).isNull();
    }

    @Test
    void aFastPatternHoldsItToo() {
        assertThat(after(given(false, false, Confidence.GUESS, true)).held()).isEqualTo(Held.FAST);
    }

    @Test
    void sureAndWrongIsToBeLookedAtUntilItIsRightWithoutHelp() {
        ExerciseStanding sure = after(given(false, false, Confidence.SURE, false));
        assertThat(sure.sureWrong()).isEqualTo(SureWrong.LOOK);
        assertThat(sure.sureWrongDraw()).isEqualTo(DRAW);
        assertThat(sure.sureWrongPart()).isEqualTo(1);
        assertThat(sure.after(given(true, true, Confidence.SURE, false)).sureWrong())
                .isEqualTo(SureWrong.LOOK);
        assertThat(sure.after(wrong()).sureWrong()).isEqualTo(SureWrong.LOOK);
        assertThat(sure.after(right()).sureWrong()).isNull();
        assertThat(after(wrong()).sureWrong()).isNull();
    }

    @Test
    void theTallyCountsEachWord() {
        ExerciseStanding standing = after(
                given(true, false, Confidence.SURE, false),
                given(false, false, Confidence.SURE, false),
                given(true, false, Confidence.GUESS, false),
                given(false, false, Confidence.FAIRLY, false));
        assertThat(standing.tally()).isEqualTo(new ExerciseStanding.Tally(1, 1, 1, 0, 2, 1));
        Calibration calibration = Calibration.of(standing.tally());
        assertThat(calibration.lines()).extracting(Calibration.Line::percent).containsExactly(100L, 0L, 50L);
        assertThat(calibration.sureAndWrong()).isEqualTo(1);
        assertThat(calibration.lines()).allMatch(Calibration.Line::isFew);
    }

    @Test
    void threeFastAnswersAreAPatternUnlessAllWereRight() {
        FastGuess.Pace quickRight = new FastGuess.Pace(Duration.ofMillis(2_999), true);
        FastGuess.Pace quickWrong = new FastGuess.Pace(Duration.ofMillis(900), false);
        FastGuess.Pace slow = new FastGuess.Pace(Duration.ofSeconds(3), false);
        assertThat(FastGuess.isPattern(List.of(quickWrong, quickRight, quickWrong)))
                .isTrue();
        assertThat(FastGuess.isPattern(List.of(quickRight, quickRight, quickRight)))
                .isFalse();
        assertThat(FastGuess.isPattern(List.of(quickWrong, slow, quickWrong))).isFalse();
        assertThat(FastGuess.isPattern(List.of(quickWrong, quickWrong))).isFalse();
    }

    @Property
    void theMarkNeverDependsOnTheWord(@ForAll("acts") List<ExerciseStanding.Given> acts) {
        ExerciseStanding said = ExerciseStanding.NONE;
        ExerciseStanding silent = ExerciseStanding.NONE;
        for (ExerciseStanding.Given act : acts) {
            said = said.after(act);
            silent = silent.after(given(act.right(), act.helped(), null, act.fastGuess()));
            assertThat(said.held()).isEqualTo(silent.held());
            assertThat(said.wrongInRow()).isEqualTo(silent.wrongInRow());
            assertThat(said.answers()).isEqualTo(silent.answers());
        }
        ExerciseStanding.Tally tally = said.tally();
        assertThat(tally.guess() + tally.fairly() + tally.sure()).isEqualTo(acts.size());
    }

    @Provide
    Arbitrary<List<ExerciseStanding.Given>> acts() {
        Arbitrary<Boolean> either = Arbitraries.of(true, false);
        return Combinators.combine(either, either, Arbitraries.of(Confidence.values()), either)
                .as(ExerciseStandingTest::given)
                .list()
                .ofMaxSize(40);
    }
}
