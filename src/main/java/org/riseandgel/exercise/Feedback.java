package org.riseandgel.exercise;

import java.util.List;
import org.riseandgel.bench.Slip;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.NumberWriter;
import org.riseandgel.core.quantity.Rational;
import org.riseandgel.core.quantity.Rounding;
import org.riseandgel.core.quantity.Unit;

/** Explains a judged answer with the person's own numbers. */
public final class Feedback {
    private static final String NO_SLIP =
            "None of the usual slips leads here. Compare the working line by line with yours.";

    private Feedback() {}

    /** The explanation of an answer to a part, counted from 0, in the school's decimal mark. */
    public static FeedbackView of(DrawnNumbers drawn, int part, Graded graded, DecimalMark mark) {
        NumericTemplate.Part asked = drawn.part(part).part();
        return new FeedbackView(
                part,
                drawn.prompt(part, mark),
                graded.verdict(),
                graded.verdict().title(),
                graded.reading().echo(mark),
                rounded(graded.expected(), asked.readability(), asked.unit(), mark),
                asked.tolerance().wordsFor(graded.expected(), asked.unit(), mark),
                graded.slip().map(Slip::title),
                graded.verdict() == Verdict.WRONG ? NO_SLIP : graded.line(),
                Working.lines(Working.upTo(drawn, asked.of()), mark),
                List.of());
    }

    /** A value as the instrument would show it, ties away from zero. */
    static String rounded(Rational value, Rational readability, Unit unit, DecimalMark mark) {
        Rational steps = Rounding.toReadability(value, readability);
        int places = Math.max(0, readability.toDecimal(12).stripTrailingZeros().scale());
        String number = NumberWriter.of(mark).plain(steps, places);
        return unit.symbol().isEmpty() ? number : number + "\u00a0" + unit.symbol();
    }
}
