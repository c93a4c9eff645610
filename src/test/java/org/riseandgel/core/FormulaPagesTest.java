package org.riseandgel.core;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.riseandgel.core.quantity.Quantity;
import org.riseandgel.core.quantity.Unit;

/** Every package of the core has a page of formulas, and what the page works out is what the core computes. */
class FormulaPagesTest {
    private static final Path PAGES = Path.of("docs", "formulas");
    private static final Path CORE = Path.of("src", "main", "java", "org", "riseandgel", "core");

    @Test
    void everyPackageHasItsPage() throws IOException {
        try (Stream<Path> packages = Files.list(CORE)) {
            assertThat(packages.filter(Files::isDirectory)
                            .map(folder -> folder.getFileName() + ".md")
                            .toList())
                    .containsExactlyInAnyOrderElementsOf(
                            pages().stream().map(FormulaPage::toString).toList());
        }
    }

    @TestFactory
    List<DynamicTest> everyPageIsWhole() throws IOException {
        return pages().stream()
                .map(page -> DynamicTest.dynamicTest(page.toString(), () -> {
                    assertThat(page.text())
                            .contains("## Formulas", "## Symbols", "## Valid", "## Sources", "## Worked example");
                    assertThat(page.examples()).as("worked examples").isNotEmpty();
                }))
                .toList();
    }

    @TestFactory
    List<DynamicTest> everyExampleComesOut() throws IOException {
        return pages().stream()
                .flatMap(page -> page.examples().stream())
                .map(example -> DynamicTest.dynamicTest(example.name(), () -> comesOut(example)))
                .toList();
    }

    @Test
    void everyExampleThatIsKnownIsOnAPage() throws IOException {
        assertThat(pages().stream().flatMap(page -> page.examples().stream()).map(FormulaPage.Example::name))
                .containsExactlyInAnyOrderElementsOf(FormulaExamples.ALL.keySet());
    }

    private static void comesOut(FormulaPage.Example example) {
        assertThat(FormulaExamples.ALL).containsKey(example.name());
        Map<String, Object> results = FormulaExamples.ALL.get(example.name()).apply(example);
        assertThat(example.results()).hasSameSizeAs(results).isNotEmpty();
        example.results()
                .forEach((key, printed) -> assertPrinted(example.name() + ", " + key, printed, results.get(key)));
    }

    /** What is printed must be right to half of its last place. */
    private static void assertPrinted(String what, String printed, Object result) {
        assertThat(result).as(what).isNotNull();
        if (result instanceof String words) {
            assertThat(printed).as(what).isEqualTo(words);
            return;
        }
        String[] parts = printed.split(" ", 2);
        BigDecimal number = new BigDecimal(parts[0]);
        // A hair more than half, for a result that lies on the half.
        double half = number.ulp().doubleValue() * 0.5 * (1 + 1e-9);
        assertThat(value(result, parts[1])).as(what).isCloseTo(number.doubleValue(), within(half));
    }

    private static double value(Object result, String unit) {
        if (result instanceof FormulaExamples.Plain plain) {
            assertThat(unit).isEqualTo(plain.unit());
            return plain.value();
        }
        return ((Quantity) result).in(Unit.byCode(unit).orElseThrow());
    }

    private static List<FormulaPage> pages() throws IOException {
        try (Stream<Path> files = Files.list(PAGES)) {
            return files.filter(file -> file.toString().endsWith(".md"))
                    .sorted()
                    .map(FormulaPage::read)
                    .toList();
        }
    }
}
