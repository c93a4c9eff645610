package org.riseandgel.exercise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.riseandgel.bench.Slip;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.NumberReader;
import org.riseandgel.core.quantity.Reading;

class PublicViewTest {
    /** Whatever a page can print is in the text form of the record; no answer still to come may be in it. */
    @ParameterizedTest
    @MethodSource("org.riseandgel.exercise.Samples#ids")
    void givesNothingAway(String id) {
        NumericTemplate template = Samples.template("/" + id);
        for (long seed = 1_000_000; seed < 1_000_300; seed++) {
            DrawnNumbers drawn = Samples.LIBRARY.drawer().draw(template, seed);
            List<FeedbackView> earlier = new ArrayList<>();
            for (int part = 0; part < drawn.parts().size(); part++) {
                for (DecimalMark mark : DecimalMark.values()) {
                    PublicView view = PublicView.of(drawn, part, mark, earlier, 5);
                    checkNothingToCome(drawn, part, view.toString(), mark);
                }
                earlier.add(answered(drawn, part));
            }
        }
    }

    private static void checkNothingToCome(DrawnNumbers drawn, int from, String shown, DecimalMark mark) {
        assertThat(shown).doesNotContain(Long.toString(drawn.seed()), Long.toHexString(drawn.seed()));
        for (int part = from; part < drawn.parts().size(); part++) {
            DrawnPart asked = drawn.part(part);
            String exact = asked.expected().toDecimal(12).toPlainString().replace('.', mark.mark());
            assertThat(shown).doesNotContain(exact.substring(0, Math.min(6, exact.length())));
            String rounded = Feedback.rounded(
                    asked.expected(), asked.part().readability(), asked.part().unit(), mark);
            assertThat(shown.matches("(?s).*(?<![0-9.,])" + java.util.regex.Pattern.quote(rounded) + "(?![0-9]).*"))
                    .as("%s in %s", rounded, shown)
                    .isFalse();
            if (part > from) {
                assertThat(shown).doesNotContain(drawn.prompt(part, mark));
            }
        }
        for (Slip slip : drawn.template().slips()) {
            assertThat(shown).doesNotContain(slip.id(), slip.title());
        }
    }

    @Test
    void theToleranceDoesNotLetAnybodyWorkBack() {
        List<String> words = new ArrayList<>();
        for (long seed = 0; seed < 50; seed++) {
            words.add(PublicView.of(Samples.draw(Samples.CARD, seed), 0, DecimalMark.POINT, List.of(), 0)
                    .tolerance());
        }
        assertThat(words).containsOnly("within 0.5\u00a0%, or 0.05\u00a0g if that is more");
    }

    @Test
    void showsWhatIsNeededToAnswer() {
        DrawnNumbers drawn = Samples.draw(Samples.CUP, 4);
        PublicView view = PublicView.of(drawn, 0, DecimalMark.COMMA, List.of(), 0);
        assertThat(view.story()).isEqualTo(drawn.story(DecimalMark.COMMA));
        assertThat(view.prompt()).isEqualTo("What is the density of the foam?");
        assertThat(view.parts()).isEqualTo(2);
        assertThat(view.wanted()).isEqualTo("a density with its unit, such as 12\u00a0g/mL");
        assertThat(view.needsUnit()).isTrue();
        assertThat(view.toleranceReason()).isEqualTo("a cup is struck off to about one part in a hundred");
        assertThat(view.givenSteps()).singleElement().satisfies(step -> {
            assertThat(step.label()).isEqualTo("What the foam weighs");
            assertThat(step.value()).endsWith("\u00a0g");
        });
    }

    @Test
    void hintsComeOneByOne() {
        DrawnNumbers drawn = Samples.draw(Samples.BEAKER, 1);
        assertThat(view(drawn, 0).hints()).isEmpty();
        assertThat(view(drawn, 0).hintsLeft()).isEqualTo(2);
        assertThat(view(drawn, 1).hints()).containsExactly("The floor of the beaker is a circle.");
        assertThat(view(drawn, 2).hints()).hasSize(2).last().asString().startsWith("At 2 times the liquid");
        assertThat(view(drawn, 9).hintsLeft()).isZero();
    }

    @Test
    void aLaterPartNeedsTheEarlierOnesAnswered() {
        DrawnNumbers drawn = Samples.draw(Samples.CUP, 4);
        assertThatThrownBy(() -> PublicView.of(drawn, 1, DecimalMark.POINT, List.of(), 0))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static PublicView view(DrawnNumbers drawn, int hints) {
        return PublicView.of(drawn, 0, DecimalMark.POINT, List.of(), hints);
    }

    private static FeedbackView answered(DrawnNumbers drawn, int part) {
        String typed = String.format(
                Locale.ROOT, "%s %s", 987_654, drawn.part(part).part().unit().symbol());
        Reading reading = NumberReader.of(DecimalMark.POINT).read(typed);
        return Feedback.of(drawn, part, Grader.grade(drawn, part, reading), DecimalMark.POINT);
    }
}
