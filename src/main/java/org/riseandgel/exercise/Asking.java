package org.riseandgel.exercise;

import java.util.Optional;
import org.riseandgel.core.quantity.Reading;
import org.riseandgel.core.quantity.Unit;

/** What kind of answer a part wants, in words, and what to ask when it gets another. */
final class Asking {
    private Asking() {}

    /** "a length with its unit, such as 12 mm", "a plain number, such as 3". */
    static String wanted(Unit unit) {
        return unit.kind().one() + (needsUnit(unit) ? " with its unit" : "") + ", such as " + example(unit);
    }

    /** A plain number and money need no unit; everything else does. */
    static boolean needsUnit(Unit unit) {
        return !unit.symbol().isEmpty();
    }

    /** What must be asked before the answer can be judged; nothing when it can be. Says nothing on how close it is. */
    static Optional<String> question(Unit asked, Reading reading) {
        if (!reading.ok()) {
            return Optional.of(reading.message());
        }
        Unit typed = reading.typedUnit().orElse(Unit.ONE).whenAskedFor(asked.kind());
        if (typed.kind() == asked.kind()) {
            return Optional.empty();
        }
        if (typed == Unit.ONE) {
            return Optional.of("Write the unit too. This needs " + wanted(asked) + ".");
        }
        return Optional.of("This needs %s; you wrote %s.".formatted(wanted(asked), typed.symbol()));
    }

    private static String example(Unit unit) {
        return unit.symbol().isEmpty() ? "3" : "12\u00a0" + unit.symbol();
    }
}
