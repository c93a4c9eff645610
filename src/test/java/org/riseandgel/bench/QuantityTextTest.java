package org.riseandgel.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.Length;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.Ratio;
import org.riseandgel.core.quantity.Unit;

class QuantityTextTest {
    private final QuantityText comma = QuantityText.of(DecimalMark.COMMA);
    private final QuantityText point = QuantityText.of(DecimalMark.POINT);

    @Test
    void fiveFiguresAtMostAndNoEmptyZeros() {
        assertThat(point.of(Mass.ofGrams(113.3980925), Unit.GRAM)).isEqualTo("113.4\u00a0g");
        assertThat(comma.of(Mass.ofGrams(1.0 / 3), Unit.GRAM)).isEqualTo("0,33333\u00a0g");
        assertThat(point.of(Length.ofMillimetres(120), Unit.CENTIMETRE)).isEqualTo("12\u00a0cm");
        assertThat(point.of(Ratio.of(4), Unit.ONE)).isEqualTo("4");
        assertThat(point.of(Ratio.of(0), Unit.ONE)).isEqualTo("0");
    }

    @Test
    void anInstrumentDecidesThePlaces() {
        assertThat(comma.toReadability(Mass.ofGrams(16.5), Unit.GRAM, 0.01)).isEqualTo("16,50\u00a0g");
        assertThat(comma.toReadability(Mass.ofGrams(16.5), Unit.GRAM, 0)).isEqualTo("16,5\u00a0g");
    }

    @Test
    void numbersFillTheirPlacesInOrder() {
        List<Work.In> numbers = List.of(Work.In.of(Mass.ofGrams(1.5), Unit.GRAM), Work.In.of(Ratio.of(2.5), Unit.ONE));
        assertThat(comma.fill("{} × {} ÷ 100", numbers)).isEqualTo("1,5\u00a0g × 2,5 ÷ 100");
        assertThatThrownBy(() -> comma.fill("{}", numbers)).hasMessageContaining("more numbers than places");
    }

    @Test
    void aRefusalOfTheCoreBecomesASentence() {
        assertThat(comma.sentence("ratio is 9, must be from 1 to 5.65"))
                .isEqualTo("Ratio is 9, must be from 1 to 5,65.");
    }
}
