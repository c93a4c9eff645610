package org.riseandgel.practice;

import java.util.List;
import java.util.UUID;
import org.riseandgel.account.DemoPeople;

/**
 * One draw that an invented person worked through.
 *
 * @param daysAgo how many days before the demo school was filled in
 * @param minute minute of that day
 * @param acts one letter for each part, the last one standing for all that follow: r right, h right after a hint, s a
 *     named slip, S a named slip that its person was sure of, t a power of ten, u another unit, w wrong, and a stop for "left open
 *     from here"; an exclamation mark at the end stands for the same exercise each time
 */
record DemoVisit(UUID person, int daysAgo, int minute, String skill, int level, String acts) {
    private static final int EVENING = 18 * 60;

    /** The past weeks of the demo school: one who mastered a skill, one who is stuck, one who never began. */
    static final List<DemoVisit> ALL = List.of(
            visit(DemoPeople.ANOUK, 23, 5, "expansion", 1, "r"),
            visit(DemoPeople.ANOUK, 23, 17, "expansion", 1, "rsr"),
            visit(DemoPeople.ANOUK, 21, 8, "expansion", 1, "r"),
            visit(DemoPeople.ANOUK, 21, 19, "expansion", 2, "s"),
            visit(DemoPeople.ANOUK, 16, 4, "expansion", 2, "r"),
            visit(DemoPeople.ANOUK, 16, 7, "expansion", 2, "r"),
            visit(DemoPeople.ANOUK, 16, 10, "expansion", 2, "r"),
            visit(DemoPeople.ANOUK, 16, 12, "stick-marks-straight", 1, "rrsr"),
            visit(DemoPeople.ANOUK, 14, 6, "stick-marks-straight", 1, "r"),
            visit(DemoPeople.ANOUK, 9, 11, "stick-marks-straight", 2, "t"),
            visit(DemoPeople.ANOUK, 9, 24, "stick-marks-straight", 2, "r"),
            visit(DemoPeople.ANOUK, 7, 3, "expansion", 2, "r"),
            visit(DemoPeople.ANOUK, 2, 9, "stick-marks-tapered", 1, "rs"),
            visit(DemoPeople.ANOUK, 1, 14, "stick-marks-tapered", 1, "r."),
            visit(DemoPeople.BASTIAN, 24, 2, "expansion", 2, "r"),
            visit(DemoPeople.BASTIAN, 24, 9, "expansion", 2, "r"),
            visit(DemoPeople.BASTIAN, 24, 14, "expansion", 2, "r"),
            visit(DemoPeople.BASTIAN, 22, 6, "expansion", 3, "u"),
            visit(DemoPeople.BASTIAN, 22, 21, "expansion", 3, "r"),
            visit(DemoPeople.BASTIAN, 17, 7, "expansion", 3, "r"),
            visit(DemoPeople.BASTIAN, 10, 4, "expansion", 3, "r"),
            visit(DemoPeople.BASTIAN, 17, 30, "stick-marks-straight", 2, "r"),
            visit(DemoPeople.BASTIAN, 15, 5, "stick-marks-straight", 2, "r"),
            visit(DemoPeople.BASTIAN, 15, 16, "stick-marks-straight", 3, "rsr"),
            visit(DemoPeople.BASTIAN, 8, 12, "stick-marks-tapered", 2, "s"),
            visit(DemoPeople.BASTIAN, 8, 23, "stick-marks-tapered", 2, "r"),
            visit(DemoPeople.BASTIAN, 3, 10, "weighing", 2, "r"),
            visit(DemoPeople.BASTIAN, 3, 18, "weighing", 2, "r"),
            visit(DemoPeople.BASTIAN, 3, 25, "weighing", 2, "r"),
            visit(DemoPeople.CELESTE, 20, 7, "expansion", 1, "rhr"),
            visit(DemoPeople.CELESTE, 20, 25, "expansion", 1, "r"),
            visit(DemoPeople.CELESTE, 13, 5, "stick-marks-straight", 1, "rrrs"),
            visit(DemoPeople.CELESTE, 13, 22, "stick-marks-straight", 1, "r"),
            visit(DemoPeople.CELESTE, 6, 9, "stick-marks-tapered", 2, "s!"),
            visit(DemoPeople.CELESTE, 4, 6, "stick-marks-tapered", 2, "w!"),
            visit(DemoPeople.CELESTE, 4, 13, "stick-marks-tapered", 2, "s!"),
            visit(DemoPeople.DARIUS, 19, 8, "expansion", 1, "ss"),
            visit(DemoPeople.DARIUS, 12, 4, "expansion", 1, "rhr"),
            visit(DemoPeople.DARIUS, 12, 20, "weighing", 1, "r"),
            visit(DemoPeople.DARIUS, 5, 11, "weighing", 2, "S"),
            visit(DemoPeople.DARIUS, 5, 17, "weighing", 2, "ur"),
            visit(DemoPeople.DARIUS, 5, 29, "weighing", 1, "r"),
            visit(DemoPeople.ESME, 3, 15, "expansion", 1, "rs"),
            visit(DemoPeople.ESME, 2, 7, "weighing", 1, "r"),
            visit(DemoPeople.ESME, 2, 16, "weighing", 1, "r"),
            visit(DemoPeople.ESME, 2, 27, "weighing", 2, "r"));

    private static DemoVisit visit(UUID person, int daysAgo, int minute, String skill, int level, String acts) {
        return new DemoVisit(person, daysAgo, EVENING + minute, skill, level, acts);
    }

    /** What happens at a part. */
    char act(int part) {
        String each = acts.replace("!", "");
        return each.charAt(Math.min(part, each.length() - 1));
    }

    /** Whether it is the same exercise as in every such visit. */
    boolean same() {
        return acts.endsWith("!");
    }
}
