package org.riseandgel.sitting;

import java.util.List;
import java.util.UUID;
import org.riseandgel.account.DemoPeople;

/**
 * A sitting of an invented person.
 *
 * @param daysAgo how many days before the demo school was filled in
 * @param minute minute of that day
 * @param wrong how many answers are wrong: others than critical ones if it passes, critical ones first if it does not
 */
record DemoSitting(UUID person, String check, int daysAgo, int minute, int wrong, boolean passes) {
    private static final String HANDLING = "safe-handling-check";
    private static final String WHIPPING = "whipping-check";

    /** One who passed twice on different days, one who did not pass yet, one with whom somebody should talk. */
    static final List<DemoSitting> ALL = List.of(
            new DemoSitting(DemoPeople.BASTIAN, HANDLING, 12, 9 * 60 + 10, 1, true),
            new DemoSitting(DemoPeople.BASTIAN, HANDLING, 9, 14 * 60 + 20, 0, true),
            new DemoSitting(DemoPeople.ANOUK, HANDLING, 6, 16 * 60 + 5, 3, false),
            new DemoSitting(DemoPeople.ANOUK, WHIPPING, 4, 15 * 60, 1, true),
            new DemoSitting(DemoPeople.DARIUS, WHIPPING, 11, 10 * 60, 3, false),
            new DemoSitting(DemoPeople.DARIUS, WHIPPING, 8, 10 * 60 + 40, 2, false),
            new DemoSitting(DemoPeople.DARIUS, WHIPPING, 2, 11 * 60 + 15, 2, false));
}
