package org.riseandgel.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.Length;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Quantity;
import org.riseandgel.core.quantity.QuantityKind;
import org.riseandgel.core.quantity.Ratio;
import org.riseandgel.core.quantity.TimeSpan;
import org.riseandgel.core.quantity.Unit;

class GivenReaderTest {
    private final MarkStick stick = new MarkStick();
    private final GivenReader point = GivenReader.of(DecimalMark.POINT);

    @Test
    void nothingTypedGivesTheDefaults() {
        Given tapered = Given.defaultsOf(stick).choosing("shape", "tapered");
        assertThat(point.read(stick, Map.of("shape", "tapered")).given()).contains(tapered);
        Given straight = point.read(stick, Map.of()).given().orElseThrow();
        assertThat(straight.choices()).isEqualTo(Map.of("shape", "straight"));
        assertThat(straight.quantities()).doesNotContainKey("topDiameter");
        straight.quantities().forEach((name, quantity) -> assertThat(quantity)
                .isEqualTo(Given.defaultsOf(stick).get(name, Quantity.class)));
    }

    @Test
    void whatWasLeftEmptyIsAskedForAndNeverFilledIn() {
        GivenReading reading = point.read(stick, Map.of("shape", "", "depth", " \u00a0", "whisk", "", "charge", "500"));
        assertThat(reading.given()).isEmpty();
        assertThat(reading.problems())
                .containsExactly(
                        new FieldProblem("shape", "Shape of the vessel: nothing is chosen. Choose one from the list."),
                        new FieldProblem(
                                "depth", "Inside depth: nothing is written. Write a number, such as 25\u00a0cm."),
                        new FieldProblem(
                                "whisk",
                                "Volume of the whisk: nothing is written. Write a number, such as 0\u00a0mL."));
    }

    @Test
    void whatTheChoiceDoesNotUseMayStayEmpty() {
        assertThat(point.read(stick, Map.of("shape", "straight", "topDiameter", ""))
                        .problems())
                .isEmpty();
        assertThat(point.read(stick, Map.of("shape", "tapered", "topDiameter", ""))
                        .problems())
                .extracting(FieldProblem::field)
                .containsExactly("topDiameter");
        ScaleBatch batch = new ScaleBatch();
        Map<String, String> fromTotal =
                Map.of("target", "total", "base", "", "total", "400", "foam", "", "expansion", "");
        assertThat(point.read(batch, fromTotal).problems()).isEmpty();
        assertThat(point.read(batch, Map.of("target", "total", "total", "")).problems())
                .extracting(FieldProblem::field)
                .containsExactly("total");
    }

    /** Every choice of every calculation can be worked with what it does not use left empty. */
    @Test
    void whatIsNotUsedIsNeverMissed() {
        for (Calculation calculation : Catalogue.standard().all()) {
            for (Input input : calculation.inputs()) {
                if (input instanceof Input.Choice choice && !(calculation instanceof ConvertUnit)) {
                    choice.options().forEach(option -> workedWithout(calculation, choice, option));
                }
            }
        }
    }

    private void workedWithout(Calculation calculation, Input.Choice choice, Input.Option option) {
        Given given = Given.defaultsOf(calculation).choosing(choice.name(), option.value());
        Map<String, String> typed = new HashMap<>(Map.of(choice.name(), option.value()));
        for (Input input : calculation.inputs()) {
            if (!calculation.uses(input.name(), given)) {
                typed.put(input.name(), "");
            }
        }
        Attempt attempt = Attempt.at(Catalogue.standard(), calculation, typed, DecimalMark.POINT);
        assertThat(attempt.problems()).as(calculation.id() + " " + typed).isEmpty();
    }

    /** 4 3/4 in and 120.65 mm are the same length, 12.065 cm, by the definition of the inch. */
    @ParameterizedTest
    @CsvSource({"12.065", "'12,065 cm'", "4 3/4 in", "120.65 mm", "4¾″"})
    void aNumberWithoutUnitIsInTheFieldsOwn(String typed) {
        GivenReader reader = typed.contains(",") ? GivenReader.of(DecimalMark.COMMA) : point;
        Given given =
                reader.read(stick, Map.of("bottomDiameter", typed)).given().orElseThrow();
        assertThat(given.get("bottomDiameter", Length.class).inCentimetres()).isCloseTo(12.065, within(1e-12));
    }

