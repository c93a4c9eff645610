package org.riseandgel.exercise;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.riseandgel.bench.Catalogue;

/** One drawing above the options: shown with its words, kept with the exercise, and reported when it is wrong. */
class PictureAskedAboutTest {
    private static final SourceFile FIGURE = new SourceFile(
            "exercises/seams/seam.svg",
            "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 640 100\"><rect class=\"f-foam\" x=\"1\" y=\"1\""
                    + " width=\"9\" height=\"9\"/></svg>");
    private static final String EXERCISE =
            """
            id: seam
            title: A seam
            skill: seams
            level: 1
            kind: choose-one
            figure: seam.svg
            alt: A thick seam.
            story: What caused it?
            options:
              - { text: Closed late, right: true, why: Set foam does not flow. }
              - { text: Too hot, why: Heat makes hollows. }
              - { text: Too dry, why: Dry is right. }
              - { text: Too fine, why: Fine is right. }
            source: common practice, no source
            """;

    @Test
    void itIsShownWithItsWords() {
        ExerciseLibrary library = load(EXERCISE).library();
        DrawnChoice drawn =
                (DrawnChoice) library.drawer().draw(library.find("seam").orElseThrow(), 1);
        assertThat(drawn.view().picture().alt()).isEqualTo("A thick seam.");
        assertThat(drawn.view().picture().figure().viewBox()).isEqualTo("0 0 640 100");
    }

    @Test
    void itIsPartOfWhatIsKept() {
        ExerciseTemplate template = load(EXERCISE).library().find("seam").orElseThrow();
        ExerciseTemplate plain = load(withoutPicture()).library().find("seam").orElseThrow();
        assertThat(template.file().text()).contains("f-foam");
        assertThat(template.version()).isNotEqualTo(plain.version());
        assertThat(plain.file().text()).isEqualTo(withoutPicture());
    }

    @Test
    void aDrawingThatIsNotThereIsReported() {
        assertThat(load(EXERCISE.replace("seam.svg", "sea.svg")).problems())
                .extracting(ContentProblem::toString)
                .anyMatch(problem -> problem.contains(
                        ":6 figure: There is no sea.svg beside the exercise; the figures there are seam.svg."));
    }

    @Test
    void wordsWithoutADrawingAreReported() {
        assertThat(load(EXERCISE.replace("figure: seam.svg\n", "")).problems())
                .extracting(ContentProblem::toString)
                .anyMatch(problem -> problem.contains(":6 alt: Describes a figure, but none is named"));
    }

    private static String withoutPicture() {
        return EXERCISE.replace("figure: seam.svg\nalt: A thick seam.\n", "");
    }

    private static ExerciseLibrary.Loaded load(String text) {
        return ExerciseLibrary.load(
                List.of(FIGURE, new SourceFile("exercises/seams/seam.yaml", text)),
                Catalogue.standard(),
                Set.of("seams"));
    }
}
