package org.riseandgel.exercise;

import java.util.List;
import java.util.Optional;
import org.riseandgel.core.quantity.Rational;

/**
 * One thing asked, with the numbers of a draw: all that is needed to judge an answer, computed once.
 *
 * @param expected the right value in the part's unit
 * @param right the values that are right, in the base unit
 * @param wrongAnswers the answers that slips lead to
 * @param roundedEarly the answer that rounding before the last step leads to, if it is another one
 */
public record DrawnPart(
        NumericTemplate.Part part,
        Rational expected,
        Band right,
        List<WrongAnswer> wrongAnswers,
        Optional<WrongAnswer> roundedEarly) {
    public DrawnPart {
        wrongAnswers = List.copyOf(wrongAnswers);
    }

    /** Names the part only: the rest must not slip into a log or a page. */
    @Override
    public String toString() {
        return "part " + part.id();
    }
}
