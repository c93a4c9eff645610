package org.riseandgel.exercise;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Predicate;
import org.riseandgel.core.quantity.DecimalMark;

/** Checks that hold for every draw of every exercise without numbers. */
final class ChoiceJudge {
    private ChoiceJudge() {}

    static void check(DrawnChoice drawn) {
        assertThat(drawn.fault()).isEmpty();
        ReadAnswer right = read(drawn, drawn.right());
        ReadAnswer wrong = read(drawn, drawn.wrong());
        assertThat(verdict(drawn, right)).isEqualTo(Verdict.RIGHT);
        assertThat(verdict(drawn, wrong)).isEqualTo(Verdict.WRONG);
        assertThat(drawn.notes(right.value()))
                .hasSize(drawn.view().rows().size())
                .allMatch(ChoiceNote::agrees);
        assertThat(drawn.notes(wrong.value())).extracting(ChoiceNote::why).doesNotContain("");
        if (drawn instanceof DrawnOptions options) {
            options(options);
        } else if (drawn instanceof DrawnOrder order) {
            order(order);
        } else {
            match((DrawnMatch) drawn);
        }
    }

    private static void options(DrawnOptions drawn) {
        List<OptionsTemplate.Option> shown = drawn.shown();
        assertThat(shown).hasSize(drawn.template().shown()).doesNotHaveDuplicates();
        assertThat(shown).anyMatch(OptionsTemplate.Option::right);
        assertThat(shown).anyMatch(Predicate.not(OptionsTemplate.Option::right));
        for (int place = 0; place < shown.size(); place++) {
            ReadAnswer one = read(drawn, Places.letter(place));
            Judged judged = Answers.judge(drawn, 0, one, DecimalMark.POINT);
            boolean only = drawn.right().equals(Places.letter(place));
            assertThat(judged.verdict().isRight()).isEqualTo(only);
            assertThat(judged.slip().orElse("")).isEqualTo(shown.get(place).slip());
        }
    }

    /** Every single swap of two steps that are not tied is wrong, every swap of two that are is right. */
    private static void order(DrawnOrder drawn) {
        int count = drawn.shown().size();
        assertThat(count).isEqualTo(drawn.template().shown());
        assertThat(drawn.isRight(Places.join(count, Places::number)))
                .as("shown in order")
                .isFalse();
        for (int one = 0; one < count; one++) {
            for (int other = one + 1; other < count; other++) {
                List<String> numbers = new ArrayList<>(Places.of(drawn.right()));
                Collections.swap(numbers, one, other);
                boolean tied = drawn.shown().get(one).place()
                        == drawn.shown().get(other).place();
                assertThat(drawn.isRight(String.join(" ", numbers))).isEqualTo(tied);
            }
        }
    }

    private static void match(DrawnMatch drawn) {
        assertThat(drawn.lefts()).hasSize(drawn.template().shown()).doesNotHaveDuplicates();
        assertThat(drawn.rights())
                .doesNotHaveDuplicates()
                .containsAll(drawn.template().others());
        for (int row = 0; row < drawn.lefts().size(); row++) {
            int wrongRow = row;
            String oneWrong = Places.join(
                    drawn.lefts().size(), place -> Places.of(place == wrongRow ? drawn.wrong() : drawn.right())
                            .get(place));
            assertThat(drawn.isRight(oneWrong)).isFalse();
            assertThat(drawn.notes(oneWrong)).filteredOn(note -> !note.agrees()).hasSize(1);
        }
    }

    private static ReadAnswer read(DrawnChoice drawn, String typed) {
        ReadAnswer read = Answers.read(drawn, 0, typed, DecimalMark.POINT);
        assertThat(read.question()).as(typed).isEmpty();
        assertThat(read.typed()).isEqualTo(typed);
        return read;
    }

    private static Verdict verdict(DrawnChoice drawn, ReadAnswer answer) {
        return Answers.judge(drawn, 0, answer, DecimalMark.POINT).verdict();
    }
}
