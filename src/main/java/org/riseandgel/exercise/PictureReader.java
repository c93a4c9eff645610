package org.riseandgel.exercise;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Reads which drawings an exercise shows, and keeps them with its text. */
final class PictureReader {
    private static final int LONGEST_ALT = 500;

    private final FigureShelf figures;
    private final Map<String, String> used = new LinkedHashMap<>();

    PictureReader(FigureShelf figures) {
        this.figures = figures;
    }

    /** The drawing named by “figure” and told by “alt”, if there is one. */
    Optional<Picture> read(Fields fields) {
        Optional<Field> file = fields.find("figure");
        if (file.isEmpty()) {
            fields.find("alt")
                    .ifPresent(field -> field.problem("Describes a figure, but none is named; write “figure: …”."));
            return Optional.empty();
        }
        String alt = ChoiceFields.text(fields, "alt", LONGEST_ALT);
        return file.get().text(ChoiceFields.LONGEST_SLIP).flatMap(name -> {
            if (!figures.has(name)) {
                file.get()
                        .problem("There is no %s beside the exercise; the figures there are %s."
                                .formatted(name, figures.names()));
            } else {
                used.put(name, figures.text(name));
            }
            return figures.figure(name).map(figure -> new Picture(figure, alt));
        });
    }

    /** The head whose text also holds the drawings read so far, so that it rebuilds the whole exercise. */
    ExerciseTemplate.Head withFigures(ExerciseTemplate.Head head) {
        if (used.isEmpty()) {
            return head;
        }
        String text = new KeptText(head.file().text(), used).joined();
        return new ExerciseTemplate.Head(
                new SourceFile(head.file().path(), text),
                Version.of(text),
                head.id(),
                head.title(),
                head.skill(),
                head.level(),
                head.critical(),
                head.objectives(),
                head.atBench(),
                head.story(),
                head.hints(),
                head.source());
    }
}
