package org.riseandgel.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.Length;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Quantity;
import org.riseandgel.core.quantity.Ratio;
import org.riseandgel.core.quantity.Unit;
import org.riseandgel.core.quantity.Volume;

class CatalogueTest {
    private final Catalogue catalogue = Catalogue.standard();

    static Stream<Calculation> all() {
        return Catalogue.standard().all().stream();
    }

    /** Every calculation with its defaults, and once more for each option of its choices where these can be worked. */
    static Stream<Case> cases() {
        return all().flatMap(calculation -> Stream.concat(
                Stream.of(new Case(calculation, Given.defaultsOf(calculation))), withOptions(calculation)));
    }

    private static Stream<Case> withOptions(Calculation calculation) {
        Given given = Given.defaultsOf(calculation);
        return calculation.inputs().stream()
                .filter(Input.Choice.class::isInstance)
                .map(Input.Choice.class::cast)
                .flatMap(choice -> choice.options().stream()
                        .filter(option -> !choice.name().equals(ConvertUnit.TO) || isMass(option))
                        .map(option -> new Case(calculation, given.choosing(choice.name(), option.value()))));
    }

    private static boolean isMass(Input.Option option) {
        return Unit.byCode(option.value()).orElseThrow().kind() == Unit.GRAM.kind();
    }

