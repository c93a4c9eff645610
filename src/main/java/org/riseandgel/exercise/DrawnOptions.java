package org.riseandgel.exercise;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.riseandgel.exercise.OptionsTemplate.Option;

/**
 * Options in the order in which they are shown. An answer is their letters in that order: "b", "a c".
 *
 * @param shown in the order shown
 */
public record DrawnOptions(OptionsTemplate template, long seed, List<Option> shown) implements DrawnChoice {
    public DrawnOptions {
        shown = List.copyOf(shown);
    }

    @Override
    public ChoiceView view() {
        return ChoiceView.of(
                        template.kind(),
                        IntStream.range(0, shown.size())
                                .mapToObj(place -> new ChoiceView.Row(
                                        Places.letter(place), shown.get(place).text(), null))
                                .toList(),
                        List.of())
                .about(template.picture().orElse(null));
    }

    @Override
    public ReadAnswer read(String typed) {
        List<String> chosen = Places.of(typed).stream().distinct().sorted().toList();
        if (chosen.isEmpty()) {
            return ReadAnswer.unclear(typed, isOne() ? "Choose one of the options." : "Tick at least one option.");
        }
        if (chosen.stream().anyMatch(one -> one.length() != 1 || !isShown(one))) {
            return ReadAnswer.unclear(
                    typed, "Choose from the options shown, a to %s.".formatted(Places.letter(shown.size() - 1)));
        }
        return isOne() && chosen.size() > 1
                ? ReadAnswer.unclear(typed, "Choose only one of the options.")
                : ReadAnswer.chosen(String.join(" ", chosen));
    }

    private boolean isOne() {
        return template.kind() == ExerciseKind.CHOOSE_ONE;
    }

    private boolean isShown(String letter) {
        int place = Places.place(letter);
        return Character.isLetter(letter.charAt(0)) && place >= 0 && place < shown.size();
    }

    @Override
    public boolean isRight(String answer) {
        return answer.equals(right());
    }

    @Override
    public Optional<String> slip(String answer) {
        return chosen(answer).stream()
                .filter(option -> !option.right() && !option.slip().isEmpty())
                .map(Option::slip)
                .findFirst();
    }

    @Override
    public String words(String answer) {
        return chosen(answer).stream().map(Option::text).collect(Collectors.joining("; "));
    }

    @Override
    public String line(String answer) {
        if (isOne() || isRight(answer)) {
            return "";
        }
        List<Option> chosen = chosen(answer);
        long missed = shown.stream()
                .filter(option -> option.right() && !chosen.contains(option))
                .count();
        long wrong = chosen.stream().filter(option -> !option.right()).count();
        List<String> said = new ArrayList<>();
        if (missed > 0) {
            said.add("left out %d that %s".formatted(missed, missed == 1 ? "applies" : "apply"));
        }
        if (wrong > 0) {
            said.add("ticked %d that %s not".formatted(wrong, wrong == 1 ? "does" : "do"));
        }
        return "You " + String.join(" and ", said) + ".";
    }

    @Override
    public List<ChoiceNote> notes(String answer) {
        List<Option> chosen = chosen(answer);
        return IntStream.range(0, shown.size())
                .mapToObj(place -> note(place, shown.get(place), chosen.contains(shown.get(place))))
                .toList();
    }

    private ChoiceNote note(int place, Option option, boolean chosen) {
        String yours = isOne() ? chosen ? "Your choice" : "Not chosen" : chosen ? "You ticked it" : "You left it";
        String right = option.right() ? "Right" : "Not right";
        return new ChoiceNote(
                Places.letter(place), option.text(), null, yours, right, chosen == option.right(), option.why());
    }

    @Override
    public String right() {
        return lettersOf(shown.stream().filter(Option::right).toList());
    }

    @Override
    public String wrong() {
        List<Option> chosen = new ArrayList<>(
                isOne() ? List.of() : shown.stream().filter(Option::right).toList());
        shown.stream()
                .filter(option -> !option.right())
                .min(Comparator.comparing(option -> option.slip().isEmpty()))
                .ifPresent(chosen::add);
        return lettersOf(chosen);
    }

    private List<Option> chosen(String answer) {
        return Places.of(answer).stream()
                .map(Places::place)
                .filter(place -> place >= 0 && place < shown.size())
                .map(shown::get)
                .toList();
    }

    private String lettersOf(List<Option> options) {
        return options.stream().map(shown::indexOf).sorted().map(Places::letter).collect(Collectors.joining(" "));
    }

    /** Names the exercise only: what is right must not slip into a log. */
    @Override
    public String toString() {
        return "a draw of " + template;
    }
}
