package org.riseandgel.bench;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.Quantity;
import org.riseandgel.core.quantity.Unit;

/** Writes quantities for people, with the school's decimal mark and a no-break space before the unit. */
public final class QuantityText {
    private static final MathContext FIGURES = new MathContext(5, RoundingMode.HALF_UP);
    private static final char NO_BREAK_SPACE = '\u00a0';

    private final DecimalMark mark;

    private QuantityText(DecimalMark mark) {
        this.mark = mark;
    }

    /** Writing with that mark. */
    public static QuantityText of(DecimalMark mark) {
        return new QuantityText(mark);
    }

    /** To five figures at most, without zeros that say nothing. */
    public String of(Quantity quantity, Unit unit) {
        return number(quantity, unit) + suffix(unit);
    }

    /** As {@link #of(Quantity, Unit)} without the unit. */
    public String number(Quantity quantity, Unit unit) {
        return marked(new BigDecimal(quantity.in(unit)).round(FIGURES).stripTrailingZeros());
    }

    /** Rounded to the readability of an instrument; 0 stands for no instrument. */
    public String toReadability(Quantity quantity, Unit unit, double readability) {
        return numberToReadability(quantity, unit, readability) + suffix(unit);
    }

    /** As {@link #toReadability} without the unit. */
    public String numberToReadability(Quantity quantity, Unit unit, double readability) {
        if (readability == 0) {
            return number(quantity, unit);
        }
        BigDecimal step = BigDecimal.valueOf(readability).stripTrailingZeros();
        BigDecimal steps = new BigDecimal(quantity.in(unit)).divide(step, 0, RoundingMode.HALF_UP);
        return marked(steps.multiply(step).setScale(Math.max(0, step.scale()), RoundingMode.HALF_UP));
    }

    /** A text with {@code {}} for each number, filled in. */
    public String fill(String text, List<Work.In> in) {
        StringBuilder filled = new StringBuilder();
        int from = 0;
        for (Work.In number : in) {
            int at = text.indexOf("{}", from);
            if (at < 0) {
                throw new IllegalArgumentException("more numbers than places in: " + text);
            }
            filled.append(text, from, at).append(of(number.quantity(), number.unit()));
            from = at + 2;
        }
        return filled.append(text.substring(from)).toString();
    }

    /** A sentence of the core, which writes points, with the school's mark between digits. */
    public String sentence(String words) {
        StringBuilder written = new StringBuilder(words);
        for (int i = 1; i < words.length() - 1; i++) {
            boolean between = Character.isDigit(words.charAt(i - 1)) && Character.isDigit(words.charAt(i + 1));
            if (words.charAt(i) == '.' && between) {
                written.setCharAt(i, mark.mark());
            }
        }
        return written.toString();
    }

    private String marked(BigDecimal number) {
        return number.toPlainString().replace('.', mark.mark());
    }

    private static String suffix(Unit unit) {
        return unit.symbol().isEmpty() ? "" : NO_BREAK_SPACE + unit.symbol();
    }
}
