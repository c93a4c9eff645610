package org.riseandgel.core.mold;

import org.riseandgel.core.statistics.CompensatedSum;

/** Takes triangles one by one: adds up the volume, numbers the corners, and remembers the edges. */
final class MeshSink {
    private static final float FARTHEST = 1e6f;

    private final CornerTable corners = new CornerTable();
    private final EdgeList edges = new EdgeList();
    private final CompensatedSum sixfold = new CompensatedSum();
    private final CompensatedSum area = new CompensatedSum();
    private final float[] low = {Float.MAX_VALUE, Float.MAX_VALUE, Float.MAX_VALUE};
    private final float[] high = {-Float.MAX_VALUE, -Float.MAX_VALUE, -Float.MAX_VALUE};
    private final double[] origin = new double[3];
    private int triangles;

    /** Three corners, nine coordinates in a row. */
    void add(float[] nine) {
        if (triangles == MeshVolume.MOST_TRIANGLES) {
            throw tooMany(MeshVolume.MOST_TRIANGLES + 1L);
        }
        for (int i = 0; i < nine.length; i++) {
            bound(nine[i], i % 3);
        }
        if (triangles == 0) {
            for (int i = 0; i < 3; i++) {
                origin[i] = nine[i];
            }
        }
        triangles++;
        int a = corners.numberOf(nine, 0);
        int b = corners.numberOf(nine, 3);
        int c = corners.numberOf(nine, 6);
        // A triangle with two corners in one place has no area, and its two edges undo each other.
        if (a != b && b != c && c != a) {
            edges.add(a, b);
            edges.add(b, c);
            edges.add(c, a);
            addVolume(nine);
        }
    }

    int triangles() {
        return triangles;
    }

    /** The longest side of the box around all corners, in the file's unit. */
    double longest() {
        if (triangles == 0) {
            throw new MeshRefusedException(
                    MeshRefusedException.Reason.EMPTY, "the mesh has no triangles, must have 4 or more");
        }
        return Math.max((double) high[0] - low[0], Math.max((double) high[1] - low[1], (double) high[2] - low[2]));
    }

    /** The volume in the file's unit cubed, negative when the triangles face inwards. */
    double closedVolume() {
        edges.requireClosed(corners);
        double volume = sixfold.total() / 6;
        // Rounding leaves a flat mesh with a little more than nothing.
        if (Math.abs(volume) <= 1e-9 * area.total() * longest()) {
            throw new MeshRefusedException(
                    MeshRefusedException.Reason.EMPTY, "the mesh is flat, must enclose a volume");
        }
        return volume;
    }

    static MeshRefusedException tooMany(long count) {
        return new MeshRefusedException(
                MeshRefusedException.Reason.TOO_MANY,
                "the mesh has %d triangles or more, must have at most %d".formatted(count, MeshVolume.MOST_TRIANGLES));
    }

    private void bound(float value, int axis) {
        if (!(Math.abs(value) <= FARTHEST)) {
            throw new MeshRefusedException(
                    MeshRefusedException.Reason.NOT_A_NUMBER,
                    "a corner of triangle %d lies at %s, must be from %s to %s"
                            .formatted(
                                    triangles + 1,
                                    MeshNumber.words(value),
                                    MeshNumber.words(-FARTHEST),
                                    MeshNumber.words(FARTHEST)));
        }
        low[axis] = Math.min(low[axis], value);
        high[axis] = Math.max(high[axis], value);
    }

    private void addVolume(float[] p) {
        double ax = p[0] - origin[0];
        double ay = p[1] - origin[1];
        double az = p[2] - origin[2];
        double bx = p[3] - origin[0];
        double by = p[4] - origin[1];
        double bz = p[5] - origin[2];
        double cx = p[6] - origin[0];
        double cy = p[7] - origin[1];
        double cz = p[8] - origin[2];
        sixfold.add(ax * (by * cz - bz * cy));
        sixfold.add(ay * (bz * cx - bx * cz));
        sixfold.add(az * (bx * cy - by * cx));
        double nx = (by - ay) * (cz - az) - (bz - az) * (cy - ay);
        double ny = (bz - az) * (cx - ax) - (bx - ax) * (cz - az);
        double nz = (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
        area.add(StrictMath.sqrt(nx * nx + ny * ny + nz * nz) / 2);
    }
}
