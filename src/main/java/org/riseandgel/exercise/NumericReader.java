package org.riseandgel.exercise;

import java.util.List;
import java.util.Optional;
import org.riseandgel.bench.Catalogue;
import org.riseandgel.bench.Slip;

/** Reads what only numeric exercises have. */
final class NumericReader {
    private static final int LONGEST_ID = 60;
    private static final int MOST_SLIPS = 20;

    private final Catalogue catalogue;

    NumericReader(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    NumericTemplate read(ExerciseTemplate.Head head, Fields root) {
        Known known = new Known();
        DrawSection.read(root, known);
        new WorkSection(catalogue, known).read(root);
        AskSection asks = new AskSection(known);
        List<NumericTemplate.Condition> conditions = asks.conditions(root);
        List<NumericTemplate.Part> parts = asks.parts(root);
        List<ValueRef.OfStep> givenSteps = asks.givenSteps(root);
        List<Slip> slips = slips(root);
        ToldNames.check(root, known, conditions);
        return new NumericTemplate(head, known.draws(), known.works(), conditions, parts, slips, givenSteps);
    }

    private static List<Slip> slips(Fields root) {
        return root.find("slips").map(field -> field.list(MOST_SLIPS)).orElse(List.of()).stream()
                .map(NumericReader::slip)
                .flatMap(Optional::stream)
                .toList();
    }

    private static Optional<Slip> slip(Field field) {
        return field.text(LONGEST_ID).flatMap(id -> {
            Optional<Slip> slip = Slip.byId(id);
            if (slip.isEmpty()) {
                field.problem("“%s” is no slip known here; the slips are %s.".formatted(id, SlipNames.all()));
            } else if (slip.get() == Slip.POWER_OF_TEN || slip.get() == Slip.ROUNDED_EARLY) {
                field.problem("“%s” is looked for in every exercise; leave it out.".formatted(id));
            }
            return slip;
        });
    }
}
