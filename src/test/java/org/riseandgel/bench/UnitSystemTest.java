package org.riseandgel.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.Quantity;
import org.riseandgel.core.quantity.QuantityKind;
import org.riseandgel.core.quantity.Unit;

class UnitSystemTest {
    /** The same in both systems. A new kind must be put here or be given counterparts. */
    private static final Set<QuantityKind> SAME = EnumSet.of(
            QuantityKind.DURATION,
            QuantityKind.RATIO,
            QuantityKind.PHP,
            QuantityKind.CONCENTRATION,
            QuantityKind.ENERGY,
            QuantityKind.SUBSTANCE,
            QuantityKind.RATE,
            QuantityKind.MONEY);

    @Test
    void everyKindIsTheSameInBothOrHasCounterparts() {
        for (QuantityKind kind : QuantityKind.values()) {
            Unit base = kind.baseUnit();
            assertThat(UnitSystem.US.counterpart(base) == base).as(kind.name()).isEqualTo(SAME.contains(kind));
        }
    }

    @Test
    void aCounterpartIsOfTheSameKindAndNeedsNoFurtherOne() {
        for (UnitSystem system : UnitSystem.values()) {
            for (Unit unit : Unit.values()) {
                Unit shown = system.counterpart(unit);
                assertThat(shown.kind()).isEqualTo(unit.kind());
                assertThat(system.counterpart(shown)).isEqualTo(shown);
            }
        }
    }

    /** By hand: the readability times the exact factor, then down to the next 1, 2 or 5. */
    @ParameterizedTest
    @CsvSource({
        "CENTIMETRE, 0.1, 0.02", // 0.0394 in
        "GRAM, 0.1, 0.002", // 0.00353 oz
        "GRAM, 1, 0.02", // 0.0353 oz
        "MILLILITRE, 1, 0.02", // 0.0338 US fl oz
        "GRAM_PER_MILLILITRE, 0.001, 0.05", // 0.0624 lb/ft³
        "DEGREE_CELSIUS, 1, 1", // 1.8 °F
        "PHP, 0.01, 0.01",
        "GRAM, 0, 0"
    })
    void theReadabilityHidesNothingThatTheInstrumentShows(Unit unit, double readability, double expected) {
        assertThat(UnitSystem.US.readability(unit, readability)).isCloseTo(expected, within(1e-12));
    }

    @Test
    void textIsWrittenInTheCounterpart() {
        QuantityText us = QuantityText.of(DecimalMark.POINT).in(UnitSystem.US);
        // 10 oz = 283.49523125 g, exact by definition (NIST SP 811, appendix B)
        assertThat(us.toReadability(Mass.ofGrams(283.49523125), Unit.GRAM, 0.1)).isEqualTo("10.000\u00a0oz");
        assertThat(us.of(Quantity.of(100, Unit.DEGREE_CELSIUS), Unit.DEGREE_CELSIUS))
                .isEqualTo("212\u00a0°F");
        assertThat(QuantityText.of(DecimalMark.POINT).in(UnitSystem.METRIC).of(Quantity.of(1, Unit.INCH), Unit.INCH))
                .isEqualTo("2.54\u00a0cm");
    }

    @Test
    void noInputBearsTheNameOfTheParameter() {
        assertThat(Catalogue.standard().all())
                .flatExtracting(Calculation::inputs)
                .extracting("name")
                .doesNotContain(Sheets.UNITS);
    }
}
