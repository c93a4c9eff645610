package org.riseandgel.course;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.riseandgel.platform.web.Problem;

/** One form of recall questions: what it is called, its questions, and what somebody has chosen so far. */
public record QuestionSet(String id, String title, String action, List<Asked> asked, List<Problem> problems) {

    /** A question on the form: the name of its field, its options, and what is wrong with the answer, if anything. */
    public record Asked(String field, int number, String text, List<Offered> offered, String error) {}

    /** An option on the form. */
    public record Offered(String control, String value, String text, boolean chosen) {}

    /** A question with what was chosen and what is right. */
    public record Checked(int number, String text, Question.Option chosen, Question.Option rightOption) {
        public boolean isRight() {
            return chosen.right();
        }
    }

    /** The form with nothing chosen. */
    static QuestionSet blank(LessonKey lesson, String id, String title, List<Question> questions) {
        return new Maker(lesson, id, title, questions, Map.of(), false).set();
    }

    /** The form as it was sent, with a problem for each question that has no answer. */
    static QuestionSet sent(
            LessonKey lesson, String id, String title, List<Question> questions, Map<String, String> chosen) {
        return new Maker(lesson, id, title, questions, chosen, true).set();
    }

    /** Each question with its answer; only for a form without problems. */
    List<Checked> checked(List<Question> questions) {
        List<Checked> checked = new ArrayList<>();
        for (int i = 0; i < questions.size(); i++) {
            Question question = questions.get(i);
            Question.Option chosen = chosen(asked.get(i), question);
            checked.add(new Checked(i + 1, question.text(), chosen, question.right()));
        }
        return checked;
    }

    private static Question.Option chosen(Asked asked, Question question) {
        for (int i = 0; i < question.options().size(); i++) {
            if (asked.offered().get(i).chosen()) {
                return question.options().get(i);
            }
        }
        throw new IllegalStateException("question " + asked.number() + " has no answer");
    }

    /** Puts the form together. An option goes by its place on the page, which says nothing about being right. */
    private record Maker(
            LessonKey lesson,
            String id,
            String title,
            List<Question> questions,
            Map<String, String> chosen,
            boolean isSent) {
        QuestionSet set() {
            List<Asked> asked = new ArrayList<>();
            for (Question question : questions) {
                asked.add(asked(asked.size() + 1, question));
            }
            List<Problem> problems = asked.stream()
                    .filter(one -> one.error() != null)
                    .map(one -> new Problem(one.field(), one.error()))
                    .toList();
            return new QuestionSet(id, title, lesson.address() + "/" + id, asked, problems);
        }

        private Asked asked(int number, Question question) {
            String field = id + "-" + number;
            List<Offered> offered = new ArrayList<>();
            for (Question.Option option : question.options()) {
                String value = String.valueOf(offered.size() + 1);
                String control = offered.isEmpty() ? field : field + "-" + value;
                offered.add(new Offered(control, value, option.text(), value.equals(chosen.get(field))));
            }
            boolean missing = isSent && offered.stream().noneMatch(Offered::chosen);
            String error = missing ? "Question " + number + " has no answer yet. Choose one of its answers." : null;
            return new Asked(field, number, question.text(), offered, error);
        }
    }
}