    record Case(Calculation calculation, Given given) {
        @Override
        public String toString() {
            return calculation.id() + " " + given.choices();
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void everyDeclaredResultComesOutInItsOwnUnit(Case c) {
        Outcome outcome = catalogue.run(c.calculation(), c.given());
        assertThat(outcome.results().keySet())
                .containsExactlyInAnyOrderElementsOf(
                        c.calculation().results().stream().map(Result::name).toList());
        assertThat(outcome.findings().keySet())
                .containsExactlyInAnyOrderElementsOf(
                        c.calculation().findings().stream().map(Finding::name).toList());
        outcome.results().forEach((name, value) -> assertThat(value.kind())
                .isEqualTo(outcome.units().get(name).kind()));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void everySlipLeadsAwayFromTheRightAnswerAndFromTheOthers(Case c) {
        Outcome outcome = catalogue.run(c.calculation(), c.given());
        for (String result : outcome.results().keySet()) {
            Set<Double> answers =
                    new HashSet<>(Set.of(outcome.results().get(result).inBase()));
            for (Outcome.SlipAnswer slip : outcome.slipsOf(result)) {
                assertThat(answers).as("%s of %s", slip.slip(), result).noneMatch(answer -> same(answer, slip.wrong()));
                answers.add(slip.wrong().inBase());
                assertThat(slip.line()).isNotBlank();
            }
        }
    }

    private static boolean same(double answer, Quantity wrong) {
        return Math.abs(answer - wrong.inBase()) <= 1e-9 * Math.abs(answer);
    }

    @ParameterizedTest
    @MethodSource("cases")
    void everyStepCanBeWrittenOutAndIdsAreUnique(Case c) {
        Outcome outcome = catalogue.run(c.calculation(), c.given());
        QuantityText text = QuantityText.of(DecimalMark.COMMA);
        Set<String> ids = new HashSet<>();
        for (Outcome.Step step : outcome.steps()) {
            assertThat(ids.add(step.id())).as(step.id()).isTrue();
            assertThat(text.fill(step.numbers(), step.in())).isNotBlank().doesNotContain("{}");
            assertThat(step.label()).isNotBlank();
            assertThat(step.formula()).isNotBlank();
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void aDrawingIsWholeAndHasNoStyleOfItsOwn(Case c) {
        Outcome outcome = catalogue.run(c.calculation(), c.given());
        c.calculation()
                .drawing(c.given(), outcome, QuantityText.of(DecimalMark.COMMA))
                .ifPresent(svg -> assertThat(svg)
                        .startsWith("<svg")
                        .endsWith("</svg>")
                        .contains("<title", "<desc")
                        .doesNotContain("style=", "NaN", "Infinity", "null"));
    }

    @ParameterizedTest
    @MethodSource("all")
    void namesAreUniqueAndEverythingIsExplained(Calculation calculation) {
        assertThat(calculation.inputs()).extracting(Input::name).doesNotHaveDuplicates();
        assertThat(calculation.results()).extracting(Result::name).doesNotHaveDuplicates();
        assertThat(calculation.inputs()).allSatisfy(input -> {
            assertThat(input.label()).isNotBlank();
            assertThat(input.help()).isNotBlank();
        });
        assertThat(calculation.purpose()).endsWith(".");
    }

    @ParameterizedTest
    @MethodSource("all")
    void anInputBeyondItsRangeIsRefusedWithNameValueAndInterval(Calculation calculation) {
        for (Input input : calculation.inputs()) {
            // no share is more than 100 %, whatever the range: the quantity itself refuses it
            if (input instanceof Input.Measured measured
                    && !(measured.unit() == Unit.PERCENT && measured.high() > 99)) {
                Given given = Given.defaultsOf(calculation)
                        .with(measured.name(), Quantity.of(measured.high() * 1.01, measured.unit()));
                assertThatThrownBy(() -> catalogue.run(calculation, given))
                        .isInstanceOf(OutOfRangeException.class)
                        .hasMessageContaining(measured.label() + " is ")
                        .hasMessageContaining("must be from")
                        .hasMessageContaining(measured.unit().symbol());
            }
        }
    }

    @Test
    void theLimitsThemselvesBelongToTheRange() {
        Calculation foam = calculation("foam-density");
        assertThat(catalogue
                        .run(foam, Given.defaultsOf(foam).with("cupVolume", Volume.ofLitres(10)))
                        .results())
                .isNotEmpty();
    }

    @Test
    void aKindThatTheInputDoesNotHaveIsAMistakeOfTheProgram() {
        Calculation foam = calculation("foam-density");
        Given given = Given.defaultsOf(foam).with("cupVolume", Mass.ofGrams(3));
        assertThatThrownBy(() -> catalogue.run(foam, given)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void twoCalculationsOfOneNameAreRefused() {
        assertThatThrownBy(() -> new Catalogue(List.of(new MarkStick(), new MarkStick())))
                .hasMessageContaining("stick-marks");
    }

    @Test
    void anOverlookedUnitIsASlipWithTheNumberAsItStood() {
        Calculation foam = calculation("foam-density");
        Given given = Given.defaultsOf(foam).with("fullCup", Mass.ofOunces(2)).with("emptyCup", Mass.ofGrams(0.5));
        Outcome outcome = catalogue.run(foam, given, Map.of("fullCup", Unit.OUNCE));
        Quantity wrong = Slips.of(outcome, Slip.OUNCES_FOR_GRAMS, "foamDensity");
        // 2 oz taken for 2 g: (2 − 0.5) g in 120 mL, by hand
        assertThat(wrong.inBase()).isCloseTo(0.0125, within(1e-12));
        assertThat(outcome.steps().get(0).id()).isEqualTo("convert-fullCup");
    }

    @Test
    void roundingEverythingToTwoFiguresOnTheWayIsASlip() {
        Calculation stick = calculation("stick-marks");
        Given given = Given.defaultsOf(stick).with("bottomDiameter", Length.ofCentimetres(13));
        Outcome outcome = catalogue.run(stick, given);
        // by hand: r = 6.5 cm, A = 132.7 → 130 cm², 2000 mL ÷ 130 cm² = 15.3846 cm, against 15.0679 cm
        assertThat(outcome.results().get("markHeight").in(Unit.CENTIMETRE)).isCloseTo(15.0679, within(5e-5));
        assertThat(Slips.of(outcome, Slip.ROUNDED_EARLY, "markHeight").in(Unit.CENTIMETRE))
                .isCloseTo(2000.0 / 130, within(1e-9));
    }

    @Test
    void roundingTheLastValueIsNoSlip() {
        Calculation units = calculation("unit-conversion");
        assertThat(catalogue.run(units, Given.defaultsOf(units)).slips())
                .extracting(Outcome.SlipAnswer::slip)
                .doesNotContain(Slip.ROUNDED_EARLY);
    }

    @Test
    void aSlipThatLeadsNowhereIsLeftOut() {
        Calculation stick = calculation("stick-marks");
        Outcome outcome = catalogue.run(stick, Given.defaultsOf(stick).with("ratio", Ratio.of(5.6)));
        // a quarter of the floor makes the foam four times as high: 4 × 24.8 cm is beyond a depth of 25 cm
        assertThat(outcome.slipsOf("freeboard"))
                .extracting(Outcome.SlipAnswer::slip)
                .doesNotContain(Slip.RADIUS_FOR_DIAMETER)
                .contains(Slip.DIAMETER_FOR_RADIUS);
    }

    private Calculation calculation(String id) {
        return catalogue.find(id).orElseThrow();
    }
}
