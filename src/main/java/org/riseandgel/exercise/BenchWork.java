package org.riseandgel.exercise;

import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * What an exercise has somebody do at the bench with the salt itself. Whoever is not cleared for it is not shown the
 * exercise.
 *
 * @param form the form of the salt
 * @param tasks what is done with it, one at least
 */
public record BenchWork(SaltForm form, Set<SaltTask> tasks) {
    private static final int LONGEST = 20;

    /** The form of the salt. */
    public enum SaltForm {
        POWDER,
        DISPERSION;

        static Optional<SaltForm> byId(String id) {
            return Arrays.stream(values()).filter(one -> id(one).equals(id)).findFirst();
        }
    }

    /** What is done with it. */
    public enum SaltTask {
        STORE,
        WEIGH,
        DISPERSE,
        DOSE,
        CLEAN,
        SPILL,
        WASTE;

        static Optional<SaltTask> byId(String id) {
            return Arrays.stream(values()).filter(one -> id(one).equals(id)).findFirst();
        }
    }

    public BenchWork {
        tasks = Collections.unmodifiableSet(EnumSet.copyOf(tasks));
    }

    static String names(Enum<?>[] all) {
        return String.join(", ", Arrays.stream(all).map(BenchWork::id).toList());
    }

    /** Reads the field; empty, and told, when it is wrong. */
    static Optional<BenchWork> read(Field field) {
        return field.group().flatMap(BenchWork::read);
    }

    private static Optional<BenchWork> read(Fields group) {
        group.only("form", "tasks");
        Optional<SaltForm> form = group.need("form").flatMap(field -> {
            Optional<String> id = field.text(LONGEST);
            Optional<SaltForm> found = id.flatMap(SaltForm::byId);
            id.filter(one -> found.isEmpty())
                    .ifPresent(one ->
                            field.problem("Is “%s”; the forms are %s.".formatted(one, names(SaltForm.values()))));
            return found;
        });
        List<Field> named = group.need("tasks")
                .map(field -> field.list(SaltTask.values().length))
                .orElse(List.of());
        List<SaltTask> tasks =
                named.stream().map(BenchWork::task).flatMap(Optional::stream).toList();
        boolean whole = form.isPresent() && !tasks.isEmpty() && tasks.size() == named.size();
        return whole ? Optional.of(new BenchWork(form.get(), EnumSet.copyOf(tasks))) : Optional.empty();
    }

    private static Optional<SaltTask> task(Field field) {
        Optional<String> id = field.text(LONGEST);
        Optional<SaltTask> found = id.flatMap(SaltTask::byId);
        id.filter(one -> found.isEmpty())
                .ifPresent(one -> field.problem("Is “%s”; the tasks are %s.".formatted(one, names(SaltTask.values()))));
        return found;
    }

    private static String id(Enum<?> one) {
        return one.name().toLowerCase(Locale.ROOT);
    }
}
