package org.riseandgel.bench.api;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.riseandgel.bench.Input;
import org.riseandgel.core.quantity.Quantity;
import org.riseandgel.core.quantity.Unit;

/** An input of a calculation as the API describes it; what a kind of input does not have is left out. */
@JsonInclude(JsonInclude.Include.NON_NULL)
@Schema(name = "Input", description = "What a calculation needs to know.")
public record InputView(
        @Schema(description = "The name under which its value is sent.", examples = "bottomDiameter") String name,
        String label,
        String help,
        @Schema(
                        description =
                                "measured: a quantity within a range. anything: a quantity of any kind, with its unit."
                                        + " choice: one of the options. readings: text with a line for each reading."
                                        + " mesh: comes with the form of the sheet only; here the example is taken.")
                String kind,
        @Schema(description = "The unit of a number without one, as a UCUM code where UCUM has it.", examples = "cm")
                String unit,
        @Schema(description = "The lowest value, in that unit.") Double low,
        @Schema(description = "The highest value, in that unit.") Double high,
        @Schema(
                        name = "default",
                        description =
                                "What is taken when no value is sent: a number in that unit, or text. Missing where a"
                                        + " value must be sent.")
                @com.fasterxml.jackson.annotation.JsonProperty("default")
                Object byDefault,
        @Schema(description = "What a choice may be.") List<OptionView> options) {

    /** One option of a choice. */
    @Schema(name = "Option")
    public record OptionView(String value, String label) {}

    static InputView of(Input input) {
        if (input instanceof Input.Measured measured) {
            return measured(measured);
        }
        if (input instanceof Input.Anything anything) {
            return plain(anything, "anything", written(anything.defaultNumber(), anything.defaultUnit()), null);
        }
        if (input instanceof Input.Choice choice) {
            List<OptionView> options = choice.options().stream()
                    .map(option -> new OptionView(option.value(), option.label()))
                    .toList();
            return plain(choice, "choice", options.get(0).value(), options);
        }
        if (input instanceof Input.Readings table) {
            return new InputView(
                    table.name(),
                    table.label(),
                    table.help() + " " + lines(table),
                    "readings",
                    null,
                    null,
                    null,
                    null,
                    null);
        }
        if (input instanceof Input.Mesh mesh) {
            return plain(mesh, "mesh", null, null);
        }
        throw new IllegalStateException("the API does not know inputs such as " + input);
    }

    private static InputView measured(Input.Measured input) {
        return new InputView(
                input.name(),
                input.label(),
                input.help(),
                "measured",
                input.unit().code(),
                input.low(),
                input.high(),
                input.byDefault(),
                null);
    }

    private static InputView plain(Input input, String kind, Object byDefault, List<OptionView> options) {
        return new InputView(input.name(), input.label(), input.help(), kind, null, null, null, byDefault, options);
    }

    private static String lines(Input.Readings table) {
        return "One line each: "
                + table.columns().stream()
                        .map(column -> column.label() + " (" + column.unit().code() + ")")
                        .collect(java.util.stream.Collectors.joining("; "))
                + ".";
    }

    private static String written(double number, Unit unit) {
        return Quantity.of(number, unit).in(unit) + " " + unit.symbol();
    }
}
