package org.riseandgel.exercise;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.riseandgel.exercise.MatchTemplate.Pair;

/**
 * Left sides and the right sides to choose from. An answer names one right side for each left side: "1c 2a".
 *
 * @param lefts in the order shown
 * @param rights in the order shown
 */
public record DrawnMatch(MatchTemplate template, long seed, List<Pair> lefts, List<String> rights)
        implements DrawnChoice {
    public DrawnMatch {
        lefts = List.copyOf(lefts);
        rights = List.copyOf(rights);
    }

    @Override
    public ChoiceView view() {
        List<ChoiceView.Row> rows = new ArrayList<>();
        for (Pair pair : lefts) {
            rows.add(new ChoiceView.Row(
                    Places.number(rows.size()), pair.left(), pair.figure().orElse(null)));
        }
        List<ChoiceView.Entry> entries = new ArrayList<>();
        for (String right : rights) {
            entries.add(new ChoiceView.Entry(Places.letter(entries.size()), right));
        }
        return ChoiceView.of(template.kind(), rows, entries);
    }

    @Override
    public ReadAnswer read(String typed) {
        List<String> chosen = Places.of(typed);
        List<String> entries = new ArrayList<>();
        for (int row = 0; row < lefts.size(); row++) {
            Optional<String> entry = Places.entry(chosen, row).filter(this::isShown);
            if (entry.isEmpty()) {
                return ReadAnswer.unclear(typed, "Choose what belongs to number %d.".formatted(row + 1));
            }
            entries.add(entry.get());
        }
        return chosen.size() > lefts.size()
                ? ReadAnswer.unclear(typed, "Choose %d times, once for each.".formatted(lefts.size()))
                : ReadAnswer.chosen(Places.join(entries.size(), row -> Places.number(row) + entries.get(row)));
    }

    private boolean isShown(String letter) {
        int place = Places.place(letter);
        return Character.isLetter(letter.charAt(0)) && place < rights.size();
    }

    @Override
    public boolean isRight(String answer) {
        return answer.equals(right());
    }

    @Override
    public Optional<String> slip(String answer) {
        return Optional.empty();
    }

    @Override
    public String words(String answer) {
        return IntStream.range(0, lefts.size())
                .mapToObj(row -> lefts.get(row).left() + " → " + chosen(answer, row))
                .collect(Collectors.joining("; "));
    }

    @Override
    public String line(String answer) {
        long right = notes(answer).stream().filter(ChoiceNote::agrees).count();
        return isRight(answer) ? "" : "%d of %d are right.".formatted(right, lefts.size());
    }

    @Override
    public List<ChoiceNote> notes(String answer) {
        return IntStream.range(0, lefts.size())
                .mapToObj(row -> note(row, chosen(answer, row)))
                .toList();
    }

    private ChoiceNote note(int row, String chosen) {
        Pair pair = lefts.get(row);
        return new ChoiceNote(
                Places.number(row),
                pair.left(),
                pair.figure().orElse(null),
                "You chose: " + chosen,
                "Right: " + pair.right(),
                chosen.equals(pair.right()),
                pair.why());
    }

    @Override
    public String right() {
        return Places.join(
                lefts.size(),
                row -> Places.number(row)
                        + Places.letter(rights.indexOf(lefts.get(row).right())));
    }

    /** For each left side the right side that stands after its own. */
    @Override
    public String wrong() {
        return Places.join(
                lefts.size(),
                row -> Places.number(row)
                        + Places.letter((rights.indexOf(lefts.get(row).right()) + 1) % rights.size()));
    }

    @Override
    public Optional<String> fault() {
        return rights.size() < 2 ? Optional.of("All that is shown belongs to the same") : Optional.empty();
    }

    private String chosen(String answer, int row) {
        return rights.get(Places.place(Places.entry(Places.of(answer), row).orElseThrow()));
    }

    /** Names the exercise only: what is right must not slip into a log. */
    @Override
    public String toString() {
        return "a draw of " + template;
    }
}
