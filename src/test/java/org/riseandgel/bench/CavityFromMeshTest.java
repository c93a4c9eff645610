package org.riseandgel.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.riseandgel.core.mold.Meshes;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.Unit;

class CavityFromMeshTest {
    private final Catalogue catalogue = Catalogue.standard();
    private final CavityFromMesh calculation = new CavityFromMesh();

    @TempDir
    Path folder;

    @Test
    void aFrustumInCentimetres() throws IOException {
        Outcome outcome = measured("cm", Meshes.binary(Meshes.frustum(1024, 8, 6, 14)));
        // textbook frustum of 2169.79333 mL, times sin(2π/n)·n/(2π) for n sides; corners are single precision: 1 in 10⁶
        double factor = Math.sin(2 * Math.PI / 1024) * 1024 / (2 * Math.PI);
        assertThat(outcome.results().get("cavity").inBase()).isCloseTo(2169.79333 * factor, within(2e-3));
        assertThat(outcome.results().get("longestSide").in(Unit.CENTIMETRE)).isCloseTo(16, within(1e-5));
        assertThat(outcome.notes()).extracting(Outcome.Note::text).noneMatch(note -> note.contains("example"));
    }

    @Test
    void theUnitDecides() throws IOException {
        byte[] box = Meshes.text(Meshes.box(2, 3, 4));
        // by hand: 24 mm³, 24 cm³, 24 in³ of 16.387064 mL each
        assertThat(measured("mm", box).results().get("cavity").inBase()).isCloseTo(0.024, within(1e-9));
        assertThat(measured("cm", box).results().get("cavity").inBase()).isCloseTo(24, within(1e-9));
        Outcome inches = measured("in", box);
        assertThat(inches.results().get("cavity").inBase()).isCloseTo(24 * 16.387064, within(1e-6));
        assertThat(Slips.of(inches, Slip.INCHES_FOR_CENTIMETRES, "cavity").inBase())
                .isCloseTo(24, within(1e-9));
        assertThat(Slips.of(inches, Slip.INCHES_FOR_MILLIMETRES, "cavity").inBase())
                .isCloseTo(0.024, within(1e-9));
        SlipsApart.check(calculation, inches);
    }

    @Test
    void insideOutIsMeasuredAndToldOf() throws IOException {
        Outcome outcome = measured("cm", Meshes.binary(Meshes.insideOut(Meshes.box(2, 3, 4))));
        assertThat(outcome.results().get("cavity").inBase()).isCloseTo(24, within(1e-9));
        assertThat(outcome.notes()).extracting(Outcome.Note::text).anyMatch(note -> note.contains("inside out"));
    }

    @Test
    void anOpenMeshIsRefusedAtTheFile() throws IOException {
        List<double[]> box = Meshes.box(2, 3, 4);
        assertThat(read("cm", Meshes.binary(box.subList(1, 12))).problems())
                .singleElement()
                .satisfies(problem -> {
                    assertThat(problem.field()).isEqualTo("file");
                    assertThat(problem.message())
                            .contains("open at the edge from")
                            .endsWith(".");
                });
    }

    @Test
    void noFileIsAskedFor() throws IOException {
        assertThat(new MeshReading()
                        .read(calculation, Map.of(), null, DecimalMark.POINT)
                        .problems())
                .containsExactly(new FieldProblem("file", "Mesh of the cavity: no file was sent. Choose an STL file."));
    }

    @Test
    void theExampleSaysThatItIsOne() {
        assertThat(catalogue.run(calculation, Given.defaultsOf(calculation)).notes())
                .extracting(Outcome.Note::text)
                .anyMatch(note -> note.startsWith("This is the example"));
    }

    private Outcome measured(String unit, byte[] stl) throws IOException {
        return catalogue.run(calculation, read(unit, stl).given().orElseThrow());
    }

    private GivenReading read(String unit, byte[] stl) throws IOException {
        Path file = Files.write(folder.resolve("mesh.stl"), stl);
        return new MeshReading().read(calculation, Map.of("unit", unit), file, DecimalMark.POINT);
    }
}
