package org.riseandgel.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.quarkus.runtime.PreventFurtherStepsException;
import io.quarkus.runtime.StartupEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.riseandgel.exercise.ContentProblem;
import org.riseandgel.platform.content.ContentSource;

/** The school's own folder, changed while the program runs. */
class CourseContentTest {
    private static final long SECOND = 1_000_000_000L;

    @TempDir
    Path root;

    private final AtomicLong nanos = new AtomicLong();
    private CourseContent content;

    @BeforeEach
    void soundFolder() throws IOException {
        for (Map.Entry<String, String> file : SampleCourse.sound().files().entrySet()) {
            write(file.getKey(), file.getValue());
        }
        content = new CourseContent(new ContentSource(Optional.of(root.toString())), nanos::get);
    }

    @Test
    void aChangedLessonIsSeenAtTheNextLook() throws IOException {
        assertThat(title()).isEqualTo("Rising");
        rewrite(SampleCourse.LESSON, "title: Rising", "title: Rising on and on");
        assertThat(title()).isEqualTo("Rising");
        nanos.addAndGet(SECOND);
        assertThat(title()).isEqualTo("Rising on and on");
    }

    @Test
    void anAddedLessonIsSeen() throws IOException {
        content.current();
        write("lessons/01-foam/03-falling.md", Files.readString(root.resolve(SampleCourse.SECOND)));
        rewrite(SampleCourse.COURSE, "02-standing]", "02-standing, 03-falling]");
        nanos.addAndGet(SECOND);
        assertThat(content.lesson("01-foam", "03-falling")).isPresent();
    }

    @Test
    void anAddedExerciseIsSeen() throws IOException {
        assertThat(content.exercises().all()).hasSize(1);
        String text = Files.readString(root.resolve(SampleCourse.EXERCISE));
        write("exercises/rising/mug-of-foam.yaml", text.replace("id: cup-of-foam", "id: mug-of-foam"));
        nanos.addAndGet(SECOND);
        assertThat(content.exercises().find("mug-of-foam")).isPresent();
    }

    @Test
    void brokenFilesLeaveTheLastGoodContentAndAreTold() throws IOException {
        Content good = content.current();
        rewrite(SampleCourse.LESSON, "minutes: 5", "minutes: many");
        nanos.addAndGet(SECOND);
        assertThat(content.current()).isSameAs(good);
        assertThat(content.problems())
                .containsExactly(new ContentProblem(
                        SampleCourse.LESSON, 3, "minutes", "Is “many”, must be a whole number from 1 to 90."));
        nanos.addAndGet(SECOND);
        assertThat(content.current()).isSameAs(good);
        assertThat(content.problems()).hasSize(1);
    }

    @Test
    void mendedFilesAreTakenAndTheProblemsGo() throws IOException {
        content.current();
        rewrite(SampleCourse.LESSON, "minutes: 5", "minutes: many");
        nanos.addAndGet(SECOND);
        content.current();
        rewrite(SampleCourse.LESSON, "minutes: many", "minutes: 12");
        nanos.addAndGet(SECOND);
        assertThat(content.lesson("01-foam", "01-rising").orElseThrow().minutes())
                .isEqualTo(12);
        assertThat(content.problems()).isEmpty();
    }

    @Test
    void aFolderThatGoesAwayLeavesTheLastGoodContent() throws IOException {
        Content good = content.current();
        Files.move(root.resolve("lessons"), root.resolve("gone"));
        nanos.addAndGet(SECOND);
        assertThat(content.current()).isSameAs(good);
        assertThat(content.problems()).isNotEmpty();
    }

    @Test
    void unchangedFilesAreNotReadAgain() {
        Content first = content.current();
        nanos.addAndGet(10 * SECOND);
        assertThat(content.current()).isSameAs(first);
    }

    @Test
    void brokenFilesAtTheStartAreRefusedAllAtOnce() throws IOException {
        rewrite(SampleCourse.LESSON, "minutes: 5", "minutes: many");
        rewrite(SampleCourse.SECOND, "alt: A cup, wider at the top.\n", "");
        assertThatThrownBy(content::current)
                .isInstanceOf(BrokenContentException.class)
                .hasMessageContaining("Problems found: 2.")
                .hasMessageContaining(SampleCourse.LESSON + ":3 minutes: Is “many”")
                .hasMessageContaining(SampleCourse.SECOND + ":33 alt: Is missing");
    }

    @Test
    void brokenFilesEndTheStartWithTheProblemsAndNothingElse() throws IOException {
        rewrite(SampleCourse.LESSON, "minutes: 5", "minutes: many");
        assertThatThrownBy(() -> content.start(new StartupEvent()))
                .isInstanceOf(PreventFurtherStepsException.class)
                .hasNoCause()
                .hasMessageContaining(SampleCourse.LESSON + ":3 minutes: Is “many”")
                .extracting(e -> ((PreventFurtherStepsException) e).getExitCode())
                .isEqualTo(1);
    }

    private String title() {
        return content.lesson("01-foam", "01-rising").orElseThrow().title();
    }

    private void rewrite(String path, String from, String to) throws IOException {
        String text = Files.readString(root.resolve(path));
        assertThat(text).contains(from);
        write(path, text.replace(from, to));
    }

    private void write(String path, String text) throws IOException {
        Path file = root.resolve(path);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }
}
