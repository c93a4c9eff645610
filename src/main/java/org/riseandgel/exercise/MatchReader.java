package org.riseandgel.exercise;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.riseandgel.exercise.MatchTemplate.Pair;
import org.riseandgel.exercise.MatchTemplate.Picture;

/** Reads what exercises have in which things are matched, and keeps the figures they show with their text. */
final class MatchReader {
    private static final int FEWEST = 3;
    private static final int MOST = 10;
    private static final int LONGEST_ALT = 500;

    private final FigureShelf figures;
    private final Map<String, String> used = new LinkedHashMap<>();

    MatchReader(FigureShelf figures) {
        this.figures = figures;
    }

    Optional<ExerciseTemplate> read(ExerciseTemplate.Head head, Fields root) {
        ChoiceFields.noBraces(root);
        List<Fields> groups = ChoiceFields.groups(root, "pairs", FEWEST, MOST);
        List<Pair> pairs = new ArrayList<>();
        groups.forEach(group -> pairs.add(pair(group)));
        ChoiceFields.twins(pairs, groups, "left", Pair::left);
        List<String> others = others(root, pairs);
        int shown = ChoiceFields.shown(root, FEWEST, pairs.size());
        long rights = Stream.concat(pairs.stream().map(Pair::right), others.stream())
                .distinct()
                .count();
        if (!pairs.isEmpty() && rights < FEWEST) {
            root.problem("Has only %d different right sides; give at least %d, in pairs or others."
                    .formatted(rights, FEWEST));
        }
        return Optional.of(new MatchTemplate(withFigures(head), pairs, others, shown));
    }

    private Pair pair(Fields fields) {
        fields.only("figure", "alt", "left", "right", "why");
        return new Pair(
                ChoiceFields.text(fields, "left", ChoiceFields.LONGEST_TEXT),
                picture(fields),
                ChoiceFields.text(fields, "right", ChoiceFields.LONGEST_TEXT),
                ChoiceFields.text(fields, "why", HeadReader.LONGEST_LINE));
    }

    private Optional<Picture> picture(Fields fields) {
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

    private static List<String> others(Fields root, List<Pair> pairs) {
        List<String> others = new ArrayList<>();
        for (Field item : root.find("others").map(field -> field.list(MOST)).orElse(List.of())) {
            item.text(ChoiceFields.LONGEST_TEXT).ifPresent(text -> {
                if (others.contains(text)
                        || pairs.stream().anyMatch(pair -> pair.right().equals(text))) {
                    item.problem("Is among the right sides already; an entry of others belongs to nothing.");
                }
                others.add(text);
            });
        }
        return others;
    }

    private ExerciseTemplate.Head withFigures(ExerciseTemplate.Head head) {
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
                head.story(),
                head.hints(),
                head.source());
    }
}
