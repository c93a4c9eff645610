package org.riseandgel.core.mold;

import java.util.Arrays;

/** Gives every corner a number, the same to the same coordinates: open addressing over three floats, −0 being 0. */
final class CornerTable {
    private static final int NONE = -1;

    private float[] coordinates = new float[3 * 64];
    private int[] slots = empty(256);
    private int count;

    /** The number of the corner whose coordinates start at an index. */
    int numberOf(float[] nine, int from) {
        float x = nine[from] + 0f;
        float y = nine[from + 1] + 0f;
        float z = nine[from + 2] + 0f;
        int slot = slotOf(x, y, z);
        if (slots[slot] == NONE) {
            slots[slot] = append(x, y, z);
            int number = slots[slot];
            if (2 * count > slots.length) {
                grow();
            }
            return number;
        }
        return slots[slot];
    }

    /** The corner in words: (1, 2.5, 3). */
    String words(int number) {
        return "(%s, %s, %s)"
                .formatted(
                        MeshNumber.words(coordinates[3 * number]),
                        MeshNumber.words(coordinates[3 * number + 1]),
                        MeshNumber.words(coordinates[3 * number + 2]));
    }

    private int append(float x, float y, float z) {
        if (3 * count == coordinates.length) {
            coordinates = Arrays.copyOf(coordinates, 2 * coordinates.length);
        }
        coordinates[3 * count] = x;
        coordinates[3 * count + 1] = y;
        coordinates[3 * count + 2] = z;
        return count++;
    }

    private int slotOf(float x, float y, float z) {
        int slot = spread(x, y, z) & (slots.length - 1);
        while (slots[slot] != NONE && !is(slots[slot], x, y, z)) {
            slot = (slot + 1) & (slots.length - 1);
        }
        return slot;
    }

    private boolean is(int number, float x, float y, float z) {
        return coordinates[3 * number] == x && coordinates[3 * number + 1] == y && coordinates[3 * number + 2] == z;
    }

    private void grow() {
        slots = empty(2 * slots.length);
        for (int number = 0; number < count; number++) {
            slots[slotOf(coordinates[3 * number], coordinates[3 * number + 1], coordinates[3 * number + 2])] = number;
        }
    }

    /** Floats of round numbers end in many zero bits, so the bits are stirred (finaliser of MurmurHash3, public domain). */
    private static int spread(float x, float y, float z) {
        long bits = Float.floatToIntBits(x) * 0x9E3779B97F4A7C15L;
        bits = (bits ^ Float.floatToIntBits(y)) * 0xC2B2AE3D27D4EB4FL;
        bits = (bits ^ Float.floatToIntBits(z)) * 0x165667B19E3779F9L;
        bits ^= bits >>> 33;
        bits *= 0xFF51AFD7ED558CCDL;
        return (int) (bits ^ bits >>> 33);
    }

    private static int[] empty(int size) {
        int[] slots = new int[size];
        Arrays.fill(slots, NONE);
        return slots;
    }
}
