package org.riseandgel.speed;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.concurrent.TimeUnit;
import java.util.zip.CRC32;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.riseandgel.core.mold.MeshVolume;
import org.riseandgel.core.quantity.Unit;

/** The volume of a closed mesh of a million triangles, a ring of 100 mm by 40 mm, in binary STL from memory. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 3)
@Measurement(iterations = 3, time = 3)
public class MeshSpeed {
    private static final int AROUND = 1000;
    private static final int ACROSS = 500;
    private static final double RING = 100;
    private static final double TUBE = 40;
    private static final int HEADING = 84;
    private static final int TRIANGLE = 50;

    private byte[] stl;

    @Setup
    public void build() throws IOException {
        int triangles = 2 * AROUND * ACROSS;
        ByteBuffer bytes =
                ByteBuffer.allocate(HEADING + TRIANGLE * triangles).order(ByteOrder.LITTLE_ENDIAN);
        bytes.putInt(HEADING - Integer.BYTES, triangles).position(HEADING);
        for (int i = 0; i < AROUND; i++) {
            for (int j = 0; j < ACROSS; j++) {
                triangle(bytes, i, j, i + 1, j, i + 1, j + 1);
                triangle(bytes, i, j, i + 1, j + 1, i, j + 1);
            }
        }
        stl = bytes.array();
        double closed = 2 * Math.PI * Math.PI * RING * TUBE * TUBE;
        double found = volume().volume().in(Unit.CUBIC_MILLIMETRE);
        if (Math.abs(found / closed - 1) > 1e-4) {
            throw new IllegalStateException("the ring holds " + found + " mm³, should be near " + closed);
        }
    }

    /** The yardstick: every byte looked at once. */
    @Benchmark
    public long checksumOfTheFile() {
        CRC32 sum = new CRC32();
        sum.update(stl);
        return sum.getValue();
    }

    @Benchmark
    public MeshVolume volume() throws IOException {
        return MeshVolume.read(new ByteArrayInputStream(stl), Unit.MILLIMETRE);
    }

    private static void triangle(ByteBuffer bytes, int... corners) {
        bytes.putFloat(0).putFloat(0).putFloat(0);
        for (int c = 0; c < corners.length; c += 2) {
            double around = 2 * Math.PI * (corners[c] % AROUND) / AROUND;
            double across = 2 * Math.PI * (corners[c + 1] % ACROSS) / ACROSS;
            double radius = RING + TUBE * Math.cos(across);
            bytes.putFloat((float) (radius * Math.cos(around)))
                    .putFloat((float) (radius * Math.sin(around)))
                    .putFloat((float) (TUBE * Math.sin(across)));
        }
        bytes.putShort((short) 0);
    }
}
