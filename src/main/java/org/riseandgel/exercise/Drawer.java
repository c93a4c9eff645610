package org.riseandgel.exercise;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.riseandgel.bench.Catalogue;
import org.riseandgel.bench.Given;
import org.riseandgel.bench.Outcome;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Quantity;
import org.riseandgel.core.quantity.Unit;

/**
 * Draws an exercise from a seed: the same template and seed give the same numbers, options and order for ever.
 *
 * <p>The values are taken from a {@link SplitMix} started with the seed, one number for each, in the order of the file.
 * Numbers that would make a poor exercise are rejected ({@link DrawFaults}) and the next of a row of seeds is tried. The
 * draw carries the seed that passed; with that seed {@link #again} makes it without judging it anew, so a draw that is
 * out stays as it is even if the rules for new draws become stricter.
 */
public final class Drawer {
    /** How many seeds are tried before an exercise counts as undrawable. */
    public static final int MOST_TRIES = 500;

    private final Catalogue catalogue;

    public Drawer(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /**
     * A draw that makes a good exercise.
     *
     * @throws UndrawableException when {@value #MOST_TRIES} tries gave none; the message says why most failed
     */
    public DrawnExercise draw(ExerciseTemplate template, long seed) {
        return draw(template, seed, MOST_TRIES);
    }

    DrawnNumbers draw(NumericTemplate template, long seed) {
        return draw(template, seed, MOST_TRIES);
    }

    DrawnNumbers draw(NumericTemplate template, long seed, int tries) {
        return (DrawnNumbers) draw((ExerciseTemplate) template, seed, tries);
    }

    DrawnExercise draw(ExerciseTemplate template, long seed, int tries) {
        Tally rejected = new Tally();
        SplitMix seeds = new SplitMix(seed);
        long next = seed;
        for (int i = 0; i < tries; i++) {
            Optional<DrawnExercise> drawn = attempt(template, next, rejected);
            if (drawn.isPresent()) {
                return drawn.get();
            }
            next = seeds.next();
        }
        throw new UndrawableException(rejected.words(tries));
    }

    /**
     * The draw that a stored seed stands for, whether or not it would be given out today.
     *
     * @throws OutOfRangeException when the numbers are physically impossible, which a seed of a good draw never is
     */
    public DrawnExercise again(ExerciseTemplate template, long seed) {
        return template instanceof ChoiceTemplate choice ? choice.drawn(seed) : again((NumericTemplate) template, seed);
    }

    DrawnNumbers again(NumericTemplate template, long seed) {
        Map<String, DrawnValue> values = values(template, seed);
        Map<String, Outcome> outcomes = outcomes(template.works(), values);
        List<DrawnPart> parts = template.parts().stream()
                .map(part ->
                        PartMaker.make(template, part, outcomes.get(part.of().work())))
                .toList();
        return new DrawnNumbers(template, seed, values, outcomes, parts);
    }

    private Optional<DrawnExercise> attempt(ExerciseTemplate template, long seed, Tally rejected) {
        try {
            DrawnExercise drawn = again(template, seed);
            Optional<String> fault =
                    drawn instanceof DrawnChoice choice ? choice.fault() : DrawFaults.first((DrawnNumbers) drawn);
            fault.ifPresent(rejected::add);
            return fault.isPresent() ? Optional.empty() : Optional.of(drawn);
        } catch (OutOfRangeException impossible) {
            rejected.add(impossible.what() + " is out of range", impossible.getMessage());
            return Optional.empty();
        }
    }

    static Map<String, DrawnValue> values(NumericTemplate template, long seed) {
        SplitMix numbers = new SplitMix(seed);
        Map<String, DrawnValue> values = new LinkedHashMap<>();
        for (DrawRule rule : template.draws()) {
            values.put(rule.name(), new DrawnValue(rule.name(), rule.at(numbers.below(rule.count())), rule.unit()));
        }
        return values;
    }

    Map<String, Outcome> outcomes(List<NumericTemplate.WorkUse> works, Map<String, DrawnValue> values) {
        Map<String, Outcome> outcomes = new LinkedHashMap<>();
        for (NumericTemplate.WorkUse work : works) {
            Given given = Given.defaultsOf(work.calculation());
            for (Map.Entry<String, NumericTemplate.InputSource> input :
                    work.inputs().entrySet()) {
                given = with(given, input.getKey(), input.getValue(), values, outcomes);
            }
            outcomes.put(work.name(), catalogue.run(work.calculation(), given));
        }
        return outcomes;
    }

    private static Given with(
            Given given,
            String input,
            NumericTemplate.InputSource source,
            Map<String, DrawnValue> values,
            Map<String, Outcome> outcomes) {
        if (source instanceof NumericTemplate.InputSource.Drawn drawn) {
            DrawnValue value = values.get(drawn.name());
            return given.with(input, value.quantity(), value.unit());
        }
        if (source instanceof NumericTemplate.InputSource.Fixed fixed) {
            return given.with(input, Quantity.of(fixed.value().doubleValue(), fixed.unit()), fixed.unit());
        }
        if (source instanceof NumericTemplate.InputSource.Chosen chosen) {
            return given.choosing(input, chosen.option());
        }
        NumericTemplate.InputSource.Earlier earlier = (NumericTemplate.InputSource.Earlier) source;
        Outcome outcome = outcomes.get(earlier.work());
        Unit unit = outcome.units().get(earlier.result());
        return given.with(input, outcome.told(earlier.result()), unit);
    }

    /** Counts why draws were rejected. */
    private static final class Tally {
        private final Map<String, Integer> counts = new LinkedHashMap<>();
        private final Map<String, String> examples = new LinkedHashMap<>();

        void add(String reason) {
            add(reason, reason);
        }

        void add(String reason, String example) {
            counts.merge(reason, 1, Integer::sum);
            examples.putIfAbsent(reason, example);
        }

        String words(int tries) {
            List<String> lines = new ArrayList<>();
            counts.entrySet().stream()
                    .sorted(Map.Entry.<String, Integer>comparingByValue().reversed())
                    .limit(3)
                    .forEach(entry -> lines.add(entry.getValue() + " times: " + examples.get(entry.getKey())));
            return "No draw passed in %d tries. %s.".formatted(tries, String.join("; ", lines));
        }
    }
}
