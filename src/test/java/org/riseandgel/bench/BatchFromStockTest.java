package org.riseandgel.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.Php;

class BatchFromStockTest {
    private final Catalogue catalogue = Catalogue.standard();
    private final BatchFromStock stock = new BatchFromStock();
    private final Given given = Given.defaultsOf(stock).with("waterPhp", Php.ofPartsPerHundred(4));

    @Test
    void theScarcestDecides() {
        Outcome outcome = catalogue.run(stock, given);
        // by hand: 1000 g of base; 90 ÷ 0.10 = 900 g; 500 ÷ 0.04 = 12500 g; 80 ÷ 0.11 = 727.27 g, the smallest
        assertThat(outcome.findings()).containsEntry("runsOut", "Gelling agent");
        assertThat(grams(outcome, "baseMass")).isCloseTo(727.272727, within(1e-6));
        assertThat(grams(outcome, "gellingAgentMass")).isCloseTo(80, within(1e-9));
        assertThat(grams(outcome, "foamingAgentMass")).isCloseTo(72.7272727, within(1e-6));
        assertThat(grams(outcome, "totalMass")).isCloseTo(909.090909, within(1e-6));
        SlipsApart.check(stock, outcome);
    }

    @Test
    void slipsByHand() {
        Outcome outcome = catalogue.run(stock, given);
        // all of the base used; 80 × 0.11
        assertThat(wrong(outcome, Slip.FIRST_OUT_OVERLOOKED, "baseMass")).isCloseTo(1000, within(1e-9));
        assertThat(wrong(outcome, Slip.FIRST_OUT_OVERLOOKED, "totalMass")).isCloseTo(1250, within(1e-9));
        assertThat(wrong(outcome, Slip.MULTIPLIED_FOR_DIVIDED, "baseMass")).isCloseTo(8.8, within(1e-9));
    }

    @Test
    void whatRunsOutTogetherIsNamedTogether() {
        Outcome outcome = catalogue.run(
                stock, given.with("baseStock", Mass.ofGrams(500)).with("foamingAgentStock", Mass.ofGrams(50)));
        assertThat(outcome.findings()).containsEntry("runsOut", "Base, Foaming agent");
    }

    @Test
    void anIngredientWithoutPartsLimitsNothing() {
        Outcome outcome = catalogue.run(
                stock, given.with("waterPhp", Php.ofPartsPerHundred(0)).with("waterStock", Mass.ofGrams(0.1)));
        assertThat(outcome.findings()).containsEntry("runsOut", "Gelling agent");
    }

    @Test
    void whatIsNotInStockIsAskedForAtItsField() {
        Attempt attempt = Attempt.at(catalogue, stock, Map.of("gellingAgentStock", "0 g"), DecimalMark.POINT);
        assertThat(attempt.problems()).singleElement().satisfies(problem -> assertThat(problem.field())
                .isEqualTo("gellingAgentStock"));
    }

    @Test
    void theCautionStandsBesideIt() {
        assertThat(stock.cautions())
                .singleElement()
                .asString()
                .contains("toxic")
                .contains("cleared");
    }

    @Property
    void nothingIsUsedThatIsNotThere(
            @ForAll @Scale(1) @DoubleRange(min = 1, max = 5000) double base,
            @ForAll @Scale(1) @DoubleRange(min = 1, max = 500) double foaming,
            @ForAll @Scale(1) @DoubleRange(min = 1, max = 500) double gelling) {
        Outcome outcome = catalogue.run(
                stock,
                given.with("baseStock", Mass.ofGrams(base))
                        .with("foamingAgentStock", Mass.ofGrams(foaming))
                        .with("gellingAgentStock", Mass.ofGrams(gelling)));
        assertThat(grams(outcome, "baseMass")).isLessThanOrEqualTo(base * (1 + 1e-9));
        assertThat(grams(outcome, "foamingAgentMass")).isLessThanOrEqualTo(foaming * (1 + 1e-9));
        assertThat(grams(outcome, "gellingAgentMass")).isLessThanOrEqualTo(gelling * (1 + 1e-9));
    }

    @Property
    void twiceTheStockIsTwiceTheBatch(@ForAll @Scale(2) @DoubleRange(min = 0.1, max = 20) double times) {
        Given more = given;
        for (String field : new String[] {"baseStock", "foamingAgentStock", "waterStock", "gellingAgentStock"}) {
            more = more.with(
                    field, Mass.ofGrams(times * given.get(field, Mass.class).inGrams()));
        }
        assertThat(grams(catalogue.run(stock, more), "totalMass"))
                .isCloseTo(times * grams(catalogue.run(stock, given), "totalMass"), Percentage.withPercentage(1e-9));
    }

    private static double grams(Outcome outcome, String name) {
        return outcome.results().get(name).inBase();
    }

    private static double wrong(Outcome outcome, Slip slip, String result) {
        return Slips.of(outcome, slip, result).inBase();
    }
}
