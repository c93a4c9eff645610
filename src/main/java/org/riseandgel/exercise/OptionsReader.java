package org.riseandgel.exercise;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.riseandgel.exercise.OptionsTemplate.Option;

/** Reads what exercises have in which one or several options are chosen. */
final class OptionsReader {
    private static final int FEWEST = 4;
    private static final int MOST = 12;

    private OptionsReader() {}

    static Optional<ExerciseTemplate> read(
            ExerciseTemplate.Head head, ExerciseKind kind, Fields root, FigureShelf figures) {
        ChoiceFields.noBraces(root);
        List<Fields> groups = ChoiceFields.groups(root, "options", FEWEST, MOST);
        List<Option> options = new ArrayList<>();
        groups.forEach(group -> options.add(option(group)));
        ChoiceFields.twins(options, groups, "text", Option::text);
        int shown = ChoiceFields.shown(root, FEWEST, options.size());
        if (!options.isEmpty()) {
            count(kind, options, root.find("options").orElseThrow());
        }
        PictureReader pictures = new PictureReader(figures);
        Optional<Picture> picture = pictures.read(root);
        return Optional.of(new OptionsTemplate(pictures.withFigures(head), kind, picture, options, shown));
    }

    private static Option option(Fields fields) {
        fields.only("text", "right", "why", "slip");
        String text = ChoiceFields.text(fields, "text", ChoiceFields.LONGEST_TEXT);
        String small = text.toLowerCase(Locale.ROOT);
        if (small.contains("of the above") || small.contains("of these answers")) {
            fields.find("text")
                    .ifPresent(field -> field.problem(
                            "Points at the other options, but they are shown in any order;" + " say what is meant."));
        }
        boolean right = fields.find("right").flatMap(Field::flag).orElse(false);
        String why = ChoiceFields.text(fields, "why", HeadReader.LONGEST_LINE);
        Optional<Field> slip = fields.find("slip");
        slip.filter(field -> right).ifPresent(field -> field.problem("Names a mistake, but the option is right."));
        return new Option(
                text,
                right,
                why,
                slip.flatMap(field -> field.text(ChoiceFields.LONGEST_SLIP)).orElse(""));
    }

    private static void count(ExerciseKind kind, List<Option> options, Field field) {
        long right = options.stream().filter(Option::right).count();
        if (kind == ExerciseKind.CHOOSE_ONE && right != 1) {
            field.problem("Marks %d options as right; mark exactly one with “right: true”.".formatted(right));
        }
        if (kind == ExerciseKind.CHOOSE_ALL && (right < 2 || right == options.size())) {
            field.problem("Marks %d of %d options as right; mark two or more, and leave at least one that is not."
                    .formatted(right, options.size()));
        }
    }
}
