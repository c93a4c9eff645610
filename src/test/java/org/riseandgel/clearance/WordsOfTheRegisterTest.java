package org.riseandgel.clearance;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What the pages of the program may say of a clearance, read in their templates. */
class WordsOfTheRegisterTest {
    private static final Path TEMPLATES = Path.of("src", "main", "resources", "templates");

    /** The one thing that is licensed is the practice to which the school defers. */
    @Test
    void cr27_noPageOfTheRegisterSaysCertifiedOrLicensed() throws IOException {
        List<Path> pages;
        try (Stream<Path> files = Files.walk(TEMPLATES)) {
            pages = files.filter(file -> file.toString().endsWith(".html")).toList();
        }
        assertThat(pages).hasSizeGreaterThan(100);
        for (Path page : pages) {
            assertThat(Files.readString(page).replace("licensed practice", ""))
                    .as("%s", page)
                    .doesNotContainIgnoringCase("certified")
                    .doesNotContainIgnoringCase("licensed");
        }
        for (String page : List.of("DoorPages/door.html", "DoorPages/list.html", "BoardPages/board.html")) {
            assertThat(Files.readString(TEMPLATES.resolve(page)))
                    .as(page)
                    .containsIgnoringCase("cleared by {inject:house.schoolName}");
        }
    }
}
