package org.riseandgel.grading;

import jakarta.enterprise.context.ApplicationScoped;
import java.math.BigDecimal;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.riseandgel.account.CohortView;
import org.riseandgel.account.People;
import org.riseandgel.account.PersonView;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.Rational;
import org.riseandgel.platform.school.SchoolSettings;
import org.riseandgel.platform.web.Problem;

/** The results of a set as they are at this moment. */
@ApplicationScoped
class Results {
    private final SetStore sets;
    private final WorkStore works;
    private final SetDesk desk;
    private final SetEditor editor;
    private final PartViews parts;
    private final People people;
    private final SchoolSettings school;
    private final Clock clock;

    Results(
            SetStore sets,
            WorkStore works,
            SetDesk desk,
            SetEditor editor,
            PartViews parts,
            People people,
            SchoolSettings school,
            Clock clock) {
        this.sets = sets;
        this.works = works;
        this.desk = desk;
        this.editor = editor;
        this.parts = parts;
        this.people = people;
        this.school = school;
        this.clock = clock;
    }

    /**
     * A set with its results.
     *
     * @param at when they were like this
     * @param rows one for each person, with all tries
     * @param numbers the numbers of the items, for the columns
     */
    record View(
            GradedSet set,
            CohortView cohort,
            Instant at,
            String state,
            List<String> lines,
            List<Integer> numbers,
            List<PersonRow> rows,
            List<ExtensionLine> extensions) {
        /** How many people have handed in. */
        public long handedIn() {
            return rows.stream().filter(PersonRow::isHandedIn).count();
        }
    }

    /** A person with their tries; the best one counts. */
    record PersonRow(UUID id, String name, String signInName, boolean here, List<TryRow> tries) {
        public boolean isHandedIn() {
            return tries.stream().anyMatch(row -> row.work.handedInAt() != null);
        }
    }

    /**
     * One try with the points of its items.
     *
     * @param late whether it was handed in after the set had closed for everybody, with more time
     */
    record TryRow(
            Work work,
            boolean late,
            List<Cell> cells,
            List<BigDecimal> itemPoints,
            Score score,
            String points,
            String percent,
            boolean best) {}

    /** An item of a try: its points, and whether they are all, some, none, or nothing is answered. */
    record Cell(int number, String points, String icon, boolean changed) {}

    /** More time that somebody got. */
    record ExtensionLine(String name, Instant until, String reason, boolean freshTry) {}

    View view(GradingAccess.Seen seen) {
        GradedSet set = seen.set();
        Instant now = clock.instant();
        List<PersonRow> rows = rows(set);
        Map<UUID, String> names = rows.stream().collect(Collectors.toMap(PersonRow::id, PersonRow::name));
        List<Integer> numbers = new ArrayList<>();
        for (int number = 1; number <= set.items(); number++) {
            numbers.add(number);
        }
        return new View(
                set,
                seen.cohort(),
                now,
                SetLists.state(set, now),
                set.lines().stream()
                        .map(line -> editor.title(line) + ": " + line.weight() + " each")
                        .toList(),
                numbers,
                rows,
                latest(sets.extensions(set.id())).stream()
                        .map(one -> new ExtensionLine(
                                names.getOrDefault(one.person(), "Somebody who left"),
                                one.closesAt(),
                                one.reason(),
                                one.freshTry()))
                        .toList());
    }

    /** The last extension of each person, which is the one that counts. */
    private static List<SetStore.Extension> latest(List<SetStore.Extension> extensions) {
        Map<UUID, SetStore.Extension> last = new LinkedHashMap<>();
        extensions.forEach(one -> last.put(one.person(), one));
        return List.copyOf(last.values());
    }

    /** Everybody who learns in the cohort now or has worked the set, by name. */
    List<PersonRow> rows(GradedSet set) {
        Map<UUID, PersonView> persons = new LinkedHashMap<>();
        people.learnersOf(set.cohort()).forEach(person -> persons.put(person.id(), person));
        List<UUID> here = List.copyOf(persons.keySet());
        Map<UUID, List<Work>> tries = works.ofSet(set.id()).stream().collect(Collectors.groupingBy(Work::person));
        tries.keySet().stream()
                .filter(person -> !persons.containsKey(person))
                .map(people::find)
                .flatMap(Optional::stream)
                .forEach(person -> persons.put(person.id(), person));
        return persons.values().stream()
                .map(person -> new PersonRow(
                        person.id(),
                        person.displayName(),
                        person.signInName(),
                        here.contains(person.id()),
                        rows(set, tries.getOrDefault(person.id(), List.of()))))
                .sorted(Comparator.comparing(PersonRow::name, String.CASE_INSENSITIVE_ORDER)
                        .thenComparing(PersonRow::id))
                .toList();
    }

