package org.riseandgel.course;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.riseandgel.bench.Catalogue;
import org.riseandgel.exercise.Problems;

/** Reads one lesson file: the values between its two lines of hyphens, then its text. */
final class LessonReader {
    private static final String FENCE = "---\n";
    private static final int FEWEST_OBJECTIVES = 1;
    private static final int MOST_OBJECTIVES = 8;

    private final LessonKey key;
    private final CourseNames names;
    private final Problems problems;

    private LessonReader(LessonKey key, CourseNames names, Problems problems) {
        this.key = key;
        this.names = names;
        this.problems = problems;
    }

    /** A lesson and its links, which can be checked only when all lessons are known. */
    record Draft(Lesson lesson, List<LinkUse> links, Problems problems) {}

    static Optional<Draft> read(
            LessonKey key,
            String text,
            CourseNames names,
            BodyReader.FiguresOfStage figures,
            Catalogue catalogue,
            Problems problems) {
        return new LessonReader(key, names, problems).draft(text.replace("\r\n", "\n"), figures, catalogue);
    }

    private Optional<Draft> draft(String text, BodyReader.FiguresOfStage figures, Catalogue catalogue) {
        int end = text.startsWith(FENCE) ? text.indexOf("\n" + FENCE, FENCE.length() - 1) : -1;
        if (end < 0) {
            problems.add(1, "front matter", "is missing; begin with a line ---, the values, and a second line ---");
            return Optional.empty();
        }
        String front = text.substring(FENCE.length(), end + 1);
        String body = text.substring(end + 1 + FENCE.length());
        int linesBefore =
                (int) text.substring(0, text.length() - body.length()).lines().count();
        BodyReader.Draft read = BodyReader.read(body, linesBefore, figures, catalogue, problems);
        return Fields.read(front, 1, "front matter", problems)
                .map(fields -> new Draft(lesson(fields, read.body()), read.links(), problems));
    }

    private Lesson lesson(Fields fields, LessonBody body) {
        boolean hazard = fields.flag("hazard");
        Lesson lesson = new Lesson(
                key,
                fields.text("title"),
                fields.whole("minutes", 1, 90),
                objectives(fields),
                CourseParser.knownSkills(fields, "skills", names.skills(), problems),
                CourseParser.knownSkills(fields, "practice", names.skills(), problems),
                sources(fields),
                recall(fields, hazard),
                QuestionReader.read(fields, "self-check", key, names.objectives()),
                body);
        fields.noOthers();
        return lesson;
    }

    private static List<String> objectives(Fields fields) {
        List<String> objectives = texts(fields, "objectives");
        if (!fields.isMissing("objectives")
                && (objectives.size() < FEWEST_OBJECTIVES || objectives.size() > MOST_OBJECTIVES)) {
            fields.problem(
                    "objectives",
                    "has %d objectives, must have %d to %d"
                            .formatted(objectives.size(), FEWEST_OBJECTIVES, MOST_OBJECTIVES));
        }
        return objectives;
    }

    private static List<String> sources(Fields fields) {
        List<String> sources = texts(fields, "sources");
        if (!fields.isMissing("sources") && sources.isEmpty()) {
            fields.problem("sources", "names no source; name it, or write “common practice, no source”");
        }
        for (String source : sources) {
            String small = source.toLowerCase(Locale.ROOT);
            if (small.equals("unknown") || small.equals("none") || small.equals("internet")) {
                fields.problem("sources", "“" + source + "” names no source; write “common practice, no source”");
            }
        }
        return sources;
    }

    private List<Question> recall(Fields fields, boolean hazard) {
        if (fields.isMissing("recall") && !hazard) {
            return new ArrayList<>();
        }
        return QuestionReader.read(fields, "recall", key, names.objectives());
    }

    private static List<String> texts(Fields fields, String name) {
        return fields.texts(name).stream().map(Fields.Line::text).toList();
    }
}
