package org.riseandgel.course;

import org.commonmark.node.CustomBlock;
import org.riseandgel.exercise.Figure;

/** A special block of a lesson: more than Markdown can say. Knows the line of its file on which it begins. */
abstract sealed class LessonBlock extends CustomBlock {
    private final int line;

    LessonBlock(int line) {
        this.line = line;
    }

    int line() {
        return line;
    }

    /** A drawing with its caption and a text that says all that it says. */
    static final class Drawn extends LessonBlock {
        final Figure figure;
        final String title;
        final String alt;
        final int number;

        Drawn(int line, Figure figure, String title, String alt, int number) {
            super(line);
            this.figure = figure;
            this.title = title;
            this.alt = alt;
            this.number = number;
        }
    }

    /** A calculation worked with given numbers. */
    static final class WorkedOut extends LessonBlock {
        final Worked worked;

        WorkedOut(int line, Worked worked) {
            super(line);
            this.worked = worked;
        }
    }

    /** A signal word with what could happen and what to do; its text is in its children. */
    static final class Warned extends LessonBlock {
        final String word;
        final String title;

        Warned(int line, String word, String title) {
            super(line);
            this.word = word;
            this.title = title;
        }
    }

    /** Depth for the curious; its text is in its children. */
    static final class Beside extends LessonBlock {
        final String title;

        Beside(int line, String title) {
            super(line);
            this.title = title;
        }
    }

    /** A table, which scrolls by itself where the page is too narrow for it. */
    static final class Scrolled extends LessonBlock {
        final String label;

        Scrolled(int line, String label) {
            super(line);
            this.label = label;
        }
    }
}
