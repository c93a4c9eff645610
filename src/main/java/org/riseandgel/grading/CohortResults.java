package org.riseandgel.grading;

import jakarta.enterprise.context.ApplicationScoped;
import java.math.BigDecimal;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.riseandgel.account.CohortView;
import org.riseandgel.account.People;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.platform.school.SchoolSettings;
import org.riseandgel.platform.table.Column;
import org.riseandgel.platform.table.Table;

/**
 * What the graded sets of a cohort came to as they are at this moment: people by sets, the best try of each. It stays with
 * the cohort: also those are in it who left, with what they earned here and nothing that they earned elsewhere.
 */
@ApplicationScoped
class CohortResults {
    private final SetStore sets;
    private final WorkStore works;
    private final PartViews parts;
    private final People people;
    private final SchoolSettings school;
    private final Clock clock;

    CohortResults(SetStore sets, WorkStore works, PartViews parts, People people, SchoolSettings school, Clock clock) {
        this.sets = sets;
        this.works = works;
        this.parts = parts;
        this.people = people;
        this.school = school;
        this.clock = clock;
    }

    /** People by sets; a withdrawn set counts for nothing and is left out. */
    record View(CohortView cohort, Instant at, List<SetColumn> sets, List<PersonRow> rows) {}

    /** A set that was published. */
    record SetColumn(GradedSet set, String state) {}

    /** A person with what each set came to, in the order of the columns. */
    record PersonRow(UUID id, String name, String signInName, boolean here, List<Cell> cells) {}

    /**
     * What a set came to for a person.
     *
     * @param work the best try; null when none was begun
     */
    record Cell(UUID work, int tries, boolean handedIn, Score score, String points, String percent) {
        static final Cell NONE = new Cell(null, 0, false, null, "", "");
    }

    View of(CohortView cohort) {
        Instant now = clock.instant();
        List<SetColumn> columns = sets.ofCohorts(List.of(cohort.id())).stream()
                .filter(GradedSet::isPublished)
                .sorted(Comparator.comparing(GradedSet::closesAt).thenComparing(GradedSet::id))
                .map(set -> new SetColumn(set, SetLists.state(set, now)))
                .toList();
        Set<UUID> counted = columns.stream().map(one -> one.set().id()).collect(Collectors.toSet());
        Map<UUID, Map<UUID, List<Work>>> tries = works.ofCohort(cohort.id()).stream()
                .filter(work -> counted.contains(work.set()))
                .collect(Collectors.groupingBy(Work::person, Collectors.groupingBy(Work::set)));
        return new View(cohort, now, columns, rows(cohort, columns, tries));
    }

    private List<PersonRow> rows(CohortView cohort, List<SetColumn> columns, Map<UUID, Map<UUID, List<Work>>> tries) {
        Map<UUID, PersonRow> rows = new LinkedHashMap<>();
        people.learnersOf(cohort.id())
                .forEach(one -> rows.put(
                        one.id(),
                        new PersonRow(
                                one.id(),
                                one.displayName(),
                                one.signInName(),
                                true,
                                cells(columns, tries.getOrDefault(one.id(), Map.of())))));
        Set<UUID> left = new HashSet<>(tries.keySet());
        left.removeAll(rows.keySet());
        left.stream()
                .map(people::find)
                .flatMap(Optional::stream)
                .forEach(one -> rows.put(
                        one.id(),
                        new PersonRow(
                                one.id(),
                                one.displayName(),
                                one.signInName(),
                                false,
                                cells(columns, tries.get(one.id())))));
        return rows.values().stream()
                .sorted(Comparator.comparing(PersonRow::name, String.CASE_INSENSITIVE_ORDER)
                        .thenComparing(PersonRow::id))
                .toList();
    }

    private List<Cell> cells(List<SetColumn> columns, Map<UUID, List<Work>> tries) {
        DecimalMark mark = school.decimalMark();
        return columns.stream()
                .map(column -> cell(tries.getOrDefault(column.set().id(), List.of()), mark))
                .toList();
    }

    private Cell cell(List<Work> tries, DecimalMark mark) {
        return tries.stream()
                .max(Comparator.comparing(parts::score)
                        .thenComparing(Comparator.comparingInt(Work::nth).reversed()))
                .map(best -> {
                    Score score = parts.score(best);
                    return new Cell(
                            best.id(),
                            tries.size(),
                            tries.stream().anyMatch(work -> work.handedInAt() != null),
                            score,
                            score.words(mark),
                            Score.text(score.percent(), mark) + " %");
                })
                .orElse(Cell.NONE);
    }

    /** One row for each person and set. Moments are in UTC. */
    static Table table(View view) {
        List<Column> columns = List.of(
                Column.text("Name"),
                Column.text("Sign-in name"),
                Column.text("In the cohort"),
                Column.text("Set"),
                Column.text("State"),
                Column.text("Closes"),
                Column.number("Tries"),
                Column.text("Handed in"),
                Column.number("Points"),
                Column.number("Out of"),
                Column.number("Percent"));
        return new Table("Results", columns, view.rows().stream().flatMap(row -> lines(view, row).stream()));
    }

    private static List<List<Object>> lines(View view, PersonRow row) {
        List<List<Object>> lines = new ArrayList<>();
        for (int i = 0; i < view.sets().size(); i++) {
            SetColumn column = view.sets().get(i);
            Cell cell = row.cells().get(i);
            BigDecimal points =
                    cell.score() == null ? null : Score.written(cell.score().points());
            lines.add(Arrays.asList(
                    row.name(),
                    row.signInName(),
                    row.here() ? "yes" : "left",
                    column.set().title(),
                    column.state(),
                    column.set().closesAt().truncatedTo(ChronoUnit.SECONDS).toString(),
                    cell.tries(),
                    cell.handedIn() ? "yes" : "no",
                    points,
                    cell.score() == null ? null : cell.score().outOf(),
                    cell.score() == null ? null : cell.score().percent()));
        }
        return lines;
    }
}
