package org.riseandgel.core.mold;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Meshes to test with: triangles as nine numbers, and the two forms of STL. */
public final class Meshes {
    private Meshes() {}

    /** A frustum with n sides: bottom and top regular polygons in the circles of the radii, facing out. */
    public static List<double[]> frustum(int n, double bottom, double top, double height) {
        List<double[]> triangles = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            double[] a = corner(i, n, bottom, 0);
            double[] b = corner(i + 1, n, bottom, 0);
            double[] c = corner(i, n, top, height);
            double[] d = corner(i + 1, n, top, height);
            triangles.add(triangle(a, b, d));
            triangles.add(triangle(a, d, c));
            triangles.add(triangle(b, a, new double[] {0, 0, 0}));
            triangles.add(triangle(c, d, new double[] {0, 0, height}));
        }
        return triangles;
    }

    /** A box from the origin. */
    public static List<double[]> box(double x, double y, double z) {
        double[][] p = {{0, 0, 0}, {x, 0, 0}, {x, y, 0}, {0, y, 0}, {0, 0, z}, {x, 0, z}, {x, y, z}, {0, y, z}};
        int[][] faces = {
            {0, 2, 1}, {0, 3, 2}, {4, 5, 6}, {4, 6, 7}, {0, 1, 5}, {0, 5, 4}, {1, 2, 6}, {1, 6, 5}, {2, 3, 7},
            {2, 7, 6}, {3, 0, 4}, {3, 4, 7}
        };
        List<double[]> triangles = new ArrayList<>();
        for (int[] face : faces) {
            triangles.add(triangle(p[face[0]], p[face[1]], p[face[2]]));
        }
        return triangles;
    }

    public static List<double[]> insideOut(List<double[]> triangles) {
        return triangles.stream()
                .map(t -> new double[] {t[3], t[4], t[5], t[0], t[1], t[2], t[6], t[7], t[8]})
                .toList();
    }

    static List<double[]> moved(List<double[]> triangles, double x, double y, double z) {
        double[] by = {x, y, z};
        return triangles.stream()
                .map(t -> {
                    double[] moved = t.clone();
                    for (int i = 0; i < 9; i++) {
                        moved[i] += by[i % 3];
                    }
                    return moved;
                })
                .toList();
    }

    public static byte[] binary(List<double[]> triangles) {
        ByteBuffer bytes = ByteBuffer.allocate(84 + 50 * triangles.size()).order(ByteOrder.LITTLE_ENDIAN);
        bytes.put("solid in the heading of a binary file".getBytes(StandardCharsets.US_ASCII));
        bytes.putInt(80, triangles.size());
        bytes.position(84);
        for (double[] triangle : triangles) {
            bytes.putFloat(0).putFloat(0).putFloat(0);
            for (double value : triangle) {
                bytes.putFloat((float) value);
            }
            bytes.putShort((short) 0);
        }
        return bytes.array();
    }

    public static byte[] text(List<double[]> triangles) {
        StringBuilder text = new StringBuilder("solid a made-up shape\n");
        for (double[] t : triangles) {
            text.append("  facet normal 0 0 0\n    outer loop\n");
            for (int i = 0; i < 9; i += 3) {
                text.append(String.format(
                        Locale.ROOT, "      vertex %s %s %s%n", (float) t[i], (float) t[i + 1], (float) t[i + 2]));
            }
            text.append("    endloop\n  endfacet\n");
        }
        return text.append("endsolid a made-up shape\n").toString().getBytes(StandardCharsets.US_ASCII);
    }

    private static double[] triangle(double[] a, double[] b, double[] c) {
        return new double[] {a[0], a[1], a[2], b[0], b[1], b[2], c[0], c[1], c[2]};
    }

    private static double[] corner(int i, int n, double radius, double height) {
        double angle = 2 * Math.PI * (i % n) / n;
        return new double[] {radius * Math.cos(angle), radius * Math.sin(angle), height};
    }
}
