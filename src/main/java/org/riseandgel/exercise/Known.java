package org.riseandgel.exercise;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.riseandgel.bench.Result;
import org.riseandgel.exercise.NumericTemplate.WorkUse;

/**
 * The names that a file has given so far. A name whose own definition is broken is known all the same: its users are not
 * blamed for it.
 */
final class Known {
    private final List<DrawRule> draws = new ArrayList<>();
    private final List<WorkUse> works = new ArrayList<>();
    private final Set<String> drawNames = new LinkedHashSet<>();
    private final Set<String> workNames = new LinkedHashSet<>();

    void addDraw(String name, Optional<DrawRule> rule) {
        drawNames.add(name);
        rule.ifPresent(draws::add);
    }

    void addWork(String name, Optional<WorkUse> work) {
        workNames.add(name);
        work.ifPresent(works::add);
    }

    List<DrawRule> draws() {
        return draws;
    }

    List<WorkUse> works() {
        return works;
    }

    boolean isDrawn(String name) {
        return drawNames.contains(name);
    }

    boolean isWork(String name) {
        return workNames.contains(name);
    }

    /** Whether every name has its definition. */
    boolean isComplete() {
        return draws.size() == drawNames.size() && works.size() == workNames.size();
    }

    Optional<DrawRule> draw(String name) {
        return draws.stream().filter(rule -> rule.name().equals(name)).findFirst();
    }

    Optional<WorkUse> work(String name) {
        return works.stream().filter(work -> work.name().equals(name)).findFirst();
    }

    /** The declared result that a reference means. */
    Optional<Result> result(ValueRef.OfResult ref) {
        return work(ref.work()).flatMap(work -> work.calculation().results().stream()
                .filter(result -> result.name().equals(ref.name()))
                .findFirst());
    }

    /** Whether a reference means something, or would if its work were not broken. */
    boolean has(ValueRef ref) {
        if (ref instanceof ValueRef.Drawn drawn) {
            return isDrawn(drawn.name());
        }
        boolean broken = isWork(((ValueRef.Worked) ref).work())
                && work(((ValueRef.Worked) ref).work()).isEmpty();
        return broken
                || (ref instanceof ValueRef.OfResult result
                        ? result(result).isPresent()
                        : isWork(((ValueRef.OfStep) ref).work()));
    }

    /** The drawn names for a message. */
    String drawWords() {
        return words(drawNames);
    }

    /** Names in a row, "none" when there are none. */
    static String words(Collection<String> names) {
        return names.isEmpty() ? "none" : String.join(", ", names);
    }

    /** All results that can be referred to, as they are written. */
    List<String> results() {
        List<String> all = new ArrayList<>();
        for (WorkUse work : works) {
            work.calculation().results().forEach(result -> all.add(work.name() + "." + result.name()));
        }
        return all;
    }
}
