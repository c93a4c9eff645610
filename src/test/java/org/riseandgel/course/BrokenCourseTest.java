package org.riseandgel.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.riseandgel.course.SampleCourse.LESSON;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Each kind of mistake an author can make is reported once, at its line, with what would be right. */
class BrokenCourseTest {
    @Test
    void aSoundCourseHasNoProblem() {
        assertThat(SampleCourse.sound().problems()).isEmpty();
    }

    static Stream<Arguments> mistakes() {
        return Stream.of(mistake(LESSON, "title: Rising\n", "", "minutes: 5", -1, "x"));
    }

    private static Arguments mistake(String file, String from, String to, String at, int shift, String report) {
        return Arguments.of(file, from, to, at, shift, report);
    }

    @ParameterizedTest
    @MethodSource("mistakes")
    void aMistakeIsReportedExactly(String file, String from, String to, String at, int shift, String report) {
        SampleCourse broken = SampleCourse.sound().changed(file, from, to);
        int line = at.isEmpty() ? 1 : broken.lineOf(file, at) + shift;
        assertThat(broken.problems()).containsExactly(file + ":" + line + " " + report);
    }
}
