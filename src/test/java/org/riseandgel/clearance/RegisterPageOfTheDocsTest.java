package org.riseandgel.clearance;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The table of requirements in docs/register.md names every number, and tests that exist. */
class RegisterPageOfTheDocsTest {
    private static final Pattern NAMED = Pattern.compile("`(\\w+(?:Test|IT))\\.(\\w+)`");
    private static final Path TESTS = Path.of("src", "test", "java");

    private final String page;

    RegisterPageOfTheDocsTest() throws IOException {
        page = Files.readString(Path.of("docs", "register.md"));
    }

    @Test
    void everyRequirementHasARow() {
        assertThat(IntStream.rangeClosed(1, 28).mapToObj("| CR-%02d |"::formatted))
                .allSatisfy(row -> assertThat(page).contains(row));
    }

    @Test
    void everyNamedTestExists() throws IOException {
        List<Path> sources;
        try (Stream<Path> files = Files.walk(TESTS)) {
            sources = files.toList();
        }
        Matcher named = NAMED.matcher(page);
        int count = 0;
        while (named.find()) {
            Path source = sources.stream()
                    .filter(file -> file.endsWith(named.group(1) + ".java"))
                    .findFirst()
                    .orElseThrow(() -> new AssertionError("no class " + named.group(1)));
            assertThat(Files.readString(source)).as(named.group()).contains(" " + named.group(2) + "(");
            count++;
        }
        assertThat(count).isGreaterThan(40);
    }
}
