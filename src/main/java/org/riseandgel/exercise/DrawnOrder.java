package org.riseandgel.exercise;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.riseandgel.exercise.OrderTemplate.Step;

/**
 * Steps in a wrong order. An answer is one number for each step as it is shown: "3 1 2" makes the second of them the first.
 *
 * @param inOrder the steps in a right order
 * @param shown the same in the order shown
 */
public record DrawnOrder(OrderTemplate template, long seed, List<Step> inOrder, List<Step> shown)
        implements DrawnChoice {
    public DrawnOrder {
        inOrder = List.copyOf(inOrder);
        shown = List.copyOf(shown);
    }

    @Override
    public ChoiceView view() {
        List<ChoiceView.Row> rows = new ArrayList<>();
        List<ChoiceView.Entry> entries = new ArrayList<>();
        for (int place = 0; place < shown.size(); place++) {
            rows.add(new ChoiceView.Row(Places.letter(place), shown.get(place).text(), null));
            entries.add(new ChoiceView.Entry(Places.number(place), Places.number(place)));
        }
        return ChoiceView.of(template.kind(), rows, entries);
    }

    @Override
    public ReadAnswer read(String typed) {
        List<String> numbers = Places.of(typed);
        for (int place = 0; place < shown.size(); place++) {
            if (place >= numbers.size() || !isNumber(numbers.get(place))) {
                return ReadAnswer.unclear(
                        typed, "Give step %s a number from 1 to %d.".formatted(Places.letter(place), shown.size()));
            }
            int twin = numbers.indexOf(numbers.get(place));
            if (twin < place) {
                return ReadAnswer.unclear(
                        typed,
                        "Steps %s and %s both have the number %s. Give each step its own."
                                .formatted(Places.letter(twin), Places.letter(place), numbers.get(place)));
            }
        }
        return numbers.size() > shown.size()
                ? ReadAnswer.unclear(typed, "Give %d numbers, one for each step.".formatted(shown.size()))
                : ReadAnswer.chosen(String.join(" ", numbers));
    }

    private boolean isNumber(String typed) {
        int place = Places.place(typed);
        return Character.isDigit(typed.charAt(0)) && typed.charAt(0) != '0' && place >= 0 && place < shown.size();
    }

    @Override
    public boolean isRight(String answer) {
        return firstOutOfPlace(arranged(answer)).isEmpty();
    }

    @Override
    public Optional<String> slip(String answer) {
        return Optional.empty();
    }

    @Override
    public String words(String answer) {
        return arranged(answer).stream().map(Step::text).collect(Collectors.joining(" → "));
    }

    @Override
    public String line(String answer) {
        List<Step> arranged = arranged(answer);
        return firstOutOfPlace(arranged)
                .map(place -> "The first step out of place is your number %d, “%s”. Here comes “%s”."
                        .formatted(place + 1, arranged.get(place).text(), dueAt(place, arranged)))
                .orElse("");
    }

    /** A step that belongs to a place, and is not among those before it. */
    private String dueAt(int place, List<Step> arranged) {
        return inOrder.stream()
                .filter(step -> step.place() == inOrder.get(place).place())
                .filter(step -> !arranged.subList(0, place).contains(step))
                .map(Step::text)
                .findFirst()
                .orElseThrow();
    }

    @Override
    public List<ChoiceNote> notes(String answer) {
        List<Step> arranged = arranged(answer);
        return inOrder.stream().map(step -> note(step, arranged.indexOf(step))).toList();
    }

    private ChoiceNote note(Step step, int yours) {
        List<Integer> right = IntStream.range(0, inOrder.size())
                .filter(place -> inOrder.get(place).place() == step.place())
                .boxed()
                .toList();
        return new ChoiceNote(
                Places.letter(shown.indexOf(step)),
                step.text(),
                null,
                "Your number " + (yours + 1),
                "Number " + right.stream().map(Places::number).collect(Collectors.joining(" or ")),
                right.contains(yours),
                step.why());
    }

    @Override
    public String right() {
        return Places.join(shown.size(), place -> Places.number(inOrder.indexOf(shown.get(place))));
    }

    /** The order shown, which never is a right one. */
    @Override
    public String wrong() {
        return Places.join(shown.size(), Places::number);
    }

    @Override
    public Optional<String> fault() {
        return isRight(wrong()) ? Optional.of("The steps are shown in their right order") : Optional.empty();
    }

    /** The steps in the order of an answer. */
    private List<Step> arranged(String answer) {
        List<String> numbers = Places.of(answer);
        return IntStream.range(0, shown.size())
                .boxed()
                .sorted(Comparator.comparing(place -> Places.place(numbers.get(place))))
                .map(shown::get)
                .toList();
    }

    private Optional<Integer> firstOutOfPlace(List<Step> arranged) {
        return IntStream.range(0, arranged.size())
                .filter(place ->
                        arranged.get(place).place() != inOrder.get(place).place())
                .boxed()
                .findFirst();
    }

    /** Names the exercise only: what is right must not slip into a log. */
    @Override
    public String toString() {
        return "a draw of " + template;
    }
}
