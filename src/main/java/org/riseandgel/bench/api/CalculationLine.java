package org.riseandgel.bench.api;

import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.riseandgel.bench.Calculation;

/** A calculation in the list of all. */
@Schema(name = "CalculationLine")
public record CalculationLine(
        @Schema(examples = "stick-marks") String id,
        String title,
        String purpose,
        @Schema(description = "Where it is described and worked.", examples = "/api/v1/bench/stick-marks")
                String address) {
    static CalculationLine of(Calculation calculation) {
        return new CalculationLine(
                calculation.id(),
                calculation.title(),
                calculation.purpose(),
                BenchApi.ADDRESS + "/" + calculation.id());
    }
}
