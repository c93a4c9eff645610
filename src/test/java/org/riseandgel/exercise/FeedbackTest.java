package org.riseandgel.exercise;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.NumberReader;

/**
 * One beaker all through: 90 mm wide, 300 mL, twice the liquid. By hand: r = 4.5 cm, A = π · 4.5² = 63.617 cm², foam
 * 600 mL, mark 600 ÷ 63.617 = 9.4314 cm.
 */
class FeedbackTest {
    private static final DrawnNumbers BEAKER = Samples.draw(Samples.BEAKER, 1);

    @Test
    void saysWhatWasReadWhatWasExpectedAndWhy() {
        FeedbackView told = feedback("23.6 mm", DecimalMark.POINT);
        assertThat(told.verdict()).isEqualTo(Verdict.SLIP);
        assertThat(told.title()).isEqualTo("A known slip");
        assertThat(told.slipTitle()).contains("Diameter taken for radius");
        assertThat(told.line()).isEqualTo("The radius is half the diameter.");
        assertThat(told.asRead()).isEqualTo("23.6\u00a0mm");
        assertThat(told.expected()).isEqualTo("94\u00a0mm");
        assertThat(told.tolerance()).isEqualTo("within 1\u00a0mm");
        assertThat(told.prompt())
                .isEqualTo("How far above the floor of the beaker is the mark for 2 times the liquid?");
    }

    @Test
    void theWorkingHasThePersonsOwnNumbersAndEndsAtTheAnswer() {
        FeedbackView told = feedback("94 mm", DecimalMark.POINT);
        assertThat(told.working())
                .extracting(WorkingLine::value)
                .contains("4.5\u00a0cm", "63.617\u00a0cm²", "600\u00a0mL", "9.4314\u00a0cm");
        assertThat(told.working()).last().satisfies(line -> {
            assertThat(line.label()).isEqualTo("Height of the mark");
            assertThat(line.formula()).isEqualTo("h = V ÷ A");
            assertThat(line.numbers()).isEqualTo("600\u00a0mL ÷ 63.617\u00a0cm²");
            assertThat(line.value()).isEqualTo("9.4314\u00a0cm");
        });
    }

    @Test
    void rightIsExplainedToo() {
        FeedbackView told = feedback("94 mm", DecimalMark.POINT);
        assertThat(told.verdict()).isEqualTo(Verdict.RIGHT);
        assertThat(told.line()).isEmpty();
        assertThat(told.slipTitle()).isEmpty();
        assertThat(told.working()).isNotEmpty();
    }

    @Test
    void aMereErrorGetsAdviceInPlaceOfASlip() {
        FeedbackView told = feedback("55 mm", DecimalMark.POINT);
        assertThat(told.verdict()).isEqualTo(Verdict.WRONG);
        assertThat(told.slipTitle()).isEmpty();
        assertThat(told.line()).startsWith("None of the usual slips leads here.");
    }

    @Test
    void numbersFollowTheSchoolsMark() {
        FeedbackView told = feedback("3,713 in", DecimalMark.COMMA);
        assertThat(told.verdict()).isEqualTo(Verdict.RIGHT);
        assertThat(told.asRead()).isEqualTo("3,713\u00a0in (94,3102\u00a0mm)");
        assertThat(told.working()).extracting(WorkingLine::value).contains("9,4314\u00a0cm");
    }

    @Test
    void theWorkingOfAnEarlierPartStopsBeforeALaterAnswer() {
        DrawnNumbers cup = Samples.draw(Samples.CUP, 5);
        FeedbackView density = Feedback.of(cup, 0, Grader.grade(cup, 0, Samples.read("9 g/mL")), DecimalMark.POINT);
        assertThat(density.working())
                .extracting(WorkingLine::label)
                .containsExactly("What the foam weighs", "Density of the foam");
    }

    @Test
    void theWorkingOfAChainBeginsWithWhatItRestsOn() {
        DrawnNumbers job = Samples.draw(Samples.JOB, 5);
        FeedbackView mark = Feedback.of(job, 1, Grader.grade(job, 1, Samples.read("999 cm")), DecimalMark.POINT);
        assertThat(mark.working()).extracting(WorkingLine::label).last().isEqualTo("Height of the mark");
        assertThat(mark.working().size()).isGreaterThan(5);
    }

    private static FeedbackView feedback(String typed, DecimalMark mark) {
        Graded graded = Grader.grade(BEAKER, 0, NumberReader.of(mark).read(typed));
        return Feedback.of(BEAKER, 0, graded, mark);
    }
}
