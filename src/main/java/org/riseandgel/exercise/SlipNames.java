package org.riseandgel.exercise;

import java.util.Arrays;
import java.util.Collection;
import java.util.stream.Collectors;
import org.riseandgel.bench.Slip;

/** Slips by their names in files, for messages to authors. */
final class SlipNames {
    private SlipNames() {}

    /** The names of all slips that an exercise may list. */
    static String all() {
        return of(Arrays.stream(Slip.values())
                .filter(slip -> slip != Slip.POWER_OF_TEN && slip != Slip.ROUNDED_EARLY)
                .toList());
    }

    /** These names, "none" when there is none. */
    static String of(Collection<Slip> slips) {
        return slips.isEmpty() ? "none" : slips.stream().map(Slip::id).collect(Collectors.joining(", "));
    }
}
