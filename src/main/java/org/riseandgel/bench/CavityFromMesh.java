package org.riseandgel.bench;

import static org.riseandgel.core.quantity.Unit.CENTIMETRE;
import static org.riseandgel.core.quantity.Unit.MILLILITRE;
import static org.riseandgel.core.quantity.Unit.ONE;

import java.util.List;
import org.riseandgel.core.mold.MeshVolume;
import org.riseandgel.core.quantity.Length;
import org.riseandgel.core.quantity.Ratio;
import org.riseandgel.core.quantity.Unit;
import org.riseandgel.core.quantity.Volume;

/** How much a mold takes, from a closed mesh of its cavity. */
public final class CavityFromMesh implements Calculation {
    static final String MESH = "file";
    static final String UNIT = "unit";
    static final String CAVITY = "cavity";
    static final String LONGEST = "longestSide";

    /** A box of 6 × 5 × 4 cm: six sides of two triangles. */
    static final MeshVolume EXAMPLE = new MeshVolume(Volume.ofMillilitres(120), 12, false, Length.ofCentimetres(6));

    @Override
    public String id() {
        return "cavity-from-mesh";
    }

    @Override
    public String title() {
        return "Cavity from a mesh";
    }

    @Override
    public String purpose() {
        return "How much foam one mold takes, from a closed mesh of its cavity.";
    }

    @Override
    public Task task() {
        return Task.MOLD;
    }

    @Override
    public List<Input> inputs() {
        return List.of(
                new Input.Mesh(
                        MESH,
                        "Mesh of the cavity",
                        "An STL file, binary or text, of up to 64 MB. It must be closed, and is deleted as soon as it is"
                                + " measured.",
                        EXAMPLE),
                new Input.Choice(
                        UNIT,
                        "Drawn in",
                        "The file does not say what its numbers mean: choose the unit in which it was drawn.",
                        List.of(
                                new Input.Option(Unit.MILLIMETRE.code(), "millimetres"),
                                new Input.Option(Unit.CENTIMETRE.code(), "centimetres"),
                                new Input.Option(Unit.INCH.code(), "inches"))));
    }

    @Override
    public List<Result> results() {
        return List.of(
                new Result(CAVITY, "Cavity of one mold", MILLILITRE, 1),
                new Result(LONGEST, "Longest side of the box around it", CENTIMETRE, 0.1));
    }

    @Override
    public String inputAt(String what) {
        return MESH;
    }

    @Override
    public void work(Given given, Work work) {
        MeshVolume mesh = given.mesh(MESH);
        work.result(
                CAVITY,
                work.step(
                        CAVITY,
                        "What the mesh encloses",
                        "V = sum of a · (b × c) ÷ 6 over all triangles, a, b and c being their corners",
                        "{} triangles",
                        mesh.volume(),
                        MILLILITRE,
                        Work.In.of(Ratio.of(mesh.triangles()), ONE)));
        work.result(LONGEST, mesh.longest());
        if (given.choice(UNIT).equals(Unit.INCH.code())) {
            unitSlip(Slip.INCHES_FOR_CENTIMETRES, CENTIMETRE, mesh, work);
            unitSlip(Slip.INCHES_FOR_MILLIMETRES, Unit.MILLIMETRE, mesh, work);
        }
        remarks(mesh, work);
    }

    private static void unitSlip(Slip slip, Unit taken, MeshVolume mesh, Work work) {
        double times = Unit.INCH.factor().dividedBy(taken.factor()).toDouble();
        work.slip(slip, CAVITY, () -> Volume.ofMillilitres(mesh.volume().inMillilitres() / (times * times * times)));
        work.slip(slip, LONGEST, () -> Length.ofMillimetres(mesh.longest().inMillimetres() / times));
    }

    private static void remarks(MeshVolume mesh, Work work) {
        if (mesh == EXAMPLE) {
            work.note("This is the example: a box of 6 × 5 × 4 cm. Send your own file to measure it.");
        }
        if (mesh.insideOut()) {
            work.note("The mesh is inside out: its triangles face inwards. The volume is right all the same.");
        }
        work.note("Hold a ruler to the longest side. If it is wrong, the mesh was drawn in another unit.");
        work.note("This is the cavity alone: overfill and what stays in the bowl come on top.");
    }
}
