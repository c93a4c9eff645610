package org.riseandgel.grading;

import java.time.Instant;
import java.util.UUID;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** A graded set in a list for programs. */
@Schema(name = "GradedSetLine")
public record GradedSetLine(
        UUID id,
        String title,
        @Schema(description = "Open, Closed, Withdrawn, or Published, not open yet.") String state,
        Instant opensAt,
        Instant closesAt,
        int items,
        int outOf,
        int tries) {
    static GradedSetLine of(GradedSet set, String state) {
        return new GradedSetLine(
                set.id(), set.title(), state, set.opensAt(), set.closesAt(), set.items(), set.outOf(), set.tries());
    }
}
