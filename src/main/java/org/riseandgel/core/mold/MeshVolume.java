package org.riseandgel.core.mold;

import java.io.IOException;
import java.io.InputStream;
import org.riseandgel.core.quantity.Length;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.QuantityKind;
import org.riseandgel.core.quantity.Unit;
import org.riseandgel.core.quantity.Volume;

/**
 * What a closed triangle mesh encloses.
 *
 * <p>V = Σ a·(b × c) ÷ 6 over the triangles, a, b, c being their corners seen from a point near by; the sum is
 * compensated, so that it is good to about 1 part in 10¹⁰ wherever the mesh lies. The mesh must be closed: every edge is
 * run through exactly once in each direction. Corners are the same when their coordinates are the same as single
 * precision numbers, which is how binary STL holds them; nothing is stitched together. Source: the divergence theorem.
 *
 * @param volume what it encloses
 * @param triangles how many it has
 * @param insideOut whether its triangles face inwards, so that the sum came out negative; the volume is right all the same
 * @param longest the longest side of the box around it, parallel to the axes
 */
public record MeshVolume(Volume volume, int triangles, boolean insideOut, Length longest) {
    /** More triangles than this are refused: 2 million. */
    public static final int MOST_TRIANGLES = 2_000_000;

    private static final double SHORTEST_MOLD_MILLIMETRES = 1;
    private static final double LONGEST_MOLD_MILLIMETRES = 5000;

    /**
     * Reads an STL file, binary or text, to its end. It needs up to about 250 MB for the largest mesh and little for a
     * small one; a file that claims to be larger than it is costs nothing.
     *
     * @param unit the length that the file's numbers mean: STL itself says nothing of it
     * @throws IOException when the stream cannot be read
     * @throws OutOfRangeException when the unit is none of length
     * @throws MeshRefusedException when the file is no closed mesh, or in this unit is shorter than 1 mm or longer than 5 m
     */
    public static MeshVolume read(InputStream stl, Unit unit) throws IOException {
        double millimetres = millimetresIn(unit);
        MeshSink mesh = new MeshSink();
        new StlReader(stl).readInto(mesh);
        double longest = mesh.longest() * millimetres;
        if (longest < SHORTEST_MOLD_MILLIMETRES || longest > LONGEST_MOLD_MILLIMETRES) {
            throw new MeshRefusedException(
                    MeshRefusedException.Reason.UNLIKELY_UNIT,
                    "the mesh would be %s mm long, must be from %s to %s mm: choose the unit in which it was drawn"
                            .formatted(
                                    MeshNumber.words(longest),
                                    MeshNumber.words(SHORTEST_MOLD_MILLIMETRES),
                                    MeshNumber.words(LONGEST_MOLD_MILLIMETRES)));
        }
        double signed = mesh.closedVolume() * millimetres * millimetres * millimetres;
        return new MeshVolume(
                Volume.ofCubicMillimetres(Math.abs(signed)),
                mesh.triangles(),
                signed < 0,
                Length.ofMillimetres(longest));
    }

    private static double millimetresIn(Unit unit) {
        if (unit.kind() != QuantityKind.LENGTH) {
            throw OutOfRangeException.because("unit", "the unit is %s, must be one of length".formatted(unit.code()));
        }
        return unit.toBase(1.0);
    }
}
