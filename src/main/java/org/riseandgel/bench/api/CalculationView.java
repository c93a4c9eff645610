package org.riseandgel.bench.api;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.riseandgel.bench.Calculation;
import org.riseandgel.bench.Result;

/** A calculation as the API describes it. */
@Schema(name = "Calculation", description = "A calculation: what goes in and what comes out.")
public record CalculationView(
        @Schema(examples = "stick-marks") String id,
        String title,
        String purpose,
        List<InputView> inputs,
        List<ResultView> results,
        List<String> cautions) {

    /** What comes out; no unit where it follows the inputs. */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    @Schema(name = "ResultDescription")
    public record ResultView(
            @Schema(examples = "markHeight") String name,
            String label,
            @Schema(description = "Missing where the unit follows the inputs.", examples = "cm") String unit,
            @Schema(description = "The smallest step that the instrument shows, in that unit; 0 where none sets one.")
                    double readability) {
        static ResultView of(Result result) {
            return new ResultView(
                    result.name(),
                    result.label(),
                    result.unit() == null ? null : result.unit().code(),
                    result.readability());
        }
    }

    static CalculationView of(Calculation calculation) {
        return new CalculationView(
                calculation.id(),
                calculation.title(),
                calculation.purpose(),
                calculation.inputs().stream().map(InputView::of).toList(),
                calculation.results().stream().map(ResultView::of).toList(),
                calculation.cautions());
    }
}
