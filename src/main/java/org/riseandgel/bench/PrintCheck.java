package org.riseandgel.bench;

/** Bars and a square of known size beside the stick, to find out whether the printer kept the scale. */
final class PrintCheck {
    private static final double INCH = 25.4;
    private static final double TEN_CENTIMETRES = 100;
    private static final double FOUR_INCHES = 4 * INCH;

    private PrintCheck() {}

    static String svg() {
        Svg svg = Svg.picture(
                "check",
                "width=\"250mm\" height=\"106mm\"",
                250,
                106,
                "Print check",
                "Bars of 100 mm and 4 in, lying and standing, a square of 50 mm, and a label to glue to the stick.");
        across(svg, 40, 8, TEN_CENTIMETRES, 10, "100 mm");
        across(svg, 40, 24, FOUR_INCHES, INCH, "4 in");
        down(svg, 8, 2, TEN_CENTIMETRES, 10, "100 mm");
        down(svg, 24, 2, FOUR_INCHES, INCH, "4 in");
        svg.rectangle("bar", 170, 4, 50, 50);
        svg.words("plain", 3.4, 176, 30, "50 mm × 50 mm");
        label(svg);
        return svg.closed();
    }

    private static void across(Svg svg, double x, double y, double length, double step, String words) {
        svg.line("bar", x, y, x + length, y);
        for (double at = 0; at <= length + 1e-9; at += step) {
            svg.line("bar", x + at, y - 3, x + at, y + 3);
        }
        svg.words("plain", 3.4, x + length + 3, y + 1.2, words);
    }

    private static void down(Svg svg, double x, double y, double length, double step, String words) {
        svg.line("bar", x, y, x, y + length);
        for (double at = 0; at <= length + 1e-9; at += step) {
            svg.line("bar", x - 3, y + at, x + 3, y + at);
        }
        svg.wordsDown("plain", 3.4, x + 4, y + 40, words);
    }

    private static void label(Svg svg) {
        svg.rectangle("cut", 40, 62, 205, 38);
        svg.words(
                "plain",
                3,
                43,
                67,
                "Cut out and glue to the back of the stick. Another vessel or another amount needs another stick.");
        blank(svg, 43, 80, "Vessel", 110);
        blank(svg, 160, 80, "Liquid", 82);
        blank(svg, 43, 94, "Whisk in or out", 110);
        blank(svg, 160, 94, "Date", 82);
    }

    private static void blank(Svg svg, double x, double y, String words, double length) {
        svg.words("plain", 3.4, x, y, words);
        svg.line("blank", x + 2 + 1.9 * words.length(), y, x + length, y);
    }
}
