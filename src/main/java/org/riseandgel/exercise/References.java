package org.riseandgel.exercise;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.riseandgel.bench.Result;
import org.riseandgel.exercise.ExerciseTemplate.WorkUse;

/** Finds what a reference to a work's result means. */
final class References {
    private References() {}

    /** The declared result. */
    static Optional<Result> result(List<WorkUse> works, ValueRef.OfResult ref) {
        return work(works, ref.work()).flatMap(work -> work.calculation().results().stream()
                .filter(result -> result.name().equals(ref.name()))
                .findFirst());
    }

    /** The work of that name. */
    static Optional<WorkUse> work(List<WorkUse> works, String name) {
        return works.stream().filter(work -> work.name().equals(name)).findFirst();
    }

    /** All results that can be referred to, as they are written. */
    static List<String> results(List<WorkUse> works) {
        List<String> all = new ArrayList<>();
        for (WorkUse work : works) {
            work.calculation().results().forEach(result -> all.add(work.name() + "." + result.name()));
        }
        return all;
    }
}
