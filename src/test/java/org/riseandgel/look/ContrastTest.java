package org.riseandgel.look;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Contrast of the colour pairs that pages really use, in both themes: text 4.5 : 1, edges and marks 3 : 1 (WCAG 2.2,
 * success criteria 1.4.3 and 1.4.11; relative luminance as defined there).
 */
class ContrastTest {
    private static final Pattern TOKEN = Pattern.compile("--([a-z-]+):\\s*(#[0-9a-f]{6});");
    private static final String SHEET = sheet();
    private static final Map<String, String> LIGHT = tokens(SHEET.substring(0, SHEET.indexOf("@media (prefers")));
    private static final Map<String, String> DARK = dark();

    private static final List<List<String>> TEXT = List.of(
            List.of("ink", "ground"),
            List.of("ink", "paper"),
            List.of("ink", "sunk"),
            List.of("ink-soft", "ground"),
            List.of("ink-soft", "paper"),
            List.of("ink-soft", "sunk"),
            List.of("accent", "ground"),
            List.of("accent", "paper"),
            List.of("accent", "accent-wash"),
            List.of("ink", "accent-wash"),
            List.of("accent-ink", "accent"),
            List.of("paper", "ink"),
            List.of("error", "ground"),
            List.of("error", "paper"),
            List.of("ink", "fig-plaster"),
            List.of("ink", "fig-foam"),
            List.of("ink", "fig-liquid"),
            List.of("ink", "fig-metal"),
            List.of("danger-ink", "danger"),
            List.of("warning-ink", "warning"),
            List.of("caution-ink", "caution"),
            List.of("notice-ink", "notice"));
    private static final List<List<String>> MARKS = List.of(
            List.of("edge", "paper"), List.of("edge", "ground"), List.of("focus", "ground"), List.of("focus", "paper"));

    @TestFactory
    Stream<DynamicTest> textIsLegible() {
        return Stream.concat(checks("light", LIGHT, TEXT, 4.5), checks("dark", DARK, TEXT, 4.5));
    }

    @TestFactory
    Stream<DynamicTest> edgesAndFocusAreVisible() {
        return Stream.concat(checks("light", LIGHT, MARKS, 3), checks("dark", DARK, MARKS, 3));
    }

    @Test
    void theFormulaIsTheStandards() {
        // WCAG 2.2: black on white is 21 : 1 by definition; #777777 on white is the known near miss, 4.48 : 1.
        assertThat(contrast("#000000", "#ffffff")).isCloseTo(21, within(1e-9));
        assertThat(contrast("#777777", "#ffffff")).isCloseTo(4.48, within(0.005));
    }

    private static Stream<DynamicTest> checks(
            String theme, Map<String, String> tokens, List<List<String>> pairs, double least) {
        return pairs.stream()
                .map(pair -> DynamicTest.dynamicTest(
                        "%s: %s on %s".formatted(theme, pair.get(0), pair.get(1)),
                        () -> assertThat(contrast(tokens.get(pair.get(0)), tokens.get(pair.get(1))))
                                .isGreaterThanOrEqualTo(least)));
    }

    private static Map<String, String> dark() {
        int start = SHEET.indexOf("@media (prefers-color-scheme: dark)");
        Map<String, String> all = new HashMap<>(LIGHT);
        all.putAll(tokens(SHEET.substring(start, SHEET.indexOf("*,", start))));
        return all;
    }

    private static Map<String, String> tokens(String text) {
        Map<String, String> found = new HashMap<>();
        Matcher matcher = TOKEN.matcher(text);
        while (matcher.find()) {
            found.put(matcher.group(1), matcher.group(2));
        }
        return found;
    }

    private static double contrast(String one, String other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(String colour) {
        return 0.2126 * channel(colour, 1) + 0.7152 * channel(colour, 3) + 0.0722 * channel(colour, 5);
    }

    private static double channel(String colour, int at) {
        double share = Integer.parseInt(colour.substring(at, at + 2), 16) / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }

    private static String sheet() {
        try (var in = ContrastTest.class.getResourceAsStream("/META-INF/resources/css/app.css")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }
}
