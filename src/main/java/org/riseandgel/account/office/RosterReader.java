package org.riseandgel.account.office;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.riseandgel.account.office.Roster.Entry;
import org.riseandgel.account.office.Roster.Fault;

/**
 * Reads a list of people from comma-separated text (RFC 4180) with the heading {@code name,sign-in name,role,cohort}.
 * Semicolons or tabs may stand for commas, and a byte order mark is passed over. Every fault is found, not only the
 * first.
 */
final class RosterReader {
    static final int MOST_BYTES = 2_000_000;
    static final int MOST_PEOPLE = 10_000;
    static final String TOO_MANY = "There are more than 10,000 people in the list. Split it.";
    static final String TOO_LARGE = "The list is larger than 2 MB. Split it in two.";
    static final int MOST_FAULTS = 200;

    /** Rows that hold nothing are passed over, but not without end. */
    private static final int MOST_ROWS = 4 * MOST_PEOPLE;

    private static final List<String> COLUMNS = List.of("name", "sign-in name", "role", "cohort");
    private static final String HEADING = "The first line must be: name,sign-in name,role,cohort";

    private RosterReader() {}

    /** The text of a file, if it is UTF-8. */
    static Optional<String> text(byte[] bytes) {
        try {
            return Optional.of(StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString());
        } catch (CharacterCodingException e) {
            return Optional.empty();
        }
    }

    /** The list in the text. */
    static Roster read(String text) {
        // A page sends every line end as two characters; a list that fitted once must fit again.
        if (text.replace("\r", "").getBytes(StandardCharsets.UTF_8).length > MOST_BYTES) {
            return Roster.wrong(0, TOO_LARGE);
        }
        String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
        if (plain.isBlank()) {
            return Roster.wrong(0, "The list is empty. Paste it, or choose a file. " + HEADING + ".");
        }
        return parse(plain);
    }

    private static Roster parse(String text) {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setDelimiter(delimiter(text))
                .setIgnoreEmptyLines(true)
                .build();
        List<Numbered> rows = new ArrayList<>();
        try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
            for (CSVRecord record : parser) {
                rows.add(new Numbered((int) parser.getCurrentLineNumber(), record.toList()));
                if (rows.size() > MOST_ROWS) {
                    return Roster.wrong(0, TOO_MANY);
                }
            }
        } catch (IOException | UncheckedIOException e) {
            return unpaired(rows);
        }
        return roster(rows);
    }

    /** The lines before the quotation mark that is never closed are looked through all the same. */
    private static Roster unpaired(List<Numbered> rows) {
        int line = rows.isEmpty() ? 1 : rows.get(rows.size() - 1).line + 1;
        List<Fault> faults = new ArrayList<>();
        if (rows.size() > 1) {
            roster(rows).faults().stream().filter(fault -> fault.line() > 0).forEach(faults::add);
        }
        faults.add(new Fault(
                line,
                "From here on the quotation marks do not pair. Close each one that is opened, and"
                        + " double those inside a name."));
        return new Roster(List.of(), faults);
    }

    private static char delimiter(String text) {
        String first = text.strip().lines().findFirst().orElse("");
        if (first.indexOf(',') < 0) {
            return first.indexOf(';') >= 0 ? ';' : first.indexOf('\t') >= 0 ? '\t' : ',';
        }
        return ',';
    }

    private static Roster roster(List<Numbered> rows) {
        List<String> heading = rows.get(0).cells.stream()
                .map(cell -> cell.strip().toLowerCase(Locale.ROOT))
                .toList();
        Optional<String> wrong = wrongHeading(heading);
        if (wrong.isPresent()) {
            return Roster.wrong(rows.get(0).line, wrong.get());
        }
        List<Numbered> people = rows.subList(1, rows.size()).stream()
                .filter(row -> row.cells.stream().anyMatch(cell -> !cell.isBlank()))
                .toList();
        if (people.isEmpty()) {
            return Roster.wrong(0, "There is a heading but no person below it. Write one person on each line.");
        }
        if (people.size() > MOST_PEOPLE) {
            return Roster.wrong(0, TOO_MANY);
        }
        return check(heading, people);
    }

    private static Optional<String> wrongHeading(List<String> heading) {
        String unknown = heading.stream().filter(h -> !COLUMNS.contains(h)).collect(Collectors.joining(", "));
        if (!unknown.isEmpty()) {
            return Optional.of(HEADING + ". Not known: " + unknown + ".");
        }
        if (heading.stream().distinct().count() < heading.size()) {
            return Optional.of("A column is there twice. " + HEADING + ".");
        }
        return heading.containsAll(COLUMNS)
                ? Optional.empty()
                : Optional.of("A column is missing. " + HEADING
                        + ". The cohort may be empty, its column may not be left" + " out.");
    }

    private static Roster check(List<String> heading, List<Numbered> people) {
        List<Entry> entries = new ArrayList<>();
        List<Fault> faults = new ArrayList<>();
        Map<String, Integer> seen = new HashMap<>();
        for (Numbered row : people) {
            if (row.cells.size() == heading.size()) {
                Entry entry = entry(heading, row);
                entries.add(entry);
                RosterRules.faults(entry, seen.putIfAbsent(entry.signInName(), row.line))
                        .forEach(message -> faults.add(new Fault(row.line, message)));
            } else {
                faults.add(new Fault(
                        row.line,
                        "This line has " + row.cells.size() + " entries; it must have " + heading.size()
                                + ". Look for a separator too many or too few."));
            }
        }
        return new Roster(entries, faults.stream().limit(MOST_FAULTS).toList());
    }

    private static Entry entry(List<String> heading, Numbered row) {
        Map<String, String> cells =
                IntStream.range(0, heading.size()).boxed().collect(Collectors.toMap(heading::get, row.cells::get));
        return RosterRules.tidy(
                row.line, cells.get("name"), cells.get("sign-in name"), cells.get("role"), cells.get("cohort"));
    }

    private record Numbered(int line, List<String> cells) {}
}
