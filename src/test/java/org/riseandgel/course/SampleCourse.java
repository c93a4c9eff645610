package org.riseandgel.course;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.riseandgel.bench.Catalogue;
import org.riseandgel.exercise.ContentProblem;
import org.riseandgel.platform.content.ContentFile;
import org.riseandgel.platform.content.ContentFiles;

/** A small sound course in memory, to be broken in one place by a test. */
final class SampleCourse {
    static final String COURSE = "lessons/course.yaml";
    static final String LESSON = "lessons/01-foam/01-rising.md";
    static final String SECOND = "lessons/01-foam/02-standing.md";
    static final String FIGURE = "lessons/01-foam/cup.svg";
    static final String EXERCISE = "exercises/rising/cup-of-foam.yaml";

    private final Map<String, String> files = new TreeMap<>();

    static SampleCourse sound() {
        SampleCourse course = new SampleCourse();
        course.files.put(COURSE, COURSE_TEXT);
        course.files.put(FIGURE, FIGURE_TEXT);
        course.files.put(LESSON, lesson());
        course.files.put(SECOND, lesson().replace("title: Rising", "title: Standing"));
        course.files.put(EXERCISE, EXERCISE_TEXT);
        return course;
    }

    SampleCourse with(String path, String text) {
        files.put(path, text);
        return this;
    }

    SampleCourse without(String path) {
        files.remove(path);
        return this;
    }

    /** The course with one piece of one file replaced, which must be there. */
    SampleCourse changed(String path, String from, String to) {
        String text = files.get(path);
        if (!text.contains(from)) {
            throw new IllegalArgumentException(path + " does not contain: " + from);
        }
        return with(path, text.replace(from, to));
    }

    /** The line on which a piece of text stands, counted from 1. */
    int lineOf(String path, String piece) {
        String text = files.get(path);
        return (int) text.substring(0, text.indexOf(piece))
                        .chars()
                        .filter(c -> c == '\n')
                        .count()
                + 1;
    }

    Map<String, String> files() {
        return files;
    }

    ContentLoader.Loaded load() {
        List<ContentFile> all = files.entrySet().stream()
                .map(file -> new ContentFile(file.getKey(), file.getValue()))
                .toList();
        return ContentLoader.load(new ContentFiles(all, List.of()), Catalogue.standard());
    }

    List<String> problems() {
        return load().problems().stream().map(ContentProblem::toString).toList();
    }

    Lesson firstLesson() {
        ContentLoader.Loaded loaded = load();
        if (!loaded.problems().isEmpty()) {
            throw new AssertionError(loaded.problems().toString());
        }
        return loaded.content().lesson("01-foam", "01-rising").orElseThrow();
    }

    private static String lesson() {
        return LESSON_TEXT.replace("FILLER", ("Foam rises while the whisk turns. ".repeat(110)).strip());
    }

    private static final String COURSE_TEXT =
            """
            stages:
              - id: 01-foam
                number: 1
                title: Foam
                summary: How foam rises.
                lessons: [01-rising, 02-standing]
                gate-skills: [rising]
              - id: 02-later
                number: 2
                title: Later
                summary: Not yet.
                lessons: []
                gate-skills: []
            skills:
              - { id: rising, title: Rising, stage: 01-foam, about: How far it rose. }
            """;

    private static final String FIGURE_TEXT =
            """
            <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 640 360">
              <!-- a cup -->
              <path class="f-line" d="M10 10 L20 200 L90 200 L100 10"/>
              <text class="f-text" x="50" y="100" font-size="15" text-anchor="middle">a &amp; b</text>
            </svg>
            """;

    private static final String LESSON_TEXT =
            """
            ---
            title: Rising
            minutes: 5
            objectives:
              - Say how far a foam rose
            skills: [rising]
            practice: [rising]
            sources:
              - common practice, no source
            self-check:
              - question: What is a ratio of 4?
                options:
                  - { text: Four times the liquid, right: true, why: Yes. }
                  - { text: Four times the air, why: That counts air only. }
                  - { text: A quarter, why: That is turned round. }
                  - { text: Four cups, why: A ratio has no unit. }
              - question: What comes off first?
                options:
                  - { text: The foam, why: It stays. }
                  - { text: The cup, right: true, why: Yes. }
                  - { text: The lid, why: There is none. }
                  - { text: The label, why: It weighs nothing. }
              - question: What does the whisk bring in?
                options:
                  - { text: Air, right: true, why: Yes. }
                  - { text: Water, why: None. }
                  - { text: Soap, why: It was in. }
                  - { text: Salt, why: None. }
            ---
            FILLER

            ```figure
            file: cup.svg
            title: A cup <cut> open
            alt: A cup, wider at the top.
            ```

            ## The cup

            ```worked
            name: cup
            calculation: foam-density
            title: One cup of foam
            story: A troll's cheek.
            inputs:
              emptyCup: 8.4 g
              fullCup: 33.9 g
              cupVolume: 100 mL
              liquidDensity: 1.02 g/mL
            results: [foamDensity, expansion]
            ```

            It weighs {{cup.foamDensity}}, so its ratio is {{cup.expansion}}.

            See [practice](skill:rising), [the sheet](bench:foam-density), [the cup](#the-cup),
            [the next lesson](02-standing.md) and [its cup](02-standing.md#the-cup).

            | time | ratio |
            | ---- | ----- |
            | 1 min | 2 |

            ```caution
            word: CAUTION
            title: Splashes & drops
            text: Foam could *sting* in an eye.
            ```

            ```aside
            title: Why
            text: |
              Air is **light**.
            ```
            """;

    private static final String EXERCISE_TEXT =
            """
            id: cup-of-foam
            title: A cup of foam
            skill: rising
            level: 2
            kind: numeric
            story: A cup of {volume} weighs {empty} empty and {full} full. The liquid has {liquid}.
            draw:
              volume: { choices: [100, 150], unit: mL }
              empty: { from: 8, to: 12, step: 0.5, unit: g }
              full: { from: 35, to: 60, step: 0.5, unit: g }
              liquid: { fixed: 1.02, unit: g/mL }
            work:
              foam:
                calculation: foam-density
                inputs: { emptyCup: empty, fullCup: full, cupVolume: volume, liquidDensity: liquid }
            ask:
              - part: density
                prompt: What is the density of the foam?
                of: foam.foamDensity
                unit: g/mL
                tolerance: { percent: 1, because: a balance reads a tenth of a gram }
                readability: 0.001
            slips: [tare-left-in]
            hints:
              - The cup itself is no foam.
            source: common practice, no source
            """;
}