    private List<TryRow> rows(GradedSet set, List<Work> tries) {
        Optional<Work> best = tries.stream()
                .max(Comparator.comparing(parts::score)
                        .thenComparing(Comparator.comparingInt(Work::nth).reversed()));
        return tries.stream()
                .map(work -> row(set, work, tries.size() > 1 && work.equals(best.orElseThrow())))
                .toList();
    }

    private TryRow row(GradedSet set, Work work, boolean best) {
        DecimalMark mark = school.decimalMark();
        Score score = parts.score(work);
        return new TryRow(
                work,
                work.handedInAt() != null && work.handedInAt().isAfter(set.closesAt()),
                work.items().stream().map(item -> cell(item, mark)).toList(),
                work.items().stream()
                        .map(item -> Score.written(Score.of(item, parts.parts(item))))
                        .toList(),
                score,
                score.words(mark),
                Score.text(score.percent(), mark) + " %",
                best);
    }

    private Cell cell(Work.Item item, DecimalMark mark) {
        int count = parts.parts(item);
        Rational points = Score.of(item, count);
        String icon;
        if (item.answers().isEmpty() && item.changes().isEmpty()) {
            icon = "none";
        } else if (points.signum() == 0) {
            icon = "wrong";
        } else {
            icon = points.compareTo(Rational.of(item.weight())) == 0 ? "right" : "slip";
        }
        return new Cell(
                item.number(),
                Score.text(Score.written(points), mark),
                icon,
                !item.changes().isEmpty());
    }

    /** Whether somebody has handed in as many tries as there are. */
    private boolean isDone(GradedSet set, UUID person) {
        long handedIn = works.of(set.id(), person).stream()
                .filter(work -> !work.isOpen())
                .count();
        return handedIn >= TryRule.tries(set, sets.extensions(set.id()), person);
    }

    /** Gives somebody more time, or says what is wrong with it. */
    List<Problem> extend(GradedSet set, ManageForm form, UUID by) {
        List<Problem> problems = new ArrayList<>();
        Optional<PersonView> person = people.learnersOf(set.cohort()).stream()
                .filter(one -> one.id().toString().equals(form.person))
                .findFirst();
        if (person.isEmpty()) {
            problems.add(new Problem("person", "Pick somebody of the cohort from the list."));
        } else if (person.get().id().equals(by)) {
            problems.add(new Problem("person", "Somebody else has to give you more time."));
        } else if (isDone(set, person.get().id())) {
            problems.add(new Problem(
                    "person", person.get().displayName() + " has handed in every try; more time changes nothing."));
        }
        Optional<LocalDate> day = SchoolMoments.day(form.untilDay);
        Optional<LocalTime> time = SchoolMoments.time(form.untilTime);
        if (day.isEmpty()) {
            problems.add(new Problem("until-day", SchoolMoments.DAY_WANTED));
        }
        if (time.isEmpty()) {
            problems.add(new Problem("until-time", "Write the time of day as hours:minutes, such as 18:30."));
        }
        Instant until = null;
        if (day.isPresent() && time.isPresent()) {
            LocalDateTime local = day.get().atTime(time.get());
            SchoolMoments.problem(local, school.zone())
                    .ifPresent(message -> problems.add(new Problem("until-time", message)));
            until = SchoolMoments.closing(local, school.zone());
            if (!until.isAfter(set.closesAt())) {
                problems.add(new Problem("until-day", "This is no later than the set closes for everybody."));
            } else if (!until.isAfter(clock.instant())) {
                problems.add(new Problem("until-day", "This moment is past. Give a later day or time."));
            }
        }
        problems.addAll(Reasons.problems("extension-reason", form.extensionReason));
        if (!set.isPublished()) {
            problems.add(new Problem("", "The set was withdrawn; more time changes nothing."));
        }
        if (problems.isEmpty()) {
            desk.extend(set, person.orElseThrow().id(), until, form.extensionReason.strip(), by);
        }
        return List.copyOf(problems);
    }
}
