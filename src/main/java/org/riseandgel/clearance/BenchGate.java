package org.riseandgel.clearance;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jboss.logging.Logger;
import org.riseandgel.account.People;
import org.riseandgel.account.PersonView;
import org.riseandgel.clearance.rule.Form;
import org.riseandgel.clearance.rule.Reason;
import org.riseandgel.clearance.rule.Scope;
import org.riseandgel.clearance.rule.Status;
import org.riseandgel.clearance.rule.Task;

/**
 * May somebody begin what is done at the bench with the salt itself? The register is asked each time, and each question is
 * written down. Whatever goes wrong on the way, the answer is no.
 */
@ApplicationScoped
public class BenchGate {
    private static final Logger LOG = Logger.getLogger(BenchGate.class);

    private final Register register;
    private final RegisterCheck check;
    private final People people;

    BenchGate(Register register, RegisterCheck check, People people) {
        this.register = register;
        this.check = check;
        this.people = people;
    }

    /**
     * The answer for all of the tasks together.
     *
     * @param room where it holds and nowhere else; empty when it is a no and no room is concerned
     * @param tasks what is asked about, in words
     * @param why the first reason against it, in words; empty when there is none
     * @param supervisor who has to be there; empty unless supervised only
     * @param through the last day of the clearance; null when it is a no
     */
    public record Told(
            Status status,
            String room,
            String tasks,
            String why,
            String supervisor,
            LocalDate through,
            boolean singleInstructor) {
        /** Whether they may do it by themselves. */
        public boolean isCleared() {
            return status == Status.CLEARED;
        }

        /** Whether they may do it only while a named person is there. */
        public boolean isSupervised() {
            return status == Status.SUPERVISED_ONLY;
        }

        /** Whether they may not do it at all. */
        public boolean isNo() {
            return status == Status.NOT_CLEARED;
        }
    }

    /** Somebody who is cleared for all of it today, and where. */
    public record Cleared(String name, String room) {}

    private record Found(Told told, Reason reason) {}

    /** Asks about every room in which all of this is done with this form of the salt, and gives the best answer. */
    public Told ask(UUID person, Form form, Set<Task> tasks) {
        try {
            List<Scope> scopes = register.scopes().stream()
                    .filter(scope -> scope.form() == form)
                    .toList();
            return scopes.stream()
                    .map(Place::of)
                    .distinct()
                    .filter(place -> tasks.stream().allMatch(task -> isDone(task, place, scopes)))
                    .map(place -> at(person, place, tasks))
                    .min(Comparator.comparing((Found found) -> found.told().status())
                            .thenComparing(Found::reason, Comparator.nullsFirst(Comparator.reverseOrder()))
                            .thenComparing(found -> found.told().room()))
                    .map(Found::told)
                    .orElseGet(() -> no("", tasks, Words.of(Reason.NO_SUCH_SCOPE)));
        } catch (RuntimeException e) {
            LOG.error("The register could not be asked for the bench; the answer was no", e);
            return no("", tasks, Words.of(Reason.UNREADABLE));
        }
    }

    /** Who is cleared today for all of these tasks, by name; nobody when the register cannot be read. */
    public List<Cleared> whoMay(Form form, Set<Task> tasks) {
        try {
            return register.board(null, null).rows().stream()
                    .filter(row -> row.standing().status() == Status.CLEARED)
                    .filter(row -> isFor(row.scope(), form, tasks))
                    .map(row -> new Cleared(row.name(), row.scope().room()))
                    .distinct()
                    .sorted(Comparator.comparing(Cleared::name).thenComparing(Cleared::room))
                    .toList();
        } catch (RuntimeException e) {
            LOG.error("The register could not be read; nobody was named", e);
            return List.of();
        }
    }

    private static boolean isDone(Task task, Place place, List<Scope> scopes) {
        return scopes.stream()
                .anyMatch(
                        scope -> scope.tasks().contains(task) && Place.of(scope).equals(place));
    }

    private static boolean isFor(Scope scope, Form form, Set<Task> tasks) {
        return scope.form() == form && scope.tasks().containsAll(tasks);
    }

    /** The answer for one place: the worst of its tasks. */
    private Found at(UUID person, Place place, Set<Task> tasks) {
        List<RegisterCheck.CheckAnswer> answers = tasks.stream()
                .map(task -> check.ask(person, person, place, task))
                .toList();
        RegisterCheck.CheckAnswer worst = answers.stream()
                .max(Comparator.comparing(RegisterCheck.CheckAnswer::status)
                        .thenComparing(
                                RegisterCheck.CheckAnswer::reason,
                                Comparator.nullsFirst(Comparator.<Reason>reverseOrder())))
                .orElseThrow();
        if (worst.status() == Status.NOT_CLEARED) {
            return new Found(no(place.room(), tasks, worst.words()), worst.reason());
        }
        String supervisor = Optional.ofNullable(worst.supervisor())
                .flatMap(people::find)
                .map(PersonView::displayName)
                .orElse("the named supervisor");
        return new Found(
                new Told(
                        worst.status(),
                        place.room(),
                        words(tasks),
                        "",
                        worst.status() == Status.SUPERVISED_ONLY ? supervisor : "",
                        answers.stream()
                                .map(RegisterCheck.CheckAnswer::validThrough)
                                .filter(Objects::nonNull)
                                .min(Comparator.naturalOrder())
                                .orElse(null),
                        worst.singleInstructor()),
                null);
    }

    private static Told no(String room, Set<Task> tasks, String why) {
        return new Told(Status.NOT_CLEARED, room, words(tasks), why, "", null, false);
    }

    private static String words(Set<Task> tasks) {
        return tasks.stream()
                .sorted()
                .map(task -> TaskWords.of(task).toLowerCase(Locale.ROOT))
                .collect(Collectors.joining(", "));
    }
}