    @Test
    void theUnitThatWasTypedIsKeptForTheWorking() {
        Given given = point.read(stick, Map.of("bottomDiameter", "4 3/4 in", "depth", "25 cm"))
                .given()
                .orElseThrow();
        assertThat(given.units()).containsExactlyEntriesOf(Map.of("bottomDiameter", Unit.INCH));
    }

    @Test
    void everyProblemIsToldAtItsField() {
        GivenReading reading = point.read(
                stick,
                Map.of("shape", "round", "bottomDiameter", "12..5", "depth", "5 m", "charge", "500 g", "ratio", "-1"));
        assertThat(reading.given()).isEmpty();
        assertThat(reading.problems())
                .extracting(FieldProblem::field)
                .containsExactly("shape", "bottomDiameter", "depth", "charge", "ratio");
        List<String> messages =
                reading.problems().stream().map(FieldProblem::message).toList();
        assertThat(messages.get(0))
                .isEqualTo("Shape of the vessel: “round” is not among the choices. Choose one from the" + " list.");
        assertThat(messages.get(1)).startsWith("Inside diameter at the floor: ").contains("12..5");
        assertThat(messages.get(2)).isEqualTo("Inside depth is 500\u00a0cm, must be from 1\u00a0cm to 200\u00a0cm.");
        assertThat(messages.get(3))
                .isEqualTo("Liquid before whipping: “500 g” is a mass, but a volume is asked for. Write it in mL.");
        assertThat(messages.get(4)).isEqualTo("Wanted expansion ratio is −1, must be from 1 to 20.");
    }

    @Test
    void messagesUseTheSchoolsMark() {
        GivenReading reading = GivenReader.of(DecimalMark.COMMA).read(stick, Map.of("depth", "200,5 cm"));
        assertThat(reading.problems().get(0).message()).contains("200,5\u00a0cm");
    }

    @Test
    void anAmountToConvertNeedsItsUnit() {
        ConvertUnit convert = new ConvertUnit();
        assertThat(point.read(convert, Map.of("amount", "4")).problems())
                .singleElement()
                .extracting(FieldProblem::message)
                .isEqualTo("Amount: “4” has no unit. Write the unit behind the number, as in 4\u00a0oz.");
        assertThat(point.read(convert, Map.of("amount", "-500 °C")).problems()).hasSize(1);
    }

    @Test
    void degreesBecomeStepsWhereADifferenceIsAsked() {
        Calculation difference =
                new OneInput(new Input.Measured("rise", "Rise", "How much warmer.", Unit.CELSIUS_STEP, 0, 100, null));
        Given given = point.read(difference, Map.of("rise", "18 °F")).given().orElseThrow();
        assertThat(given.get("rise", Quantity.class).kind()).isEqualTo(QuantityKind.TEMPERATURE_DIFFERENCE);
        assertThat(given.get("rise", Quantity.class).inBase()).isCloseTo(10, within(1e-12));
        assertThat(point.read(difference, Map.of()).problems())
                .singleElement()
                .extracting(FieldProblem::message)
                .isEqualTo("Rise: write a number, such as 0\u00a0°C.");
    }

    @Test
    void aRatioMayBeWrittenWithItsSign() {
        Given given = point.read(stick, Map.of("ratio", "3x")).given().orElseThrow();
        assertThat(given.get("ratio", Ratio.class).asNumber()).isEqualTo(3);
    }

    @Test
    void aTableIsReadLineByLine() {
        String typed = "2 min; 1.8\r\n\r\n 0.1 h ;2.5x\n480 s\t3";
        Given given = point.read(RISE, Map.of("rise", typed)).given().orElseThrow();
        assertThat(given.rows("rise"))
                .containsExactly(
                        Given.Row.of(TimeSpan.ofMinutes(2), Ratio.of(1.8)),
                        Given.Row.of(TimeSpan.ofMinutes(6), Ratio.of(2.5)),
                        Given.Row.of(TimeSpan.ofMinutes(8), Ratio.of(3)));
        assertThat(point.read(RISE, Map.of("rise", "2 ; 1.8 | 6; 2.5 | 8 min; 3"))
                        .given()
                        .orElseThrow())
                .isEqualTo(given);
    }

