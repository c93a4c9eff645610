package org.riseandgel.core.mold;

import java.util.Arrays;

/** The edges of all triangles with their directions, to be matched when all are there. */
final class EdgeList {
    private static final int NUMBER_BITS = 31;

    /** Smaller corner, larger corner, and whether the edge runs from the larger to the smaller: 31, 31 and 1 bits. */
    private long[] edges = new long[256];

    private int count;

    void add(int from, int to) {
        if (count == edges.length) {
            edges = Arrays.copyOf(edges, 2 * edges.length);
        }
        long pair = (long) Math.min(from, to) << NUMBER_BITS + 1 | (long) Math.max(from, to) << 1;
        edges[count++] = from < to ? pair : pair | 1;
    }

    /** Every edge must be run through exactly once either way. */
    void requireClosed(CornerTable corners) {
        Arrays.sort(edges, 0, count);
        for (int i = 0; i < count; ) {
            int next = i + 1;
            while (next < count && edges[next] >> 1 == edges[i] >> 1) {
                next++;
            }
            requirePair(i, next, corners);
            i = next;
        }
    }

    private void requirePair(int from, int to, CornerTable corners) {
        int times = to - from;
        if (times > 2) {
            throw new MeshRefusedException(
                    MeshRefusedException.Reason.BRANCHING,
                    "the edge from %s has %d triangles, must have 2".formatted(words(edges[from], corners), times));
        }
        if (times == 1) {
            throw new MeshRefusedException(
                    MeshRefusedException.Reason.OPEN,
                    "the mesh is open at the edge from %s: it has 1 triangle, must have 2"
                            .formatted(words(edges[from], corners)));
        }
        if (edges[from] == edges[from + 1]) {
            throw new MeshRefusedException(
                    MeshRefusedException.Reason.OPEN,
                    "the two triangles at the edge from %s face opposite ways, must both face out"
                            .formatted(words(edges[from], corners)));
        }
    }

    private static String words(long edge, CornerTable corners) {
        int low = (int) (edge >> NUMBER_BITS + 1);
        int high = (int) (edge >> 1 & (1L << NUMBER_BITS) - 1);
        return corners.words(low) + " to " + corners.words(high);
    }
}
