package org.riseandgel.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.riseandgel.core.quantity.Unit.CENTIMETRE;
import static org.riseandgel.core.quantity.Unit.MILLILITRE;
import static org.riseandgel.core.quantity.Unit.ONE;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.Volume;

class FitBatchTest {
    private final Catalogue catalogue = Catalogue.standard();
    private final FitBatch fit = new FitBatch();
    private final Given given = Given.defaultsOf(fit);

    @Test
    void levelsInAStraightVessel() {
        Outcome outcome = catalogue.run(fit, given);
        // by hand: 400 ÷ 1.02 = 392.157 mL on π × 6² = 113.097 cm²; four times that is foam; 25 cm deep
        assertThat(outcome.results().get("liquidVolume").in(MILLILITRE)).isCloseTo(392.15686, within(1e-4));
        assertThat(centimetres(outcome, "liquidHeight")).isCloseTo(3.467430, within(1e-5));
        assertThat(centimetres(outcome, "markHeight")).isCloseTo(13.869718, within(1e-5));
        assertThat(centimetres(outcome, "freeboard")).isCloseTo(11.130282, within(1e-5));
        assertThat(outcome.results().get("largestRatio").in(ONE)).isCloseTo(7.209952, within(1e-5));
        SlipsApart.check(fit, outcome);
    }

    @Test
    void asTheStickSaysForTheSameLiquid() {
        for (String shape : new String[] {"straight", "tapered"}) {
            Outcome batch = catalogue.run(fit, given.choosing("shape", shape));
            MarkStick stick = new MarkStick();
            Outcome marks = catalogue.run(
                    stick, Given.defaultsOf(stick).choosing("shape", shape).with("charge", (Volume)
                            batch.results().get("liquidVolume")));
            for (String result : new String[] {"liquidHeight", "markHeight", "freeboard", "largestRatio"}) {
                assertThat(batch.results().get(result).inBase())
                        .as(shape + " " + result)
                        .isEqualTo(marks.results().get(result).inBase());
            }
        }
    }

    @Test
    void foamThatDoesNotFitIsRefusedWithTheLargestRatioThatDoes() {
        Attempt attempt = Attempt.at(catalogue, fit, Map.of("total", "800 g"), DecimalMark.COMMA);
        assertThat(attempt.problems()).singleElement().satisfies(problem -> {
            assertThat(problem.field()).isEqualTo("ratio");
            // by hand: π × 36 × 25 = 2827.43 mL ÷ 784.31 mL = 3.605
            assertThat(problem.message()).contains("3,6:", "is 3,6.").contains("over the rim");
        });
    }

    @Test
    void aBatchThatDoesNotFitAtAllIsRefusedAtItsMass() {
        Attempt attempt = Attempt.at(catalogue, fit, Map.of("total", "5 kg"), DecimalMark.POINT);
        assertThat(attempt.problems()).singleElement().satisfies(problem -> assertThat(problem.field())
                .isEqualTo("total"));
    }

    private static double centimetres(Outcome outcome, String name) {
        return outcome.results().get(name).in(CENTIMETRE);
    }
}
