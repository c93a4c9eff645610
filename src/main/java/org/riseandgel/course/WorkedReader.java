package org.riseandgel.course;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.riseandgel.bench.Calculation;
import org.riseandgel.bench.Catalogue;
import org.riseandgel.bench.Given;
import org.riseandgel.bench.Input;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.NumberReader;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Quantity;
import org.riseandgel.core.quantity.QuantityKind;
import org.riseandgel.core.quantity.Reading;
import org.riseandgel.core.quantity.Unit;

/** Reads a worked block and works it once, so that whatever is wrong with it is found when the lesson is loaded. */
final class WorkedReader {
    private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9-]{0,39}");
    private static final NumberReader NUMBERS = NumberReader.of(DecimalMark.POINT);

    private final Catalogue catalogue;
    private final Fields fields;
    private boolean sound = true;

    private WorkedReader(Catalogue catalogue, Fields fields) {
        this.catalogue = catalogue;
        this.fields = fields;
    }

    static Optional<Worked> read(Fields fields, Catalogue catalogue) {
        return new WorkedReader(catalogue, fields).worked();
    }

    private Optional<Worked> worked() {
        String name = fields.optional("name").orElse("");
        if (!name.isEmpty() && !NAME.matcher(name).matches()) {
            problem("name", "is “" + name + "”, must be small letters, digits and hyphens");
        }
        String title = fields.text("title");
        String story = fields.optional("story").orElse("");
        String id = fields.text("calculation");
        Optional<Calculation> calculation = catalogue.find(id);
        if (calculation.isEmpty() && !id.isEmpty()) {
            problem("calculation", "“%s” is not in the bench; use one of %s".formatted(id, ids()));
        }
        Map<String, String> typed = fields.pairs("inputs");
        List<Fields.Line> results = fields.isMissing("results") ? List.of() : fields.texts("results");
        fields.noOthers();
        return calculation.flatMap(known -> worked(name, title, story, known, typed, results));
    }

    private Optional<Worked> worked(
            String name,
            String title,
            String story,
            Calculation calculation,
            Map<String, String> typed,
            List<Fields.Line> results) {
        Given given = given(calculation, typed);
        List<String> shown = shown(calculation, results);
        if (!sound) {
            return Optional.empty();
        }
        Worked worked = new Worked(name, title, story, catalogue, calculation, given, shown);
        try {
            worked.run();
            return Optional.of(worked);
        } catch (OutOfRangeException impossible) {
            problem("inputs", "cannot be worked: " + impossible.getMessage());
            return Optional.empty();
        }
    }

    private Given given(Calculation calculation, Map<String, String> typed) {
        Given given = Given.defaultsOf(calculation);
        for (Input input : calculation.inputs()) {
            String text = typed.get(input.name());
            if (text != null) {
                given = input instanceof Input.Choice choice
                        ? choose(given, choice, text)
                        : measure(given, input, text);
            } else if (input instanceof Input.Measured measured && measured.byDefault() == null) {
                problem(
                        "inputs",
                        "%s is missing; write %s: … %s"
                                .formatted(
                                        input.name(),
                                        input.name(),
                                        measured.unit().code()));
            }
        }
        List<String> names = calculation.inputs().stream().map(Input::name).toList();
        for (String name : typed.keySet()) {
            if (!names.contains(name)) {
                problem(
                        "inputs",
                        "%s is not an input of %s; use %s".formatted(name, calculation.id(), String.join(", ", names)));
            }
        }
        return given;
    }

    private Given choose(Given given, Input.Choice choice, String text) {
        List<String> values = choice.options().stream().map(Input.Option::value).toList();
        if (!values.contains(text)) {
            problem(
                    "inputs",
                    "%s is “%s”, must be one of %s".formatted(choice.name(), text, String.join(", ", values)));
            return given;
        }
        return given.choosing(choice.name(), text);
    }

    private Given measure(Given given, Input input, String text) {
        Reading reading = NUMBERS.read(text);
        if (!reading.ok()) {
            problem("inputs", input.name() + ": " + reading.message());
            return given;
        }
        QuantityKind kind = input instanceof Input.Measured measured ? measured.kind() : null;
        Unit unit = reading.typedUnit().orElse(Unit.ONE);
        Unit meant = kind == null ? unit : unit.whenAskedFor(kind);
        if (kind != null && meant.kind() != kind) {
            problem(
                    "inputs",
                    "%s is “%s”, must be a %s such as 1 %s"
                            .formatted(
                                    input.name(),
                                    text,
                                    kind.words(),
                                    ((Input.Measured) input).unit().code()));
            return given;
        }
        Quantity quantity =
                Quantity.ofBase(meant.kind(), meant.toBase(reading.value()).toDouble());
        return given.with(input.name(), quantity, meant);
    }

    private List<String> shown(Calculation calculation, List<Fields.Line> wanted) {
        List<String> known =
                calculation.results().stream().map(result -> result.name()).toList();
        List<String> shown = new ArrayList<>();
        for (Fields.Line line : wanted) {
            if (known.contains(line.text())) {
                shown.add(line.text());
            } else {
                problem(
                        "results",
                        "%s is not a result of %s; use %s"
                                .formatted(line.text(), calculation.id(), String.join(", ", known)));
            }
        }
        return wanted.isEmpty() ? known : shown;
    }

    private void problem(String field, String message) {
        sound = false;
        fields.problem(field, message);
    }

    private String ids() {
        return String.join(", ", catalogue.all().stream().map(Calculation::id).toList());
    }
}
