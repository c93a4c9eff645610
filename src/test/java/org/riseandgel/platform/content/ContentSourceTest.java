package org.riseandgel.platform.content;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ContentSourceTest {
    @TempDir
    Path outside;

    private Path root;

    @BeforeEach
    void folders() throws IOException {
        root = Files.createDirectories(outside.resolve("content"));
        write("lessons/course.yaml", "stages: []");
        write("lessons/01-foam/01-rising.md", "## Rising");
        write("lessons/01-foam/cup.svg", "<svg/>");
        write("exercises/rising/cup.yaml", "id: cup");
    }

    @Test
    void readsBothFoldersInOrder() {
        ContentFiles read = source().read();
        assertThat(read.faults()).isEmpty();
        assertThat(read.files())
                .extracting(ContentFile::path)
                .containsExactly(
                        "lessons/01-foam/01-rising.md",
                        "lessons/01-foam/cup.svg",
                        "lessons/course.yaml",
                        "exercises/rising/cup.yaml");
    }

    @Test
    void readsTheCourseThatIsPackedWithTheProgram() {
        ContentFiles read = new ContentSource(Optional.empty()).read();
        assertThat(read.faults()).isEmpty();
        assertThat(read.files())
                .extracting(ContentFile::path)
                .contains("lessons/course.yaml")
                .anyMatch(path -> path.matches("lessons/04-whipping/.*\\.md"))
                .anyMatch(path -> path.matches("lessons/04-whipping/.*\\.svg"))
                .anyMatch(path -> path.matches("exercises/[^/]+/.*\\.yaml"));
    }

    @Test
    void otherKindsOfFilesAreReported() throws IOException {
        write("lessons/01-foam/notes.txt", "x");
        write("lessons/01-foam/page.html", "x");
        write("exercises/rising/picture.png", "x");
        assertThat(source().read().faults())
                .extracting(ContentFault::toString)
                .containsExactly(
                        "ContentFault[path=lessons/01-foam/notes.txt, message=is not a kind of file that belongs here;"
                                + " use one of .md, .svg, .yaml]",
                        "ContentFault[path=lessons/01-foam/page.html, message=is not a kind of file that belongs here;"
                                + " use one of .md, .svg, .yaml]",
                        "ContentFault[path=exercises/rising/picture.png, message=is not a kind of file that belongs"
                                + " here; use one of .svg, .yaml]");
    }

    @Test
    void whatEditorsLeaveBehindIsPassedOver() throws IOException {
        write("lessons/.DS_Store", "x");
        write("lessons/.git/config", "x");
        write("lessons/01-foam/01-rising.md~", "x");
        write("lessons/01-foam/.01-rising.md.swp", "x");
        assertThat(source().read().faults()).isEmpty();
        assertThat(source().read().files()).hasSize(4);
    }

    @Test
    void aFileThatIsTooLargeIsReported() throws IOException {
        write("lessons/01-foam/01-rising.md", "x".repeat(FolderReader.LARGEST));
        assertThat(source().read().faults()).isEmpty();
        write("lessons/01-foam/01-rising.md", "x".repeat(FolderReader.LARGEST + 1));
        assertThat(source().read().faults())
                .containsExactly(
                        new ContentFault("lessons/01-foam/01-rising.md", "is larger than 512 KiB; make it smaller"));
    }

    @Test
    void textThatIsNotUtf8IsReported() throws IOException {
        Files.write(root.resolve("lessons/01-foam/01-rising.md"), "für".getBytes(StandardCharsets.ISO_8859_1));
        assertThat(source().read().faults())
                .containsExactly(
                        new ContentFault("lessons/01-foam/01-rising.md", "is not UTF-8 text; save it as UTF-8"));
    }

    @Test
    void aByteOrderMarkIsNoPartOfTheText() throws IOException {
        write("lessons/course.yaml", "\uFEFFstages: []");
        assertThat(source().read().files()).contains(new ContentFile("lessons/course.yaml", "stages: []"));
    }

    @Test
    void aLinkThatLeadsOutIsReportedAndNotFollowed() throws IOException {
        Path secret = Files.writeString(outside.resolve("secret.md"), "secret");
        Files.createSymbolicLink(root.resolve("lessons/01-foam/02-secret.md"), secret);
        ContentFiles read = source().read();
        assertThat(read.faults())
                .containsExactly(new ContentFault(
                        "lessons/01-foam/02-secret.md",
                        "is a link that leads out of the folder; put the file itself here"));
        assertThat(read.files()).noneMatch(file -> file.text().contains("secret"));
    }

    @Test
    void aLinkedFolderIsReportedAndNotFollowed() throws IOException {
        Path elsewhere = Files.createDirectories(outside.resolve("elsewhere"));
        Files.writeString(elsewhere.resolve("01-secret.md"), "secret");
        Files.createSymbolicLink(root.resolve("lessons/02-elsewhere"), elsewhere);
        ContentFiles read = source().read();
        assertThat(read.faults()).extracting(ContentFault::path).containsExactly("lessons/02-elsewhere");
        assertThat(read.files()).noneMatch(file -> file.text().contains("secret"));
    }

    @Test
    void aLinkWithinTheFolderIsRead() throws IOException {
        Files.createSymbolicLink(
                root.resolve("lessons/01-foam/02-again.md"), root.resolve("lessons/01-foam/01-rising.md"));
        assertThat(source().read().faults()).isEmpty();
        assertThat(source().read().files()).contains(new ContentFile("lessons/01-foam/02-again.md", "## Rising"));
    }

    @Test
    void aFolderThatIsNotThereIsReported() {
        ContentFiles read =
                new ContentSource(Optional.of(outside.resolve("nowhere").toString())).read();
        assertThat(read.files()).isEmpty();
        assertThat(read.faults().get(0).message()).startsWith("does not exist; make it");
    }

    @Test
    void theFingerprintChangesWithEveryChange() throws IOException {
        String before = source().fingerprint();
        assertThat(source().fingerprint()).isEqualTo(before);
        write("lessons/01-foam/02-more.md", "x");
        String added = source().fingerprint();
        assertThat(added).isNotEqualTo(before);
        write("lessons/01-foam/02-more.md", "longer");
        String changed = source().fingerprint();
        assertThat(changed).isNotEqualTo(added);
        Files.delete(root.resolve("lessons/01-foam/02-more.md"));
        assertThat(source().fingerprint()).isNotEqualTo(changed);
        write("exercises/rising/cup.yaml", "id: mug!");
        assertThat(source().fingerprint()).isNotEqualTo(before);
    }

    private ContentSource source() {
        return new ContentSource(Optional.of(root.toString()));
    }

    private void write(String path, String text) throws IOException {
        Path file = root.resolve(path);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }
}
