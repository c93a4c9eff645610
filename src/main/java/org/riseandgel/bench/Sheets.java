package org.riseandgel.bench;

import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.platform.school.SchoolSettings;

/** The bench sheets: what was typed goes in, a page's worth of written-out results or of problems comes out. */
@ApplicationScoped
public class Sheets {
    private static final int LONGEST_KEPT = 200;

    private final Catalogue catalogue = Catalogue.standard();
    private final MeshReading meshes = new MeshReading();
    private final SchoolSettings settings;

    Sheets(SchoolSettings settings) {
        this.settings = settings;
    }

    /** All calculations, in the order of the bench. */
    public List<Calculation> all() {
        return catalogue.all();
    }

    /** The sheet of a calculation, worked with what was typed and with defaults for the rest; none of that id is empty. */
    public Optional<Sheet> open(String id, Map<String, String> typed) {
        return catalogue.find(id).map(calculation -> sheet(calculation, kept(calculation, typed)));
    }

    /**
     * The sheet of the cavity from a mesh, worked with the file that was sent.
     *
     * @param stl where it lies; null when none was sent
     * @throws IOException when it cannot be read
     */
    public Sheet ofMesh(Map<String, String> typed, Path stl) throws IOException {
        Calculation calculation = catalogue.find("cavity-from-mesh").orElseThrow();
        Map<String, String> values = kept(calculation, typed);
        QuantityText text = QuantityText.of(settings.decimalMark());
        GivenReading reading = meshes.read(calculation, values, stl, settings.decimalMark());
        return sheet(calculation, values, text, reading);
    }

    /** The volume stick for what was typed; empty when the sheet has something to mend first. */
    public Optional<Stick> stick(Map<String, String> typed) {
        Calculation stick = catalogue.find("stick-marks").orElseThrow();
        Map<String, String> values = kept(stick, typed);
        QuantityText text = QuantityText.of(settings.decimalMark());
        Sheet sheet = sheet(stick, values);
        if (!sheet.isWorked()) {
            return Optional.empty();
        }
        Given given = GivenReader.of(settings.decimalMark())
                .read(stick, values)
                .given()
                .orElseThrow();
        return Optional.of(Stick.of(given, text, query(values)));
    }

    private Sheet sheet(Calculation calculation, Map<String, String> typed) {
        DecimalMark mark = settings.decimalMark();
        QuantityText text = QuantityText.of(mark);
        return sheet(calculation, typed, text, GivenReader.of(mark).read(calculation, typed));
    }

    private Sheet sheet(Calculation calculation, Map<String, String> typed, QuantityText text, GivenReading reading) {
        if (reading.given().isEmpty()) {
            return sheet(calculation, typed, text, reading.problems(), null);
        }
        Given given = reading.given().get();
        try {
            Outcome outcome = catalogue.run(calculation, given);
            Sheet.Worked worked = new SheetWriter(text).worked(calculation, given, outcome);
            return sheet(calculation, typed, text, List.of(), worked);
        } catch (OutOfRangeException refused) {
            FieldProblem problem =
                    new FieldProblem(calculation.inputAt(refused.what()), text.sentence(refused.getMessage()));
            return sheet(calculation, typed, text, List.of(problem), null);
        }
    }

    private static Sheet sheet(
            Calculation calculation,
            Map<String, String> typed,
            QuantityText text,
            List<FieldProblem> problems,
            Sheet.Worked worked) {
        SheetWriter writer = new SheetWriter(text);
        return new Sheet(
                calculation.id(),
                calculation.title(),
                calculation.purpose(),
                calculation.inputs().stream()
                        .map(input -> writer.field(input, typed.getOrDefault(input.name(), writer.byDefault(input))))
                        .toList(),
                calculation.cautions(),
                problems,
                worked,
                calculation instanceof MarkStick ? "/bench/stick-marks/stick?" + query(typed) : null);
    }

    /** What was typed for the inputs of the calculation, and nothing else. */
    private static Map<String, String> kept(Calculation calculation, Map<String, String> typed) {
        Map<String, String> kept = new LinkedHashMap<>();
        for (Input input : calculation.inputs()) {
            String value = typed.get(input.name());
            if (value != null) {
                kept.put(input.name(), value.substring(0, Math.min(value.length(), longest(input))));
            }
        }
        return kept;
    }

    /** One more than a table may have, so that a cut is never taken for what was written. */
    private static int longest(Input input) {
        return input instanceof Input.Readings ? ReadingLines.LONGEST + 1 : LONGEST_KEPT;
    }

    static String query(Map<String, String> typed) {
        return typed.entrySet().stream()
                .map(value -> value.getKey() + "=" + URLEncoder.encode(value.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
    }
}
