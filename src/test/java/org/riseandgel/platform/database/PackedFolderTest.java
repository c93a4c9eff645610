package org.riseandgel.platform.database;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.commons.compress.archivers.tar.TarArchiveEntry;
import org.apache.commons.compress.archivers.tar.TarArchiveOutputStream;
import org.apache.commons.compress.archivers.tar.TarConstants;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tukaani.xz.LZMA2Options;
import org.tukaani.xz.XZOutputStream;

class PackedFolderTest {
    @TempDir
    Path parent;

    private Path folder;
    private final ByteArrayOutputStream packed = new ByteArrayOutputStream();
    private TarArchiveOutputStream tar;

    @BeforeEach
    void openArchive() throws IOException {
        folder = Files.createDirectory(parent.resolve("inside"));
        tar = new TarArchiveOutputStream(new XZOutputStream(packed, new LZMA2Options(0)));
    }

    @Test
    void keepsFoldersFilesLinksAndWhoMayRunThem() throws IOException {
        file("bin/tool", 0755);
        file("share/text", 0644);
        link("bin/alias", "tool");
        unpack();
        assertThat(folder.resolve("bin/tool")).hasContent("content").isExecutable();
        assertThat(Files.isExecutable(folder.resolve("share/text"))).isFalse();
        assertThat(Files.readSymbolicLink(folder.resolve("bin/alias"))).isEqualTo(Path.of("tool"));
    }

    @Test
    void refusesAFileOutsideTheFolder() throws IOException {
        file("../outside", 0644);
        assertRefused("outside its folder");
    }

    @Test
    void refusesALinkOutOfTheFolder() throws IOException {
        link("way-out", "../..");
        assertRefused("outside its folder");
    }

    @Test
    void refusesAnAbsoluteLink() throws IOException {
        link("way-out", "/etc");
        assertRefused("outside its folder");
    }

    @Test
    void refusesToWriteThroughALinkThatWasThereBefore() throws IOException {
        Files.createSymbolicLink(folder.resolve("planted"), parent);
        file("planted/outside", 0644);
        assertRefused("over something else");
    }

    @Test
    void refusesToReplaceWhatIsThere() throws IOException {
        file("twice", 0644);
        file("twice", 0755);
        assertRefused("over something else");
    }

    private void assertRefused(String reason) {
        assertThatThrownBy(this::unpack).isInstanceOf(IOException.class).hasMessageContaining(reason);
        assertThat(parent.resolve("outside")).doesNotExist();
    }

    private void unpack() throws IOException {
        tar.close();
        PackedFolder.unpack(new ByteArrayInputStream(packed.toByteArray()), folder);
    }

    private void file(String name, int mode) throws IOException {
        byte[] content = "content".getBytes(StandardCharsets.UTF_8);
        TarArchiveEntry entry = new TarArchiveEntry(name, true);
        entry.setMode(mode);
        entry.setSize(content.length);
        tar.putArchiveEntry(entry);
        tar.write(content);
        tar.closeArchiveEntry();
    }

    private void link(String name, String target) throws IOException {
        TarArchiveEntry entry = new TarArchiveEntry(name, TarConstants.LF_SYMLINK, true);
        entry.setLinkName(target);
        tar.putArchiveEntry(entry);
        tar.closeArchiveEntry();
    }
}
