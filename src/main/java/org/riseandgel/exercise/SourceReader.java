package org.riseandgel.exercise;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.riseandgel.bench.Input;
import org.riseandgel.core.quantity.Unit;
import org.riseandgel.exercise.NumericTemplate.InputSource;

/** Reads where one input of a calculation comes from. */
final class SourceReader {
    private static final int LONGEST_NAME = 60;

    private final Known known;
    private final Input input;

    SourceReader(Known known, Input input) {
        this.known = known;
        this.input = input;
    }

    Optional<InputSource> read(Field field) {
        if (input instanceof Input.Readings) {
            field.problem("Is a table of readings, which cannot be drawn; leave it out.");
            return Optional.empty();
        }
        if (input instanceof Input.Mesh) {
            field.problem("Is a file, which cannot be drawn; leave it out.");
            return Optional.empty();
        }
        if (!field.isSingle()) {
            return field.group().flatMap(this::read);
        }
        return input instanceof Input.Choice ? notChosen(field) : drawn(field);
    }

    private Optional<InputSource> read(Fields fields) {
        fields.only("result", "choice", "fixed", "unit");
        if (fields.has("choice")) {
            return chosen(fields.find("choice").orElseThrow());
        }
        if (input instanceof Input.Choice) {
            fields.problem("Is chosen from a list; write { choice: … }.");
            return Optional.empty();
        }
        return fields.has("result") ? earlier(fields.find("result").orElseThrow()) : fixed(fields);
    }

    private static Optional<InputSource> notChosen(Field field) {
        field.problem("Is chosen from a list; write { choice: … }.");
        return Optional.empty();
    }

    private Optional<InputSource> drawn(Field field) {
        Optional<String> name = field.text(LONGEST_NAME);
        name.filter(wanted -> !known.isDrawn(wanted))
                .ifPresent(wanted -> field.problem(
                        "“%s” is not drawn; the drawn values are %s.".formatted(wanted, known.drawWords())));
        Optional<DrawRule> rule = name.flatMap(known::draw);
        rule.ifPresent(one -> InputLimits.check(input, one.unit(), one.least(), one.most(), field));
        return rule.map(one -> new InputSource.Drawn(one.name()));
    }

    private Optional<InputSource> chosen(Field field) {
        if (!(input instanceof Input.Choice choice)) {
            field.problem("“%s” is measured, not chosen; write a drawn name, a result or a fixed value."
                    .formatted(input.name()));
            return Optional.empty();
        }
        List<String> options =
                choice.options().stream().map(Input.Option::value).toList();
        Optional<String> option = field.text(LONGEST_NAME);
        option.filter(one -> !options.contains(one))
                .ifPresent(one -> field.problem(
                        "“%s” cannot be chosen; the options are %s.".formatted(one, Known.words(options))));
        return option.filter(options::contains).map(InputSource.Chosen::new);
    }

    private Optional<InputSource> earlier(Field field) {
        Optional<String> text = field.text(LONGEST_NAME);
        Optional<ValueRef.OfResult> ref = text.flatMap(ValueRef::parse)
                .filter(ValueRef.OfResult.class::isInstance)
                .map(ValueRef.OfResult.class::cast);
        if (text.isPresent() && ref.filter(known::has).isEmpty()) {
            field.problem("“%s” is no result of an earlier work; there are %s."
                    .formatted(text.get(), Known.words(known.results())));
        }
        return ref.flatMap(known::result).map(result -> {
            InputLimits.checkKind(input, result.unit(), field);
            return new InputSource.Earlier(ref.get().work(), ref.get().name());
        });
    }

    private Optional<InputSource> fixed(Fields fields) {
        Optional<BigDecimal> value = fields.need("fixed").flatMap(Field::number);
        Optional<Unit> unit = fields.need("unit").flatMap(Field::unit);
        if (value.isEmpty() || unit.isEmpty()) {
            return Optional.empty();
        }
        InputLimits.check(
                input,
                unit.get(),
                value.get(),
                value.get(),
                fields.find("fixed").orElseThrow());
        return Optional.of(new InputSource.Fixed(value.get(), unit.get()));
    }
}
