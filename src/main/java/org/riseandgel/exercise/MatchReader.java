package org.riseandgel.exercise;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.riseandgel.exercise.MatchTemplate.Pair;

/** Reads what exercises have in which things are matched. */
final class MatchReader {
    private static final int FEWEST = 3;
    private static final int MOST = 10;

    private final PictureReader pictures;

    MatchReader(FigureShelf figures) {
        this.pictures = new PictureReader(figures);
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
        return Optional.of(new MatchTemplate(pictures.withFigures(head), pairs, others, shown));
    }

    private Pair pair(Fields fields) {
        fields.only("figure", "alt", "left", "right", "why");
        return new Pair(
                ChoiceFields.text(fields, "left", ChoiceFields.LONGEST_TEXT),
                pictures.read(fields),
                ChoiceFields.text(fields, "right", ChoiceFields.LONGEST_TEXT),
                ChoiceFields.text(fields, "why", HeadReader.LONGEST_LINE));
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
}
