package org.riseandgel.grading;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.NumberReader;
import org.riseandgel.core.quantity.Reading;
import org.riseandgel.core.quantity.Unit;
import org.riseandgel.exercise.DrawRule;
import org.riseandgel.exercise.NumericTemplate;
import org.riseandgel.platform.web.Problem;

/** Reads narrower ranges for the drawn values of an exercise. */
final class RangesReader {
    private static final int PLACES = 9;

    private final DecimalMark mark;
    private final List<Problem> problems = new ArrayList<>();

    private RangesReader(DecimalMark mark) {
        this.mark = mark;
    }

    /** A drawn value with what the exercise draws, and what was typed to narrow it. */
    record Row(String name, String title, String draws, String unit, String from, String to) {}

    /** The ranges that were typed, to be taken only when there is no problem. */
    record Read(Narrowing ranges, List<Problem> problems) {}

    /** The values that can be narrowed, with what is stored. */
    static List<Row> rows(NumericTemplate template, Narrowing stored) {
        return template.draws().stream()
                .filter(rule -> rule.count() > 1)
                .map(rule -> row(
                        rule,
                        stored.of(rule.name())
                                .map(span -> span.from().toPlainString())
                                .orElse(""),
                        stored.of(rule.name())
                                .map(span -> span.to().toPlainString())
                                .orElse("")))
                .toList();
    }

    /** The same rows with what was typed. */
    static List<Row> typed(NumericTemplate template, List<String> from, List<String> to) {
        List<Row> rows = new ArrayList<>();
        for (Row row : rows(template, Narrowing.NONE)) {
            int at = rows.size();
            rows.add(new Row(
                    row.name,
                    row.title,
                    row.draws,
                    row.unit,
                    at < from.size() ? from.get(at) : "",
                    at < to.size() ? to.get(at) : ""));
        }
        return rows;
    }

    private static Row row(DrawRule rule, String from, String to) {
        return new Row(
                rule.name(),
                rule.name().replace('-', ' '),
                draws(rule),
                rule.unit().symbol(),
                from,
                to);
    }

    private static String draws(DrawRule rule) {
        if (rule instanceof DrawRule.Range range) {
            return "%s to %s in steps of %s"
                    .formatted(
                            range.from().toPlainString(),
                            range.to().toPlainString(),
                            range.step().toPlainString());
        }
        return ((DrawRule.Choices) rule)
                .values().stream().map(BigDecimal::toPlainString).collect(Collectors.joining(", ", "one of ", ""));
    }

    static Read read(NumericTemplate template, List<Row> rows, DecimalMark mark) {
        RangesReader reader = new RangesReader(mark);
        Map<String, Narrowing.Span> spans = new LinkedHashMap<>();
        for (Row row : rows) {
            DrawRule rule = template.draws().stream()
                    .filter(one -> one.name().equals(row.name))
                    .findFirst()
                    .orElseThrow();
            reader.span(rule, row).ifPresent(span -> spans.put(row.name, span));
        }
        return new Read(new Narrowing(spans), List.copyOf(reader.problems));
    }

    private Optional<Narrowing.Span> span(DrawRule rule, Row row) {
        if (row.from.isBlank() && row.to.isBlank()) {
            return Optional.empty();
        }
        BigDecimal from = number("from-" + row.name, row.from, rule.least(), rule.unit());
        BigDecimal to = number("to-" + row.name, row.to, rule.most(), rule.unit());
        if (from == null || to == null) {
            return Optional.empty();
        }
        if (Narrowing.left(rule, new Narrowing.Span(from, to)).isEmpty()) {
            problems.add(new Problem(
                    "from-" + row.name,
                    "Nothing that the exercise draws lies from %s to %s. It draws %s."
                            .formatted(from.toPlainString(), to.toPlainString(), row.draws)));
        }
        return Optional.of(new Narrowing.Span(from, to));
    }

    /** A number, in the unit of the value where a unit is written; the exercise's own end where nothing is. */
    private BigDecimal number(String field, String typed, BigDecimal end, Unit unit) {
        if (typed.isBlank()) {
            return end;
        }
        Reading reading = NumberReader.of(mark).read(typed);
        if (!reading.ok() || reading.typedUnit().filter(other -> other != unit).isPresent()) {
            problems.add(new Problem(
                    field, "Write a plain number" + (unit.symbol().isEmpty() ? "." : " in " + unit.symbol() + ".")));
            return null;
        }
        BigDecimal value = reading.value().toDecimal(PLACES).stripTrailingZeros();
        return value.scale() < 0 ? value.setScale(0) : value;
    }
}
