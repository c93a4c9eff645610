package org.riseandgel.grading;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.Rational;
import org.riseandgel.exercise.Verdict;

/** Points of a try, reckoned by hand. */
class ScoreTest {
    private static final Instant NOON = Instant.parse("2027-03-01T12:00:00Z");

    private static Work.Item item(int weight, List<MarkChange> changes, Verdict... verdicts) {
        List<ItemAnswer> answers = IntStream.range(0, verdicts.length)
                .mapToObj(part -> new ItemAnswer(part, "1", "1", "", "", verdicts[part], null, "1", 1, NOON, NOON, "1"))
                .toList();
        return new Work.Item(1, new FrozenExercises.Exercise("one", "v", "weighing", ""), 1, weight, answers, changes);
    }

    private static MarkChange credit(int part, int credit) {
        return new MarkChange(
                1,
                UUID.randomUUID(),
                1,
                part,
                MarkChange.Kind.CORRECTION,
                credit,
                null,
                null,
                null,
                "why",
                UUID.randomUUID(),
                NOON,
                null,
                null,
                null);
    }

    @Test
    void eachPartOfAnItemCountsTheSameAndWhatIsOpenCountsNothing() {
        Work.Item twoOfThree = item(2, List.of(), Verdict.RIGHT, Verdict.RIGHT, Verdict.SLIP);
        Work.Item oneOfTwo = item(3, List.of(), Verdict.RIGHT);
        assertThat(Score.of(twoOfThree, 3)).isEqualTo(Rational.of(4, 3));
        assertThat(Score.of(oneOfTwo, 2)).isEqualTo(Rational.of(3, 2));
        Score score = Score.of(List.of(twoOfThree, oneOfTwo), item -> item.weight() == 2 ? 3 : 2);
        assertThat(score.outOf()).isEqualTo(5);
        assertThat(score.points()).isEqualTo(Rational.of(17, 6));
        assertThat(score.words(DecimalMark.POINT)).isEqualTo("2.83 of 5 points");
        assertThat(score.words(DecimalMark.COMMA)).isEqualTo("2,83 of 5 points");
        assertThat(score.percent()).isEqualByComparingTo("56.7");
    }

    @Test
    void aCorrectionStandsInPlaceOfTheVerdictAndAlsoForAnOpenPart() {
        assertThat(Score.of(item(4, List.of(credit(0, 50)), Verdict.WRONG), 1)).isEqualTo(Rational.of(2));
        assertThat(Score.of(item(4, List.of(credit(0, 0)), Verdict.RIGHT), 1)).isEqualTo(Rational.ZERO);
        assertThat(Score.of(item(4, List.of(credit(1, 100)), Verdict.WRONG), 2)).isEqualTo(Rational.of(2));
    }

    @Test
    void wholePointsAreWrittenWithoutPlaces() {
        Score score = Score.of(List.of(item(10, List.of(), Verdict.RIGHT)), item -> 1);
        assertThat(score.words(DecimalMark.POINT)).isEqualTo("10 of 10 points");
        assertThat(score.percent()).isEqualByComparingTo("100");
    }

    @Property(tries = 200)
    void pointsLieBetweenNothingAndTheWeight(
            @ForAll @IntRange(min = 1, max = 100) int weight,
            @ForAll @IntRange(min = 1, max = 6) int parts,
            @ForAll @IntRange(max = 100) int credit) {
        Rational points = Score.of(item(weight, List.of(credit(0, credit)), Verdict.RIGHT), parts);
        assertThat(points.signum()).isGreaterThanOrEqualTo(0);
        assertThat(points).isLessThanOrEqualTo(Rational.of(weight));
        assertThat(points).isEqualTo(Rational.of((long) weight * credit, 100L * parts));
    }

    @Test
    void aCorrectionOfAnAnswerThatWasChangedSinceDoesNotStand() {
        MarkChange ofTheFirst = kept(credit(0, 100), 1);
        assertThat(Score.of(item(4, List.of(ofTheFirst), Verdict.WRONG), 1)).isEqualTo(Rational.of(4));
        MarkChange ofNone = kept(credit(0, 100), 0);
        assertThat(Score.of(item(4, List.of(ofNone), Verdict.WRONG), 1)).isEqualTo(Rational.ZERO);
        assertThat(Score.of(item(4, List.of(ofNone)), 1)).isEqualTo(Rational.of(4));
    }

    private static MarkChange kept(MarkChange change, int saves) {
        return new MarkChange(
                change.id(),
                change.work(),
                change.number(),
                change.part(),
                change.kind(),
                change.credit(),
                change.verdict(),
                change.slip(),
                change.expected(),
                change.reason(),
                change.by(),
                change.at(),
                change.regrade(),
                change.mended(),
                saves);
    }
}
