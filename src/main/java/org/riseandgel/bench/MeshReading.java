package org.riseandgel.bench;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.riseandgel.core.mold.MeshRefusedException;
import org.riseandgel.core.mold.MeshVolume;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.Unit;

/** Reads the file that was sent with the sheet of the cavity from a mesh. */
final class MeshReading {
    /** What was given, or why the file is refused. A large mesh takes much memory, so they are read one after the other. */
    synchronized GivenReading read(Calculation calculation, Map<String, String> typed, Path stl, DecimalMark mark)
            throws IOException {
        GivenReading reading = GivenReader.of(mark).read(calculation, typed);
        if (reading.given().isEmpty()) {
            return reading;
        }
        if (stl == null) {
            return refused("Mesh of the cavity: no file was sent. Choose an STL file.");
        }
        Given given = reading.given().get();
        try (InputStream in = Files.newInputStream(stl)) {
            Unit unit = Unit.byCode(given.choice(CavityFromMesh.UNIT)).orElseThrow();
            MeshVolume mesh = MeshVolume.read(in, unit);
            return new GivenReading(Optional.of(given.measuring(CavityFromMesh.MESH, mesh)), List.of());
        } catch (MeshRefusedException refused) {
            return refused("Mesh of the cavity: " + QuantityText.of(mark).sentence(refused.getMessage()));
        }
    }

    private static GivenReading refused(String why) {
        return new GivenReading(Optional.empty(), List.of(new FieldProblem(CavityFromMesh.MESH, why)));
    }
}
