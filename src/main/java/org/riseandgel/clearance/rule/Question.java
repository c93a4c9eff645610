package org.riseandgel.clearance.rule;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import java.util.UUID;

/** May this person do these tasks with this substance, in this form, in this room? */
public record Question(UUID person, Substance substance, Form form, String room, Set<Task> tasks) {
    public Question {
        if (person == null || substance == null || form == null || room == null || tasks == null || tasks.isEmpty()) {
            throw new IllegalArgumentException("A question names a person, a substance, its form, a room and a task.");
        }
        tasks = Collections.unmodifiableSet(EnumSet.copyOf(tasks));
    }

    /** The question about everything in a scope. */
    public static Question about(UUID person, Scope scope) {
        return new Question(person, scope.substance(), scope.form(), scope.room(), scope.tasks());
    }

    /** The question about one task of a scope. */
    public static Question about(UUID person, Scope scope, Task task) {
        return new Question(person, scope.substance(), scope.form(), scope.room(), Set.of(task));
    }

    /** The same question about another person. */
    public Question by(UUID other) {
        return new Question(other, substance, form, room, tasks);
    }
}
