package org.riseandgel.course;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Reads the recall questions of a lesson and puts their options in an order that tells nothing about the right one. */
final class QuestionReader {
    private static final int OPTIONS = 4;
    private static final int FEWEST = 3;
    private static final int MOST = 6;

    private final String lesson;
    private final List<String> objectives;

    private QuestionReader(String lesson, List<String> objectives) {
        this.lesson = lesson;
        this.objectives = objectives;
    }

    /** The questions in the list of that name, of which there must be three to six. */
    static List<Question> read(Fields fields, String name, LessonKey lesson, List<String> objectives) {
        List<Fields> groups = fields.groups(name);
        if (!fields.isMissing(name) && (groups.size() < FEWEST || groups.size() > MOST)) {
            fields.problem(name, "has %d questions, must have %d to %d".formatted(groups.size(), FEWEST, MOST));
        }
        QuestionReader reader = new QuestionReader(lesson.id() + " " + name, objectives);
        return groups.stream().map(reader::question).toList();
    }

    private Question question(Fields fields) {
        String text = fields.text("question");
        List<Question.Option> options = new ArrayList<>();
        Set<String> texts = new HashSet<>();
        for (Fields group : fields.groups("options")) {
            Question.Option option = new Question.Option(group.text("text"), group.flag("right"), group.text("why"));
            if (!option.text().isEmpty() && !texts.add(option.text())) {
                group.problem("text", "“" + option.text() + "” is offered twice; offer it once");
            }
            group.noOthers();
            options.add(option);
        }
        check(fields, options);
        List<String> hit = CourseParser.knownObjectives(fields, objectives);
        fields.noOthers();
        options.sort(Comparator.comparing(option -> place(text, option)));
        return new Question(text, options, hit);
    }

    private static void check(Fields fields, List<Question.Option> options) {
        if (fields.isMissing("options")) {
            return;
        }
        if (options.size() != OPTIONS) {
            fields.problem("options", "has %d options, must have %d".formatted(options.size(), OPTIONS));
        }
        long right = options.stream().filter(Question.Option::right).count();
        if (right != 1) {
            fields.problem(
                    "options", "marks %d options as right; mark exactly one with “right: true”".formatted(right));
        }
    }

    /** A digest of lesson, question and option: the same for everybody and ever, and blind to what is right. */
    private String place(String question, Question.Option option) {
        String all = lesson + "\n" + question + "\n" + option.text();
        return TextDigest.of(all);
    }
}
