package org.riseandgel.core.mold;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MeshNumberTest {
    @ParameterizedTest
    @CsvSource({
        "0, 0",
        "-0.0, 0",
        "30, 30",
        "0.1, 0.1",
        "-12.345678, -12.3457",
        "1000000, 1000000",
        "1e30, 1e30",
        "1.0000000031710769E-30, 1e-30",
        "-3.4028235E38, -3.4e38",
        "0.000125, 0.000125",
        "NaN, no number",
        "Infinity, a number without end",
    })
    void asAPersonWouldWriteIt(double number, String words) {
        assertThat(MeshNumber.words(number)).isEqualTo(words);
    }
}
