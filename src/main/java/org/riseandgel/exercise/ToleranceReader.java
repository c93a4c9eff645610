package org.riseandgel.exercise;

import java.math.BigDecimal;
import java.util.Optional;
import org.riseandgel.core.quantity.QuantityKind;
import org.riseandgel.core.quantity.Rational;
import org.riseandgel.core.quantity.Unit;

/** Reads how close an answer must come. */
final class ToleranceReader {
    private static final int LONGEST_REASON = 200;
    private static final BigDecimal WIDEST_PERCENT = BigDecimal.TEN;

    private ToleranceReader() {}

    static Optional<Tolerance> read(Fields fields, Optional<Unit> unit, Optional<Rational> readability) {
        fields.only("abs", "percent", "because");
        Optional<Rational> abs = fields.find("abs").flatMap(ToleranceReader::positive);
        Optional<Rational> percent = fields.find("percent").flatMap(field -> percent(field, unit));
        Optional<String> because = fields.need("because").flatMap(field -> field.text(LONGEST_REASON));
        if (!fields.has("abs") && !fields.has("percent")) {
            fields.problem("Gives neither abs nor percent; write how close an answer must come, such as abs: 1.");
            return Optional.empty();
        }
        if (abs.isPresent() && readability.isPresent() && finerThanHalf(abs.get(), readability.get())) {
            fields.find("abs")
                    .orElseThrow()
                    .problem("Is finer than half the readability of %s; nobody can read it that closely."
                            .formatted(readability
                                    .get()
                                    .toDecimal(6)
                                    .stripTrailingZeros()
                                    .toPlainString()));
        }
        return readability.map(step ->
                new Tolerance(abs.orElse(Rational.ZERO), percent.orElse(Rational.ZERO), step, because.orElse("")));
    }

    private static boolean finerThanHalf(Rational abs, Rational readability) {
        return abs.times(Rational.of(2)).compareTo(readability) < 0;
    }

    private static Optional<Rational> percent(Field field, Optional<Unit> unit) {
        if (unit.filter(one -> one.kind() == QuantityKind.TEMPERATURE).isPresent()) {
            field.problem("A share of a temperature means nothing, since its zero is chosen; write abs.");
        }
        return field.number().flatMap(number -> {
            if (number.signum() <= 0 || number.compareTo(WIDEST_PERCENT) > 0) {
                field.problem("Is %s; it must be more than 0 and at most %s.".formatted(number, WIDEST_PERCENT));
                return Optional.empty();
            }
            return Optional.of(Rational.of(number));
        });
    }

    /** An exact number more than zero. */
    static Optional<Rational> positive(Field field) {
        return field.number().flatMap(number -> {
            if (number.signum() <= 0) {
                field.problem("Is %s; it must be more than 0.".formatted(number));
                return Optional.empty();
            }
            return Optional.of(Rational.of(number));
        });
    }
}
