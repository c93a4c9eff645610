package org.riseandgel.course;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The two places where a lesson asks: before its text, to wake what is known, and after it. */
enum QuestionKind {
    RECALL("recall", "Before you read"),
    SELF_CHECK("self-check", "Self-check");

    private final String id;
    private final String title;

    QuestionKind(String id, String title) {
        this.id = id;
        this.title = title;
    }

    String id() {
        return id;
    }

    String title() {
        return title;
    }

    List<Question> of(Lesson lesson) {
        return this == RECALL ? lesson.recall() : lesson.selfCheck();
    }

    static Optional<QuestionKind> byId(String id) {
        return Arrays.stream(values()).filter(kind -> kind.id.equals(id)).findFirst();
    }
}
