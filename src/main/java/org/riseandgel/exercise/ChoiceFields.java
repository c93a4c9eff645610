package org.riseandgel.exercise;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Reading that the kinds without numbers share. */
final class ChoiceFields {
    static final int LONGEST_TEXT = 300;
    static final int LONGEST_SLIP = 80;

    private ChoiceFields() {}

    /** The groups of a list of so many to so many. */
    static List<Fields> groups(Fields root, String name, int fewest, int most) {
        Optional<Field> field = root.need(name);
        List<Field> items = field.map(one -> one.list(most)).orElse(List.of());
        if (!items.isEmpty() && items.size() < fewest) {
            field.get().problem("Has %d entries; write %d to %d.".formatted(items.size(), fewest, most));
        }
        List<Fields> groups = new ArrayList<>();
        items.forEach(item -> item.group().ifPresent(groups::add));
        return groups;
    }

    /** A text that must be there. */
    static String text(Fields fields, String name, int longest) {
        return fields.need(name).flatMap(field -> field.text(longest)).orElse("");
    }

    /** How many are shown; all, when the file does not say. */
    static int shown(Fields root, int fewest, int all) {
        return root.find("shown")
                .flatMap(field -> field.whole(fewest, Math.max(fewest, all)))
                .orElse(all);
    }

    /** Notes each thing whose words another before it has as well. */
    static <T> void twins(List<T> things, List<Fields> groups, String name, Function<T, String> words) {
        for (int i = 0; i < things.size(); i++) {
            String text = words.apply(things.get(i));
            if (things.subList(0, i).stream().map(words).anyMatch(other -> same(other, text))) {
                groups.get(i).find(name).ifPresent(field -> field.problem("Stands here twice; write it once."));
            }
        }
    }

    private static boolean same(String one, String other) {
        return !one.isEmpty() && one.equalsIgnoreCase(other);
    }

    /** A story without drawn values has no braces. */
    static void noBraces(Fields root) {
        root.find("story")
                .filter(field -> field.plain()
                        .filter(text -> text.indexOf('{') >= 0 || text.indexOf('}') >= 0)
                        .isPresent())
                .ifPresent(field -> field.problem(
                        "Has a brace, but only a numeric exercise has drawn values; write the words out."));
    }
}
