package org.riseandgel.bench;

import java.util.Locale;

/** Writes SVG with the classes of the page kit; every text is escaped. Lengths are in the units of the view box. */
final class Svg {
    private final StringBuilder text = new StringBuilder();

    /** A picture with a name and a description for those who do not see it; the id keeps both apart on the page. */
    static Svg picture(String id, String size, double width, double height, String title, String description) {
        Svg svg = new Svg();
        svg.write(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %s %s\"%s role=\"img\""
                        + " aria-labelledby=\"%s-title %s-desc\"><title id=\"%s-title\">%s</title><desc id=\"%s-desc\">%s</desc>",
                number(width),
                number(height),
                size.isEmpty() ? "" : " " + size,
                id,
                id,
                id,
                escaped(title),
                id,
                escaped(description));
        return svg;
    }

    Svg line(String look, double x1, double y1, double x2, double y2) {
        return write(
                "<line class=\"%s\" x1=\"%s\" y1=\"%s\" x2=\"%s\" y2=\"%s\"/>",
                look, number(x1), number(y1), number(x2), number(y2));
    }

    Svg rectangle(String look, double x, double y, double width, double height) {
        return write(
                "<rect class=\"%s\" x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\"/>",
                look, number(x), number(y), number(width), number(height));
    }

    Svg dot(String look, double x, double y, double radius) {
        return write("<circle class=\"%s\" cx=\"%s\" cy=\"%s\" r=\"%s\"/>", look, number(x), number(y), number(radius));
    }

    /** A closed or open line through points, x and y in turn. */
    Svg path(String look, boolean closed, double... points) {
        StringBuilder way = new StringBuilder();
        for (int i = 0; i < points.length; i += 2) {
            way.append(i == 0 ? "M" : "L").append(number(points[i])).append(' ').append(number(points[i + 1]));
        }
        return write("<path class=\"%s\" d=\"%s%s\"/>", look, way, closed ? "Z" : "");
    }

    Svg words(String look, double size, double x, double y, String words) {
        return write(
                "<text class=\"%s\" font-size=\"%s\" x=\"%s\" y=\"%s\">%s</text>",
                look, number(size), number(x), number(y), escaped(words));
    }

    /** Words that read from top to bottom, beginning at a point. */
    Svg wordsDown(String look, double size, double x, double y, String words) {
        return write(
                "<text class=\"%s\" font-size=\"%s\" transform=\"translate(%s %s) rotate(90)\">%s</text>",
                look, number(size), number(x), number(y), escaped(words));
    }

    String closed() {
        return text + "</svg>";
    }

    /** To a thousandth, always with a point: this is for machines. */
    static String number(double value) {
        String written = String.format(Locale.ROOT, "%.3f", value);
        return written.replaceAll("\\.?0+$", "");
    }

    private Svg write(String format, Object... values) {
        text.append(String.format(Locale.ROOT, format, values));
        return this;
    }

    private static String escaped(String words) {
        return words.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