    @Test
    void aMissingTableIsTheExampleAndAnEmptyOneIsAskedFor() {
        List<Given.Row> example = List.of(Given.Row.of(TimeSpan.ofMinutes(1), Ratio.of(1.5)));
        assertThat(point.read(RISE, Map.of()).given().orElseThrow().rows("rise"))
                .isEqualTo(example);
        assertThat(point.read(RISE, Map.of("rise", " \n")).problems())
                .containsExactly(new FieldProblem(
                        "rise", "Readings: nothing is written. Write a reading to a line, such as 1\u00a0min; 1.5."));
        assertThat(Given.defaultsOf(RISE).rows("rise")).isEqualTo(example);
    }

    @Test
    void aTableInASchoolOfCommas() {
        Given given = GivenReader.of(DecimalMark.COMMA)
                .read(RISE, Map.of("rise", "2,5; 1,8"))
                .given()
                .orElseThrow();
        assertThat(given.rows("rise")).containsExactly(Given.Row.of(TimeSpan.ofMinutes(2.5), Ratio.of(1.8)));
    }

    @Test
    void everyLineOfATableThatIsWrongIsTold() {
        GivenReading reading = point.read(RISE, Map.of("rise", "2 min\n\n3 g; 2\n4; 101\n5; x\n6; 2"));
        assertThat(reading.given()).isEmpty();
        assertThat(reading.problems())
                .allSatisfy(problem -> assertThat(problem.field()).isEqualTo("rise"));
        List<String> messages =
                reading.problems().stream().map(FieldProblem::message).toList();
        assertThat(messages).hasSize(4);
        assertThat(messages.get(0))
                .isEqualTo("Readings, line 1: “2 min” has one value, must have 2 with a semicolon between them:"
                        + " time; ratio.");
        assertThat(messages.get(1))
                .isEqualTo("Readings, line 3: time: “3 g” is a mass, but a duration is asked for. Write it in min.");
        assertThat(messages.get(2)).isEqualTo("Readings, line 4: ratio is 101, must be from 1 to 100.");
        assertThat(messages.get(3)).startsWith("Readings, line 5: ratio: ");
    }

    @Test
    void aTableTooLongIsRefusedAndNotCut() {
        assertThat(point.read(RISE, Map.of("rise", "1;2\n".repeat(61))).problems())
                .singleElement()
                .extracting(FieldProblem::message)
                .asString()
                .contains("61 lines", "at most 60 lines");
    }

    @Test
    void aTableOutOfRangeIsRefusedWhereverItComesFrom() {
        Given given =
                Given.defaultsOf(RISE).reading("rise", List.of(Given.Row.of(TimeSpan.ofMinutes(601), Ratio.of(2))));
        assertThatThrownBy(() -> Catalogue.standard().run(RISE, given))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessage("Readings, line 1: time is 601\u00a0min, must be from 0\u00a0min to 600\u00a0min");
    }

    @Test
    void messagesSayAnWhereItIsNeeded() {
        assertThat(point.read(stick, Map.of("depth", "5 cm²")).problems())
                .singleElement()
                .extracting(FieldProblem::message)
                .isEqualTo("Inside depth: “5 cm²” is an area, but a length is asked for. Write it in cm.");
    }

    private static final Calculation RISE = new OneInput(new Input.Readings(
            "rise",
            "Readings",
            "Only here.",
            List.of(new Input.Column("time", Unit.MINUTE, 0, 600), new Input.Column("ratio", Unit.ONE, 1, 100)),
            List.of(List.of(1.0, 1.5))));

    private record OneInput(Input input) implements Calculation {
        @Override
        public String id() {
            return "one-input";
        }

        @Override
        public String title() {
            return "One input";
        }

        @Override
        public String purpose() {
            return "Only here.";
        }

        @Override
        public Task task() {
            return Task.UNITS;
        }

        @Override
        public List<Input> inputs() {
            return List.of(input);
        }

        @Override
        public List<Result> results() {
            return List.of();
        }

        @Override
        public void work(Given given, Work work) {
            throw new UnsupportedOperationException("never worked");
        }
    }
}
