package org.riseandgel.course;

import io.quarkus.runtime.PreventFurtherStepsException;
import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.LongSupplier;
import org.jboss.logging.Logger;
import org.riseandgel.bench.Catalogue;
import org.riseandgel.exercise.ContentProblem;
import org.riseandgel.exercise.ExerciseLibrary;
import org.riseandgel.platform.content.ContentSource;

/**
 * The one place that holds the current content. Whoever works through a request takes {@link #current()} once, so that
 * all of it comes from the same moment.
 *
 * <p>Broken content stops the start. Later, when a file of the school's own folder changes, the new content takes the
 * place of the old in one step if it has no problem; otherwise the last good content stays and the problems are kept to
 * be shown.
 */
@ApplicationScoped
public class CourseContent {
    private static final Logger LOG = Logger.getLogger(CourseContent.class);
    private static final long LOOK_EVERY_NANOS = 1_000_000_000L;

    private final ContentSource source;
    private final LongSupplier nanos;
    private final Catalogue catalogue = Catalogue.standard();
    private final AtomicReference<Held> held = new AtomicReference<>();
    private final ReentrantLock reloading = new ReentrantLock();

    @Inject
    public CourseContent(ContentSource source) {
        this(source, System::nanoTime);
    }

    CourseContent(ContentSource source, LongSupplier nanos) {
        this.source = source;
        this.nanos = nanos;
    }

    /** What is in use, what is wrong with the newest files, and when and in what state the files were last looked at. */
    private record Held(Content content, List<ContentProblem> problems, String fingerprint, long lookedAt) {
        Held lookedAt(long now) {
            return new Held(content, problems, fingerprint, now);
        }
    }

    /** Ends the start with all problems in plain words, and without a stack trace, which would bury them. */
    void start(@Observes StartupEvent event) {
        try {
            current();
        } catch (BrokenContentException broken) {
            throw new PreventFurtherStepsException(broken.getMessage(), 1);
        }
    }

    /**
     * The content to use now.
     *
     * @throws BrokenContentException when there never was a good one
     */
    public Content current() {
        Held now = held.get();
        if (now == null || nanos.getAsLong() - now.lookedAt >= LOOK_EVERY_NANOS) {
            look();
        }
        return held.get().content;
    }

    /** The stages and skills. */
    public Course course() {
        return current().course();
    }

    /** One lesson. */
    public Optional<Lesson> lesson(String stage, String lesson) {
        return current().lesson(stage, lesson);
    }

    /** All exercises. */
    public ExerciseLibrary exercises() {
        return current().exercises();
    }

    /** All skills, in the order of the course. */
    public List<Skill> skills() {
        return course().skills();
    }

    /** What is wrong with the files as they are now; empty when they are what is in use. */
    public List<ContentProblem> problems() {
        current();
        return held.get().problems;
    }

    /** Which files these are, in words that begin a sentence. */
    public String where() {
        return source.where();
    }

    /** One request looks; others go on with what there is, unless there is nothing yet. */
    private void look() {
        if (held.get() == null) {
            reloading.lock();
        } else if (!reloading.tryLock()) {
            return;
        }
        try {
            lookAlone();
        } finally {
            reloading.unlock();
        }
    }

    private void lookAlone() {
        Held before = held.get();
        long now = nanos.getAsLong();
        String fingerprint = source.fingerprint();
        if (before != null && before.fingerprint.equals(fingerprint)) {
            held.set(before.lookedAt(now));
            return;
        }
        ContentLoader.Loaded loaded = ContentLoader.load(source.read(), catalogue);
        if (loaded.problems().isEmpty()) {
            held.set(new Held(loaded.content(), List.of(), fingerprint, now));
        } else if (before == null) {
            throw new BrokenContentException(source.where(), loaded.problems());
        } else {
            LOG.warnf(
                    "The changed course is not used, the last good one stays:%n%s",
                    BrokenContentException.lines(loaded.problems()));
            held.set(new Held(before.content, loaded.problems(), fingerprint, now));
        }
    }
}
