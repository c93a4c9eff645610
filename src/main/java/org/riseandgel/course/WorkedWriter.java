package org.riseandgel.course;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.commonmark.renderer.html.HtmlWriter;
import org.riseandgel.bench.Input;
import org.riseandgel.bench.Outcome;
import org.riseandgel.bench.QuantityText;
import org.riseandgel.bench.Result;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.Quantity;
import org.riseandgel.core.quantity.Unit;

/** Writes a worked example: what is given, the steps with the numbers in them, and what comes out. */
final class WorkedWriter {
    private final HtmlWriter html;
    private final DecimalMark mark;
    private final QuantityText text;

    WorkedWriter(HtmlWriter html, DecimalMark mark) {
        this.html = html;
        this.mark = mark;
        this.text = QuantityText.of(mark);
    }

    void write(Worked worked) {
        Outcome outcome = worked.run();
        html.tag("section", Map.of("class", "worked"));
        element("p", "worked-title", worked.title());
        if (!worked.story().isEmpty()) {
            element("p", "worked-story", worked.story());
        }
        inputs(worked);
        steps(worked.stepsShown(outcome));
        results(worked, outcome);
        html.tag("/section");
        html.line();
    }

    private void inputs(Worked worked) {
        html.tag("dl", Map.of("class", "facts"));
        for (Input input : worked.calculation().inputs()) {
            if (worked.calculation().uses(input.name(), worked.given()) && !isEmptyTable(worked, input)) {
                element("dt", "", input.label());
                element("dd", "", given(worked, input));
            }
        }
        html.tag("/dl");
    }

    /** A table that may stay empty, and did. */
    private static boolean isEmptyTable(Worked worked, Input input) {
        return input instanceof Input.Readings table
                && worked.given().rows(table.name()).isEmpty();
    }

    private String given(Worked worked, Input input) {
        if (input instanceof Input.Choice choice) {
            String chosen = worked.given().choice(choice.name());
            return choice.options().stream()
                    .filter(option -> option.value().equals(chosen))
                    .map(Input.Option::label)
                    .findFirst()
                    .orElse(chosen);
        }
        if (input instanceof Input.Readings table) {
            return rows(worked, table);
        }
        if (input instanceof Input.Mesh mesh) {
            return "a mesh of %d triangles"
                    .formatted(worked.given().mesh(mesh.name()).triangles());
        }
        Quantity quantity = worked.given().get(input.name(), Quantity.class);
        Unit own = input instanceof Input.Measured measured
                ? measured.unit()
                : worked.given().unit(input.name());
        return text.of(quantity, worked.given().units().getOrDefault(input.name(), own));
    }

    private String rows(Worked worked, Input.Readings table) {
        return worked.given().rows(table.name()).stream()
                .map(row -> IntStream.range(0, table.columns().size())
                        .mapToObj(i -> text.of(
                                row.cells().get(i), table.columns().get(i).unit()))
                        .collect(Collectors.joining(": ")))
                .collect(Collectors.joining("; "));
    }

    private void steps(List<Outcome.Step> steps) {
        html.tag("ol", Map.of("class", "working"));
        for (Outcome.Step step : steps) {
            html.tag("li");
            element("span", "step-label", step.label());
            space();
            element("span", "step-formula", step.formula());
            space();
            element("span", "step-numbers", text.fill(step.numbers(), step.in()));
            space();
            element("span", "step-value", text.of(step.value(), step.unit()));
            html.tag("/li");
        }
        html.tag("/ol");
    }

    private void results(Worked worked, Outcome outcome) {
        html.tag("dl", Map.of("class", "results"));
        for (String name : worked.results()) {
            Result result = worked.result(name);
            html.tag("div");
            element("dt", "", result.label());
            element("dd", "", Worked.written(outcome, result, mark));
            html.tag("/div");
        }
        html.tag("/dl");
    }

    private void element(String name, String look, String words) {
        html.tag(name, look.isEmpty() ? Map.of() : Map.of("class", look));
        html.text(words);
        html.tag("/" + name);
    }

    private void space() {
        html.text(" ");
    }
}
