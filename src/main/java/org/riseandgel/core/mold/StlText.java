package org.riseandgel.core.mold;

import java.io.IOException;
import java.io.InputStream;
import java.util.Locale;

/** Reads the text form of STL word by word; a file may hold several solids. */
final class StlText {
    private static final int LONGEST_WORD = 64;

    private final InputStream in;
    private final StringBuilder word = new StringBuilder();
    private long line = 1;
    private boolean ended;
    private boolean newLine;
    private boolean atEnd;

    StlText(InputStream in) {
        this.in = in;
    }

    void readInto(MeshSink mesh) throws IOException {
        String next = next();
        while (!ended) {
            require("solid", next);
            skipName();
            readSolid(mesh);
            next = next();
        }
    }

    private void readSolid(MeshSink mesh) throws IOException {
        float[] nine = new float[9];
        for (String next = next(); !next.equals("endsolid"); next = next()) {
            require("facet", next);
            require("normal", next());
            for (int i = 0; i < 3; i++) {
                number();
            }
            require("outer", next());
            require("loop", next());
            for (int corner = 0; corner < 3; corner++) {
                require("vertex", next());
                for (int i = 0; i < 3; i++) {
                    nine[3 * corner + i] = number();
                }
            }
            require("endloop", next());
            require("endfacet", next());
            mesh.add(nine);
        }
        skipName();
    }

    /** NaN and infinities are numbers here; the mesh refuses them where it can say of which triangle. */
    private float number() throws IOException {
        String text = next();
        requireMore();
        if (text.endsWith("nan") || text.contains("inf") || text.contains("#")) {
            return Float.NaN;
        }
        try {
            return Float.parseFloat(plain(text));
        } catch (NumberFormatException noNumber) {
            throw malformed("a number", text);
        }
    }

    /** The platform also reads hexadecimal numbers and trailing letters; STL has none. */
    private String plain(String text) {
        for (int i = 0; i < text.length(); i++) {
            if ("0123456789+-.e".indexOf(text.charAt(i)) < 0) {
                throw malformed("a number", text);
            }
        }
        return text;
    }

    private void require(String wanted, String found) {
        requireMore();
        if (!found.equals(wanted)) {
            throw malformed(wanted, found);
        }
    }

    private void requireMore() {
        if (ended) {
            throw StlReader.truncated("it ends in line %d".formatted(line));
        }
    }

    /** A wrong word at the very end of the file is one that was cut in two. */
    private MeshRefusedException malformed(String wanted, String found) {
        if (atEnd) {
            return StlReader.truncated("it ends in line %d".formatted(line));
        }
        return new MeshRefusedException(
                MeshRefusedException.Reason.MALFORMED,
                "line %d of the file has “%s”, must have %s".formatted(line, printable(found), wanted));
    }

    private static String printable(String found) {
        return found.replaceAll("[^\\x20-\\x7E]", "?");
    }

    /** The next word in small letters; empty at the end of the file. */
    private String next() throws IOException {
        word.setLength(0);
        int c = read();
        while (isBlank(c)) {
            c = read();
        }
        while (c >= 0 && !isBlank(c)) {
            if (word.length() == LONGEST_WORD) {
                throw malformed("a shorter word", word.toString());
            }
            word.append((char) c);
            c = read();
        }
        newLine = c == '\n';
        atEnd = c < 0;
        ended = word.length() == 0;
        return word.toString().toLowerCase(Locale.ROOT);
    }

    /** The rest of the line is the solid's name. */
    private void skipName() throws IOException {
        requireMore();
        while (!newLine) {
            int c = read();
            newLine = c == '\n' || c < 0;
        }
    }

    private int read() throws IOException {
        int c = in.read();
        if (c == '\n') {
            line++;
        }
        return c;
    }

    private static boolean isBlank(int c) {
        return c == ' ' || c == '\t' || c == '\r' || c == '\n';
    }
}
