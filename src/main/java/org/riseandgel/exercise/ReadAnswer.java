package org.riseandgel.exercise;

import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import org.riseandgel.core.quantity.Figures;
import org.riseandgel.core.quantity.Rational;
import org.riseandgel.core.quantity.Reading;
import org.riseandgel.core.quantity.ReadingOutcome;
import org.riseandgel.core.quantity.Unit;

/**
 * An answer as it was read: what is stored, and what can be judged again from what is stored.
 *
 * @param typed what was typed, to the letter, or the places that were chosen
 * @param value the number read from it, as an exact fraction in the unit, or the places that were chosen
 * @param unit code of the unit that was typed; empty when none was
 * @param figures the significant figures as written
 * @param question what is unclear and how to give it; empty when it can be judged
 */
public record ReadAnswer(String typed, String value, String unit, String figures, String question) {
    static ReadAnswer of(Reading reading, Optional<String> question) {
        return new ReadAnswer(
                reading.typed(),
                reading.ok() ? reading.value().toString() : "",
                reading.typedUnit().map(Unit::code).orElse(""),
                reading.ok() ? reading.figures().toString() : "",
                question.orElse(""));
    }

    /** Places that were chosen. */
    static ReadAnswer chosen(String places) {
        return new ReadAnswer(places, places, "", "", "");
    }

    /** A choice that is not complete; what was chosen is kept. */
    static ReadAnswer unclear(String typed, String question) {
        return new ReadAnswer(typed, "", "", "", question);
    }

    /** An answer that was judged before, from what was stored of it. */
    public static ReadAnswer stored(String typed, String value, String unit, String figures) {
        return new ReadAnswer(typed, value, unit, figures, "");
    }

    /** Whether it can be judged. */
    public boolean isClear() {
        return question.isEmpty();
    }

    /** The number and unit as they were read, whatever the decimal mark is now. */
    Reading reading() {
        String[] fraction = value.split("/", 2);
        Rational number = new Rational(
                new BigInteger(fraction[0]), fraction.length == 1 ? BigInteger.ONE : new BigInteger(fraction[1]));
        return new Reading(
                typed,
                ReadingOutcome.OK,
                number,
                Unit.byCode(unit).orElse(null),
                figures.equals(Figures.EXACT.toString()) ? Figures.EXACT : Figures.UNSTATED,
                "",
                List.of());
    }
}
