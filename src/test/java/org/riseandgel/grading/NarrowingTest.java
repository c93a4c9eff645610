package org.riseandgel.grading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.Unit;
import org.riseandgel.exercise.DrawRule;
import org.riseandgel.exercise.NumericTemplate;

/** Narrower ranges leave only what the exercise itself could draw. */
class NarrowingTest {
    private static final DrawRule.Range CHARGE = new DrawRule.Range(
            "charge", Unit.MILLILITRE, new BigDecimal("100"), new BigDecimal("400"), new BigDecimal("10"));
    private static final DrawRule.Choices RATIO = new DrawRule.Choices(
            "ratio", Unit.ONE, List.of(new BigDecimal("2"), new BigDecimal("2.5"), new BigDecimal("3")));
    private static final DrawRule.Fixed ALWAYS = new DrawRule.Fixed("always", Unit.GRAM, BigDecimal.TEN);
    private static final NumericTemplate TEMPLATE = new NumericTemplate(
            null, List.of(CHARGE, RATIO, ALWAYS), List.of(), List.of(), List.of(), List.of(), List.of());

    private static Narrowing.Span span(String from, String to) {
        return new Narrowing.Span(new BigDecimal(from), new BigDecimal(to));
    }

    private static List<DrawRule> narrowed(Map<String, Narrowing.Span> spans) {
        return ((NumericTemplate) new Narrowing(spans).applied(TEMPLATE)).draws();
    }

    @Test
    void endsFallOnStepsOfTheExercise() {
        DrawRule rule = narrowed(Map.of("charge", span("143", "209"))).get(0);
        assertThat(rule.least()).isEqualByComparingTo("150");
        assertThat(rule.most()).isEqualByComparingTo("200");
        assertThat(rule.count()).isEqualTo(6);
        assertThat(rule.at(5)).isEqualByComparingTo("200");
    }

    @Test
    void listsKeepTheirOrderAndFixedValuesStay() {
        List<DrawRule> rules = narrowed(Map.of("ratio", span("2.2", "9"), "always", span("1", "2")));
        assertThat(((DrawRule.Choices) rules.get(1)).values())
                .containsExactly(new BigDecimal("2.5"), new BigDecimal("3"));
        assertThat(rules.get(2)).isEqualTo(ALWAYS);
        assertThat(rules.get(0)).isEqualTo(CHARGE);
    }

    @Test
    void theStoredFormComesBack() {
        Narrowing narrowing = new Narrowing(Map.of("charge", span("120.5", "200")));
        assertThat(Narrowing.parse(narrowing.text())).isEqualTo(narrowing);
        assertThat(Narrowing.parse("")).isEqualTo(Narrowing.NONE);
        assertThat(Narrowing.NONE.applied(TEMPLATE)).isSameAs(TEMPLATE);
    }

    @Test
    void nothingLeftIsRefused() {
        assertThatThrownBy(() -> narrowed(Map.of("charge", span("101", "109"))))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void whatIsTypedIsReadInTheUnitOfTheValue() {
        List<RangesReader.Row> rows = RangesReader.typed(TEMPLATE, List.of("120 mL", ""), List.of("", ""));
        RangesReader.Read read = RangesReader.read(TEMPLATE, rows, DecimalMark.POINT);
        assertThat(read.problems()).isEmpty();
        assertThat(read.ranges().spans()).containsOnly(Map.entry("charge", span("120", "400")));
    }

    @Test
    void whatCannotBeIsSaidAtItsField() {
        List<RangesReader.Row> rows = RangesReader.typed(TEMPLATE, List.of("12 g", "7"), List.of("x", "8"));
        RangesReader.Read read = RangesReader.read(TEMPLATE, rows, DecimalMark.POINT);
        assertThat(read.problems())
                .extracting(problem -> problem.field())
                .containsExactly("from-charge", "to-charge", "from-ratio");
    }
}
