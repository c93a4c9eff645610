package org.riseandgel.bench;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.NumberWriter;
import org.riseandgel.core.quantity.Quantity;
import org.riseandgel.core.quantity.Rational;
import org.riseandgel.core.quantity.Unit;

/** Writes quantities and the texts around them for people, with the school's decimal mark. */
public final class QuantityText {
    private static final MathContext FIGURES = new MathContext(5, RoundingMode.HALF_UP);
    private static final int MOST_PLACES = 12;
    private static final char NO_BREAK_SPACE = '\u00a0';

    private final DecimalMark mark;
    private final NumberWriter writer;
    private final Optional<UnitSystem> system;

    private QuantityText(DecimalMark mark, Optional<UnitSystem> system) {
        this.mark = mark;
        this.writer = NumberWriter.of(mark);
        this.system = system;
    }

    /** Writing with that mark. */
    public static QuantityText of(DecimalMark mark) {
        return new QuantityText(mark, Optional.empty());
    }

    /** The same, with quantities written in the units of a system whatever unit they are given in. */
    public QuantityText in(UnitSystem wanted) {
        return new QuantityText(mark, Optional.of(wanted));
    }

    /** To five figures at most, without zeros that say nothing. */
    public String of(Quantity quantity, Unit unit) {
        Unit shown = shown(unit);
        return of(quantity.in(shown), shown);
    }

    /** As {@link #of(Quantity, Unit)}, for a number that need not be a possible quantity. */
    public String of(double number, Unit unit) {
        return number(number) + suffix(unit);
    }

    /** As {@link #of(Quantity, Unit)} without the unit. */
    public String number(Quantity quantity, Unit unit) {
        return number(quantity.in(unit));
    }

    /** Rounded to the readability of an instrument; 0 stands for no instrument. */
    public String toReadability(Quantity quantity, Unit unit, double readability) {
        if (readability == 0) {
            return of(quantity, unit);
        }
        double step = system.map(s -> s.readability(unit, readability)).orElse(readability);
        return writer.with(quantity, shown(unit), step);
    }

    private Unit shown(Unit unit) {
        return system.map(s -> s.counterpart(unit)).orElse(unit);
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

    /** A refusal of the core, which writes points and no full stop, as a sentence with the school's decimal mark. */
    public String sentence(String words) {
        return closed(marked(words));
    }

    /** The words with a full stop behind them, and a capital letter in front. */
    String closed(String words) {
        String capital = Character.toUpperCase(words.charAt(0)) + words.substring(1);
        return words.endsWith(".") ? capital : capital + ".";
    }

    private String marked(String words) {
        StringBuilder written = new StringBuilder(words);
        for (int i = 1; i < words.length() - 1; i++) {
            boolean between = Character.isDigit(words.charAt(i - 1)) && Character.isDigit(words.charAt(i + 1));
            if (words.charAt(i) == '.' && between) {
                written.setCharAt(i, mark.mark());
            }
        }
        return written.toString();
    }

    private String number(double value) {
        BigDecimal rounded = new BigDecimal(value).round(FIGURES).stripTrailingZeros();
        return rounded.scale() > MOST_PLACES
                ? writer.figures(value, FIGURES.getPrecision())
                : writer.plain(Rational.of(rounded), Math.max(0, rounded.scale()));
    }

    private static String suffix(Unit unit) {
        return unit.symbol().isEmpty() ? "" : NO_BREAK_SPACE + unit.symbol();
    }
}
