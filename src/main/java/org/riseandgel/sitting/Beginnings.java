package org.riseandgel.sitting;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.riseandgel.course.Check;
import org.riseandgel.course.Content;
import org.riseandgel.course.CourseContent;
import org.riseandgel.exercise.ExerciseTemplate;
import org.riseandgel.platform.school.SchoolSettings;

/** Draws a sitting and stores it with the text of every exercise in it, in the transaction of the caller. */
@ApplicationScoped
class Beginnings {
    private final SittingStore store;
    private final Forms forms;
    private final CourseContent content;
    private final SchoolSettings school;

    Beginnings(SittingStore store, Forms forms, CourseContent content, SchoolSettings school) {
        this.store = store;
        this.forms = forms;
        this.content = content;
        this.school = school;
    }

    /** The new sitting; empty, and nothing stored, when there is an open one or one of that day. */
    Optional<StoredSitting> of(UUID person, Check check, long seed, Instant now) {
        Content current = content.current();
        StoredSitting sitting = new StoredSitting(
                UUID.randomUUID(),
                person,
                check.id(),
                check.title(),
                Digests.poolVersion(check, current.exercises()),
                check.pass(),
                seed,
                LocalDate.ofInstant(now, school.zone()),
                now,
                null,
                forms.draw(check, current.exercises(), store.asked(person, check.id()), seed));
        if (!store.add(sitting)) {
            return Optional.empty();
        }
        for (StoredItem item : sitting.items()) {
            ExerciseTemplate template =
                    current.exercises().find(item.exercise()).orElseThrow();
            store.add(sitting.id(), item, template.file().text(), now);
        }
        return Optional.of(sitting);
    }
}
