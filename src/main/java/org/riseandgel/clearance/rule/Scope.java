package org.riseandgel.clearance.rule;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import java.util.UUID;

/**
 * What a clearance is for: one substance in one form, some tasks, one room. There is no clearance for everything.
 *
 * @param respirator whether the work in this scope needs a respirator
 */
public record Scope(
        UUID id, String title, Substance substance, Form form, Set<Task> tasks, String room, boolean respirator) {
    public Scope {
        Text.need("title", title);
        Text.need("room", room);
        if (id == null || substance == null || form == null || tasks == null || tasks.isEmpty()) {
            throw new IllegalArgumentException("A scope names a substance, its form and at least one task.");
        }
        tasks = Collections.unmodifiableSet(EnumSet.copyOf(tasks));
    }

    /** Whether all that is asked lies in this scope. */
    public boolean covers(Question question) {
        return samePlace(question) && tasks.containsAll(question.tasks());
    }

    /** Whether any of what is asked lies in this scope. */
    public boolean touches(Question question) {
        return samePlace(question) && question.tasks().stream().anyMatch(tasks::contains);
    }

    private boolean samePlace(Question question) {
        return substance.equals(question.substance()) && form == question.form() && room.equals(question.room());
    }
}
