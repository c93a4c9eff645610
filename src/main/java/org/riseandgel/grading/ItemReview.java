package org.riseandgel.grading;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.riseandgel.core.statistics.Correlation;
import org.riseandgel.core.statistics.Interval;
import org.riseandgel.core.statistics.Wilson;

/**
 * How exercises did in a set, over the first try of each person. Pure functions.
 *
 * <p>Facility is the share of people who had the whole item right, with Wilson's interval. Discrimination is the
 * point-biserial correlation of that with the share of points in the rest of the same try, so that an item is not
 * correlated with itself; where everybody gets the same items of one part and one point, it is the corrected item-rest
 * correlation. Below ten people nothing is told: it would be chance.
 */
final class ItemReview {
    /** The fewest people of whom figures are told. */
    static final int FEWEST = 10;

    private static final double LIKELY = 0.95;

    private ItemReview() {}

    /**
     * An item of somebody's first try.
     *
     * @param share of its points, from 0 to 1
     * @param restShare of the points of all other items of the try; not a number when there are none
     * @param time over all its parts
     * @param wrongs for each answer that is not right, the slip that explains it in words; empty when none does
     */
    record Seen(String exercise, double share, double restShare, Duration time, List<String> wrongs) {
        boolean isRight() {
            return share == 1;
        }
    }

    /**
     * What is told of an exercise.
     *
     * @param people how many first tries had it
     * @param facility share of people who had it right; not a number below {@value #FEWEST} people
     * @param likely where the share lies with 95 % probability; null below that
     * @param discrimination empty where nothing varies, or below that
     * @param medianTime over those who answered; null below that
     * @param slips how often each was found, the most frequent first; empty below that
     * @param wrongs how many answers were not right
     * @param unexplained share of them that no slip explains; not a number without wrong answers, or below that
     */
    record Figures(
            String exercise,
            int people,
            double facility,
            Interval likely,
            OptionalDouble discrimination,
            Duration medianTime,
            Map<String, Long> slips,
            int wrongs,
            double unexplained) {
        public boolean isTold() {
            return people >= FEWEST;
        }
    }

    /** The figures of every exercise, in the order of their first sight. */
    static List<Figures> of(List<Seen> all) {
        Map<String, List<Seen>> byExercise =
                all.stream().collect(Collectors.groupingBy(Seen::exercise, LinkedHashMap::new, Collectors.toList()));
        return byExercise.entrySet().stream()
                .map(entry -> figures(entry.getKey(), entry.getValue()))
                .toList();
    }

    private static Figures figures(String exercise, List<Seen> seen) {
        int people = seen.size();
        List<String> wrongs =
                seen.stream().flatMap(one -> one.wrongs().stream()).toList();
        if (people < FEWEST) {
            return new Figures(
                    exercise,
                    people,
                    Double.NaN,
                    null,
                    OptionalDouble.empty(),
                    null,
                    Map.of(),
                    wrongs.size(),
                    Double.NaN);
        }
        int right = (int) seen.stream().filter(Seen::isRight).count();
        long explained = wrongs.stream().filter(slip -> !slip.isEmpty()).count();
        return new Figures(
                exercise,
                people,
                (double) right / people,
                Wilson.interval(right, people, LIKELY),
                discrimination(seen),
                median(seen),
                slips(wrongs),
                wrongs.size(),
                wrongs.isEmpty() ? Double.NaN : (double) (wrongs.size() - explained) / wrongs.size());
    }

    private static OptionalDouble discrimination(List<Seen> seen) {
        List<Seen> withRest =
                seen.stream().filter(one -> !Double.isNaN(one.restShare())).toList();
        return withRest.size() < FEWEST
                ? OptionalDouble.empty()
                : Correlation.pointBiserial(
                        withRest.stream().map(Seen::isRight).toList(),
                        withRest.stream().map(Seen::restShare).toList());
    }

    /** The middle one of an odd number, the lower of the middle two of an even one. */
    private static Duration median(List<Seen> seen) {
        List<Duration> times = new ArrayList<>(seen.stream()
                .map(Seen::time)
                .filter(time -> !time.isZero())
                .sorted()
                .toList());
        return times.isEmpty() ? null : times.get((times.size() - 1) / 2);
    }

    private static Map<String, Long> slips(List<String> wrongs) {
        Map<String, Long> counts = wrongs.stream()
                .filter(slip -> !slip.isEmpty())
                .collect(Collectors.groupingBy(slip -> slip, Collectors.counting()));
        Map<String, Long> sorted = new LinkedHashMap<>();
        counts.entrySet().stream()
                .sorted(Map.Entry.<String, Long>comparingByValue(Comparator.reverseOrder())
                        .thenComparing(Map.Entry.comparingByKey()))
                .forEach(entry -> sorted.put(entry.getKey(), entry.getValue()));
        return sorted;
    }
}
