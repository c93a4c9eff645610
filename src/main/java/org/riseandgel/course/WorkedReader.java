package org.riseandgel.course;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.riseandgel.bench.Calculation;
import org.riseandgel.bench.Catalogue;
import org.riseandgel.bench.Given;
import org.riseandgel.bench.Outcome;
import org.riseandgel.core.quantity.OutOfRangeException;

/** Reads a worked block and works it once, so that whatever is wrong with it is found when the lesson is loaded. */
final class WorkedReader {
    private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9-]{0,39}");

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
        Map<String, Fields.Line> typed = fields.pairs("inputs");
        List<Fields.Line> results = fields.isMissing("results") ? List.of() : fields.texts("results");
        fields.noOthers();
        return calculation.flatMap(known -> worked(name, title, story, known, typed, results));
    }

    private Optional<Worked> worked(
            String name,
            String title,
            String story,
            Calculation calculation,
            Map<String, Fields.Line> typed,
            List<Fields.Line> results) {
        Optional<Given> given = WorkedInputs.read(calculation, typed, fields.lineOf("inputs"), fields.problems());
        List<String> shown = shown(calculation, results);
        if (!sound || given.isEmpty()) {
            return Optional.empty();
        }
        Worked worked = new Worked(name, title, story, catalogue, calculation, given.get(), shown);
        try {
            Outcome outcome = worked.run();
            shown.forEach(outcome::told);
            return Optional.of(worked);
        } catch (OutOfRangeException impossible) {
            problem("inputs", "cannot be worked: " + impossible.getMessage());
            return Optional.empty();
        }
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
                        "“%s” is not a result of %s; use one of %s"
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
