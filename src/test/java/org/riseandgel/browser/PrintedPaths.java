package org.riseandgel.browser;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/**
 * The straight lines of a printed page, in points from its lower left corner, read from the PDF as the browser writes
 * it: compressed streams, matrices, lines. It reads no more of the format than that takes.
 */
public final class PrintedPaths {
    /** A straight line, lying or standing. */
    record Line(double x, double y, double toX, double toY) {
        boolean isLying() {
            return Math.abs(toY - y) < 0.01 && Math.abs(toX - x) > 0.5;
        }

        boolean isStanding() {
            return Math.abs(toX - x) < 0.01 && Math.abs(toY - y) > 0.5;
        }

        double length() {
            return Math.hypot(toX - x, toY - y);
        }
    }

    private final List<double[]> papers = new ArrayList<>();
    private final List<Line> lines = new ArrayList<>();

    public static PrintedPaths of(byte[] pdf) {
        PrintedPaths paths = new PrintedPaths();
        String text = new String(pdf, StandardCharsets.ISO_8859_1);
        Matcher boxes =
                Pattern.compile("/MediaBox \\[0 0 ([0-9.]+) ([0-9.]+)\\]").matcher(text);
        while (boxes.find()) {
            paths.papers.add(new double[] {Double.parseDouble(boxes.group(1)), Double.parseDouble(boxes.group(2))});
        }
        Matcher streams = Pattern.compile("stream\\r?\\n").matcher(text);
        while (streams.find()) {
            if (!text.startsWith("end", streams.start() - 3)) {
                paths.read(inflated(pdf, streams.end()));
            }
        }
        return paths;
    }

    public int pages() {
        return papers.size();
    }

    double[] paper() {
        return papers.get(0);
    }

    List<Line> standingLines() {
        return lines.stream().filter(Line::isStanding).toList();
    }

    List<Double> lyingLengths() {
        return lines.stream().filter(Line::isLying).map(Line::length).toList();
    }

    List<Double> standingLengths() {
        return standingLines().stream().map(Line::length).toList();
    }

    /** Where the leftmost standing line of some length stands; dashes are shorter. */
    double leftmost(double length) {
        return standingLines().stream()
                .filter(line -> Math.abs(line.length() - length) < 1)
                .mapToDouble(Line::x)
                .min()
                .orElseThrow();
    }

    private void read(String content) {
        Deque<double[]> kept = new ArrayDeque<>();
        double[] matrix = {1, 0, 0, 1, 0, 0};
        List<Double> numbers = new ArrayList<>();
        double[] at = null;
        for (String word : content.split("\\s+")) {
            if (word.matches("-?[0-9]*\\.?[0-9]+")) {
                numbers.add(Double.parseDouble(word));
                continue;
            }
            int n = numbers.size();
            switch (word) {
                case "q" -> kept.push(matrix);
                case "Q" -> matrix = kept.isEmpty() ? matrix : kept.pop();
                case "cm" -> matrix = n < 6 ? matrix : times(numbers, matrix);
                case "m" -> at = n < 2 ? at : point(matrix, numbers.get(n - 2), numbers.get(n - 1));
                case "l" -> {
                    if (n >= 2 && at != null) {
                        double[] to = point(matrix, numbers.get(n - 2), numbers.get(n - 1));
                        lines.add(new Line(at[0], at[1], to[0], to[1]));
                        at = to;
                    }
                }
                default -> {}
            }
            numbers.clear();
        }
    }

    private static double[] times(List<Double> inner, double[] outer) {
        double[] m = inner.subList(inner.size() - 6, inner.size()).stream()
                .mapToDouble(Double::doubleValue)
                .toArray();
        return new double[] {
            m[0] * outer[0] + m[1] * outer[2],
            m[0] * outer[1] + m[1] * outer[3],
            m[2] * outer[0] + m[3] * outer[2],
            m[2] * outer[1] + m[3] * outer[3],
            m[4] * outer[0] + m[5] * outer[2] + outer[4],
            m[4] * outer[1] + m[5] * outer[3] + outer[5]
        };
    }

    private static double[] point(double[] matrix, double x, double y) {
        return new double[] {x * matrix[0] + y * matrix[2] + matrix[4], x * matrix[1] + y * matrix[3] + matrix[5]};
    }

    /** The unpacked stream; what is no packed stream, a picture or a font, is empty. */
    private static String inflated(byte[] pdf, int from) {
        Inflater inflater = new Inflater();
        inflater.setInput(pdf, from, pdf.length - from);
        ByteArrayOutputStream unpacked = new ByteArrayOutputStream();
        byte[] piece = new byte[8192];
        try {
            while (!inflater.finished()) {
                int count = inflater.inflate(piece);
                if (count == 0) {
                    break;
                }
                unpacked.write(piece, 0, count);
            }
            return unpacked.toString(StandardCharsets.ISO_8859_1);
        } catch (DataFormatException notPacked) {
            return "";
        } finally {
            inflater.end();
        }
    }
}
