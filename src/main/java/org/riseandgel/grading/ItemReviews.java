package org.riseandgel.grading;

import jakarta.enterprise.context.ApplicationScoped;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.Rational;
import org.riseandgel.exercise.ExerciseTemplate;
import org.riseandgel.exercise.Verdict;
import org.riseandgel.platform.school.SchoolSettings;

/** Item reviews of sets: what was handed in, brought to figures and words. */
@ApplicationScoped
class ItemReviews {
    /** Wrong without a name, and right but marked down by a person. */
    private static final Set<String> NO_SLIP = Set.of(Verdict.WRONG.title(), Verdict.RIGHT.title());

    private final WorkStore works;
    private final SetStore sets;
    private final PartViews parts;
    private final SchoolSettings school;
    private final Clock clock;

    ItemReviews(WorkStore works, SetStore sets, PartViews parts, SchoolSettings school, Clock clock) {
        this.works = works;
        this.sets = sets;
        this.parts = parts;
        this.school = school;
        this.clock = clock;
    }

    /** An exercise with its title and figures; numbers are written the school's way, whatever the computer's is. */
    record Line(String title, String skill, int level, ItemReview.Figures figures, DecimalMark mark) {
        /** "62 % (95 %: 41 to 79 %)". */
        public String facilityWords() {
            return percent(figures.facility()) + " % (95 %: "
                    + percent(figures.likely().low()) + " to "
                    + percent(figures.likely().high()) + " %)";
        }

        public String discriminationWords() {
            return figures.discrimination().isEmpty()
                    ? "nothing varies"
                    : written(figures.discrimination().getAsDouble(), 2);
        }

        public String slipWords() {
            return figures.slips().entrySet().stream()
                    .map(slip -> slip.getKey() + " " + slip.getValue() + "×")
                    .collect(Collectors.joining(", "));
        }

        public String unexplainedWords() {
            return figures.wrongs() == 0
                    ? "no wrong answers"
                    : percent(figures.unexplained()) + " % of " + figures.wrongs();
        }

        private String percent(double share) {
            return written(100 * share, 0);
        }

        private String written(double value, int places) {
            return Score.text(BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP), mark)
                    .replace('-', '−');
        }
    }

    /** The exercises of a set with their figures, over first tries that are handed in or closed. */
    List<Line> of(GradedSet set) {
        Instant now = clock.instant();
        List<SetStore.Extension> extensions = sets.extensions(set.id());
        Map<UUID, Work> first = works.ofSet(set.id()).stream()
                .filter(work -> !work.isOpen() || !now.isBefore(TryRule.closes(set, extensions, work.person())))
                .collect(Collectors.toMap(
                        Work::person, work -> work, (one, other) -> one.nth() < other.nth() ? one : other));
        List<Work.Item> items =
                first.values().stream().flatMap(work -> work.items().stream()).toList();
        Map<String, ExerciseTemplate> templates = items.stream()
                .collect(Collectors.toMap(
                        item -> item.exercise().exercise(),
                        item -> parts.drawn(item).template(),
                        (one, other) -> one));
        List<ItemReview.Seen> seen = first.values().stream()
                .sorted(Comparator.comparing(Work::begunAt).thenComparing(Work::id))
                .flatMap(work -> work.items().stream().map(item -> seen(work, item)))
                .toList();
        return ItemReview.of(seen).stream()
                .map(figures -> line(templates.get(figures.exercise()), figures, school.decimalMark()))
                .toList();
    }

    private static Line line(ExerciseTemplate template, ItemReview.Figures figures, DecimalMark mark) {
        return new Line(template.title(), template.skill(), template.level(), figures, mark);
    }

    private ItemReview.Seen seen(Work work, Work.Item item) {
        List<Work.Item> rest = new ArrayList<>(work.items());
        rest.remove(item);
        Rational outOf = Rational.of(rest.stream().mapToInt(Work.Item::weight).sum());
        double restShare = outOf.signum() == 0
                ? Double.NaN
                : Score.of(rest, parts::parts).points().dividedBy(outOf).toDouble();
        return new ItemReview.Seen(
                item.exercise().exercise(),
                Score.of(item, parts.parts(item))
                        .dividedBy(Rational.of(item.weight()))
                        .toDouble(),
                restShare,
                item.answers().stream().map(ItemAnswer::time).reduce(Duration.ZERO, Duration::plus),
                item.answers().stream()
                        .map(answer -> parts.told(item, answer.part()))
                        .filter(told -> told.credit() < MarkChange.ALL)
                        .map(ItemReviews::slip)
                        .toList());
    }

    /** Which slip explains an answer that does not count in full; empty when none does. */
    private static String slip(PartTold told) {
        return NO_SLIP.contains(told.mark().words()) ? "" : told.mark().words();
    }
}
