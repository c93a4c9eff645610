package org.riseandgel.core.mold;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/**
 * Reads STL. A binary file has 80 bytes of heading, the number of triangles, and 50 bytes for each: normal, three corners
 * (32-bit floats, lowest byte first), and two bytes that mean nothing here. A text file begins with the word solid and
 * names facets; a binary heading may begin so too, but then holds a zero byte in its first 84.
 */
final class StlReader {
    private static final int HEADING = 84;
    private static final int TRIANGLE = 50;
    private static final int BUFFER = 1 << 16;

    private final BufferedInputStream in;

    StlReader(InputStream in) {
        this.in = new BufferedInputStream(in, BUFFER);
    }

    void readInto(MeshSink mesh) throws IOException {
        in.mark(BUFFER);
        byte[] heading = in.readNBytes(HEADING);
        in.reset();
        if (heading.length == 0) {
            throw new MeshRefusedException(MeshRefusedException.Reason.EMPTY, "the file is empty, must hold a mesh");
        }
        if (isText(heading)) {
            new StlText(in).readInto(mesh);
        } else {
            readBinary(mesh);
        }
    }

    private static boolean isText(byte[] heading) {
        String start = new String(heading, StandardCharsets.ISO_8859_1);
        return start.stripLeading().startsWith("solid") && start.indexOf('\0') < 0;
    }

    private void readBinary(MeshSink mesh) throws IOException {
        byte[] heading = in.readNBytes(HEADING);
        if (heading.length < HEADING) {
            throw truncated("its heading has %d bytes of %d".formatted(heading.length, HEADING));
        }
        long count = integer(heading, HEADING - 4) & 0xFFFFFFFFL;
        if (count > MeshVolume.MOST_TRIANGLES) {
            throw MeshSink.tooMany(count);
        }
        byte[] bytes = new byte[TRIANGLE];
        float[] nine = new float[9];
        for (long i = 0; i < count; i++) {
            if (in.readNBytes(bytes, 0, TRIANGLE) < TRIANGLE) {
                throw truncated("it ends in triangle %d of %d".formatted(i + 1, count));
            }
            for (int k = 0; k < nine.length; k++) {
                nine[k] = Float.intBitsToFloat(integer(bytes, 12 + 4 * k));
            }
            mesh.add(nine);
        }
        if (in.read() >= 0) {
            throw new MeshRefusedException(
                    MeshRefusedException.Reason.MALFORMED,
                    "the file goes on after its %d triangles, must end there".formatted(count));
        }
    }

    static MeshRefusedException truncated(String how) {
        return new MeshRefusedException(
                MeshRefusedException.Reason.TRUNCATED, "the file is cut short, %s: save it again".formatted(how));
    }

    private static int integer(byte[] bytes, int at) {
        return bytes[at] & 0xFF
                | (bytes[at + 1] & 0xFF) << 8
                | (bytes[at + 2] & 0xFF) << 16
                | (bytes[at + 3] & 0xFF) << 24;
    }
}
