package org.riseandgel.core.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.statistics.CombinedUncertainty.Part;

class CombinedUncertaintyTest {
    // EURACHEM/CITAC guide, example A1: a cadmium standard, c = 1000·m·P ÷ V, 1002.7 mg/L with u = 0.9 mg/L.
    @Test
    void calibrationStandard() {
        Part mass = new Part(100.28, 0.05);
        Part purity = new Part(0.9999, 0.000058);
        Part volume = new Part(100.0, 0.07);
        double concentration = 1000 * mass.value() * purity.value() / volume.value();
        double relative = CombinedUncertainty.relativeOfProduct(List.of(mass, purity, volume));
        assertThat(concentration).isCloseTo(1002.7, within(0.05));
        assertThat(concentration * relative).isCloseTo(0.9, within(0.05));
        // Recomputed with an independent library.
        assertThat(concentration * relative).isCloseTo(0.863702, within(1e-6));
    }

    @Test
    void sumsAddTheirSquares() {
        assertThat(CombinedUncertainty.ofSum(List.of(new Part(10, 3), new Part(20, 4))))
                .isCloseTo(5, within(1e-15));
        assertThat(CombinedUncertainty.ofSum(List.of())).isZero();
    }

    @Test
    void noPartWithoutAValue() {
        assertThatThrownBy(() -> new Part(0, 1)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> new Part(1, -1)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> new Part(1, Double.NaN)).isInstanceOf(OutOfRangeException.class);
    }
}
