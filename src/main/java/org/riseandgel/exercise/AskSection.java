package org.riseandgel.exercise;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.riseandgel.bench.Result;
import org.riseandgel.core.quantity.Rational;
import org.riseandgel.core.quantity.Unit;
import org.riseandgel.exercise.NumericTemplate.Condition;
import org.riseandgel.exercise.NumericTemplate.Part;

/** Reads what is asked, what must hold for a draw, and which steps are shown beforehand. */
final class AskSection {
    private static final int MOST_PARTS = 12;
    private static final int MOST_CONDITIONS = 20;
    private static final int MOST_STEPS = 20;
    private static final int LONGEST_NAME = 100;
    private static final int LONGEST_PROMPT = 400;

    private final Known known;

    AskSection(Known known) {
        this.known = known;
    }

    List<Part> parts(Fields root) {
        List<Part> parts = new ArrayList<>();
        Set<String> names = new HashSet<>();
        for (Field item : root.need("ask").map(ask -> ask.list(MOST_PARTS)).orElse(List.of())) {
            item.group().flatMap(this::part).ifPresent(part -> {
                if (!names.add(part.id())) {
                    item.problem("Two parts are named “%s”; give each its own name.".formatted(part.id()));
                }
                parts.add(part);
            });
        }
        return parts;
    }

    private Optional<Part> part(Fields fields) {
        fields.only("part", "prompt", "of", "unit", "tolerance", "readability");
        Optional<String> id = fields.need("part").flatMap(AskSection::partId);
        Optional<String> prompt = fields.need("prompt").flatMap(field -> field.text(LONGEST_PROMPT));
        Optional<ValueRef.Worked> of = fields.need("of").flatMap(this::worked);
        Optional<Unit> unit = fields.need("unit").flatMap(Field::unit);
        Optional<Rational> readability = fields.need("readability").flatMap(ToleranceReader::positive);
        Optional<Tolerance> tolerance = fields.need("tolerance")
                .flatMap(Field::group)
                .flatMap(group -> ToleranceReader.read(group, unit, readability));
        if (of.isPresent() && unit.isPresent()) {
            kindFits(of.get(), unit.get(), fields.find("unit").orElseThrow());
        }
        if (id.isEmpty() || prompt.isEmpty() || of.isEmpty() || unit.isEmpty() || tolerance.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Part(
                id.get(), prompt.get(), of.get(), unit.get(), tolerance.get(), readability.orElse(Rational.ONE)));
    }

    private static Optional<String> partId(Field field) {
        return field.text(LONGEST_NAME).filter(id -> {
            boolean name = DrawSection.NAME.matcher(id.replace("-", "")).matches();
            if (!name) {
                field.problem("“%s” is no name; begin with a small letter and use letters, digits and hyphens."
                        .formatted(id));
            }
            return name;
        });
    }

    List<Condition> conditions(Fields root) {
        List<Condition> conditions = new ArrayList<>();
        for (Field item : root.find("conditions")
                .map(field -> field.list(MOST_CONDITIONS))
                .orElse(List.of())) {
            item.group().flatMap(this::condition).ifPresent(conditions::add);
        }
        return conditions;
    }

    private Optional<Condition> condition(Fields fields) {
        fields.only("value", "atLeast", "atMost", "unit");
        Optional<ValueRef> value = fields.need("value").flatMap(this::value);
        Optional<Unit> unit = fields.need("unit").flatMap(Field::unit);
        Optional<Rational> least = fields.find("atLeast").flatMap(Field::number).map(Rational::of);
        Optional<Rational> most = fields.find("atMost").flatMap(Field::number).map(Rational::of);
        if (!fields.has("atLeast") && !fields.has("atMost")) {
            fields.problem("Gives neither atLeast nor atMost.");
        }
        if (least.isPresent() && most.isPresent() && least.get().compareTo(most.get()) > 0) {
            fields.problem("“atLeast” is more than “atMost”; no draw could meet that.");
        }
        if (value.isPresent() && unit.isPresent()) {
            kindFits(value.get(), unit.get(), fields.find("unit").orElseThrow());
        }
        return value.flatMap(ref -> unit.map(one -> new Condition(ref, least, most, one)));
    }

    List<ValueRef.OfStep> givenSteps(Fields root) {
        List<ValueRef.OfStep> steps = new ArrayList<>();
        for (Field item :
                root.find("given-steps").map(field -> field.list(MOST_STEPS)).orElse(List.of())) {
            item.text(LONGEST_NAME).ifPresent(text -> {
                Optional<ValueRef> ref = ValueRef.parse(text);
                if (ref.isPresent() && ref.get() instanceof ValueRef.Worked worked && known.isWork(worked.work())) {
                    steps.add(new ValueRef.OfStep(worked.work(), worked.name()));
                } else {
                    item.problem("“%s” is no step; write a work's name, a point and the step's id.".formatted(text));
                }
            });
        }
        return steps;
    }

    private Optional<ValueRef.Worked> worked(Field field) {
        return value(field).flatMap(ref -> {
            if (ref instanceof ValueRef.Worked worked) {
                return Optional.of(worked);
            }
            field.problem("“%s” is drawn and shown; ask for a result or a step.".formatted(ref));
            return Optional.empty();
        });
    }

    private Optional<ValueRef> value(Field field) {
        Optional<String> text = field.text(LONGEST_NAME);
        Optional<ValueRef> ref = text.flatMap(ValueRef::parse).filter(known::has);
        if (text.isPresent() && ref.isEmpty()) {
            List<String> all =
                    new ArrayList<>(known.draws().stream().map(DrawRule::name).toList());
            all.addAll(known.results());
            field.problem("“%s” is neither a drawn value nor a result; there are %s. A step is written %s."
                    .formatted(text.get(), Known.words(all), "<work>.step.<id>"));
        }
        return ref;
    }

    /** A step, and a result whose unit follows the inputs, show their kind only when the numbers are worked. */
    private void kindFits(ValueRef ref, Unit unit, Field field) {
        Optional<Unit> own = Optional.empty();
        if (ref instanceof ValueRef.Drawn drawn) {
            own = known.draw(drawn.name()).map(DrawRule::unit);
        } else if (ref instanceof ValueRef.OfResult result) {
            own = known.result(result).map(Result::unit);
        }
        own.filter(other -> other.kind() != unit.kind())
                .ifPresent(other -> field.problem("%s is a unit of %s, but %s is %s, such as a number of %s."
                        .formatted(
                                unit.code(),
                                unit.kind().words(),
                                ref,
                                other.kind().one(),
                                other.code())));
    }
}
