package org.riseandgel.bench;

import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.platform.school.SchoolSettings;

/** The bench sheets: what was typed goes in, a page's worth of written-out results or of problems comes out. */
@ApplicationScoped
public class Sheets {
    /** The parameter that says in which units results are shown; no input bears this name. */
    static final String UNITS = "units";

    private static final int LONGEST_KEPT = 200;

    private final Catalogue catalogue = Catalogue.standard();
    private final MeshReading meshes = new MeshReading();
    private final SchoolSettings settings;

    Sheets(SchoolSettings settings) {
        this.settings = settings;
    }

    /** The calculations of one kind of work. */
    public record Shelf(String heading, List<Calculation> calculations) {}

    /** All calculations by the work they belong to, in the order of the bench. */
    public List<Shelf> shelves() {
        return Arrays.stream(Task.values())
                .map(task -> new Shelf(
                        task.getHeading(),
                        catalogue.all().stream()
                                .filter(calculation -> calculation.task() == task)
                                .toList()))
                .toList();
    }

    /** The sheet of a calculation, worked with what was typed and with defaults for the rest; none of that id is empty. */
    public Optional<Sheet> open(String id, Map<String, String> typed) {
        return catalogue.find(id).map(calculation -> sheet(calculation, typed));
    }

    /**
     * The sheet of the cavity from a mesh, worked with the file that was sent.
     *
     * @param stl where it lies; null when none was sent
     * @throws IOException when it cannot be read
     */
    public Sheet ofMesh(Map<String, String> typed, Path stl) throws IOException {
        Calculation calculation = catalogue.find("cavity-from-mesh").orElseThrow();
        DecimalMark mark = settings.decimalMark();
        GivenReading reading = meshes.read(calculation, kept(calculation, typed), stl, mark);
        return sheet(calculation, typed, Attempt.of(catalogue, calculation, reading, mark));
    }

    /** The volume stick for what was typed; empty when the sheet has something to mend first. */
    public Optional<Stick> stick(Map<String, String> typed) {
        Calculation stick = catalogue.find("stick-marks").orElseThrow();
        Map<String, String> values = kept(stick, typed);
        DecimalMark mark = settings.decimalMark();
        Attempt attempt = Attempt.at(catalogue, stick, values, mark);
        return attempt.outcome().isEmpty()
                ? Optional.empty()
                : Optional.of(
                        Stick.of(attempt.given().orElseThrow(), QuantityText.of(mark), query(all(values, typed))));
    }

    private Sheet sheet(Calculation calculation, Map<String, String> typed) {
        Map<String, String> values = kept(calculation, typed);
        return sheet(calculation, typed, Attempt.at(catalogue, calculation, values, settings.decimalMark()));
    }

    private Sheet sheet(Calculation calculation, Map<String, String> typed, Attempt attempt) {
        Map<String, String> values = kept(calculation, typed);
        QuantityText text = QuantityText.of(settings.decimalMark());
        UnitSystem system = UnitSystem.of(typed.get(UNITS));
        SheetWriter writer = new SheetWriter(text, isSwitchable(calculation) ? text.in(system) : text);
        return new Sheet(
                calculation.id(),
                calculation.title(),
                calculation.purpose(),
                calculation.inputs().stream()
                        .map(input -> writer.field(input, values.getOrDefault(input.name(), writer.byDefault(input))))
                        .toList(),
                calculation.cautions(),
                attempt.problems(),
                attempt.outcome()
                        .map(outcome ->
                                writer.worked(calculation, attempt.given().orElseThrow(), outcome))
                        .orElse(null),
                calculation instanceof MarkStick ? "/bench/stick-marks/stick?" + query(all(values, typed)) : null,
                isSwitchable(calculation) ? unitSwitch(calculation, values, system) : null);
    }

    /** Where a result is in the unit that the person chose, no other unit is put in its place. */
    private static boolean isSwitchable(Calculation calculation) {
        return calculation.results().stream().allMatch(result -> result.unit() != null);
    }

    private static Sheet.UnitSwitch unitSwitch(Calculation calculation, Map<String, String> values, UnitSystem system) {
        Map<String, String> other = new LinkedHashMap<>(values);
        other.put(UNITS, system.other().id());
        return new Sheet.UnitSwitch(system, "/bench/" + calculation.id() + "?" + query(other));
    }

    /** The values, and the units in which the sheet is shown where these were asked for. */
    private static Map<String, String> all(Map<String, String> values, Map<String, String> typed) {
        Map<String, String> all = new LinkedHashMap<>(values);
        if (typed.containsKey(UNITS)) {
            all.put(UNITS, UnitSystem.of(typed.get(UNITS)).id());
        }
        return all;
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
