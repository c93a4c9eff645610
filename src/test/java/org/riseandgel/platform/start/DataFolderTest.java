package org.riseandgel.platform.start;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DataFolderTest {
    @TempDir
    Path parent;

    @Test
    void aSecondHolderIsRefusedAndTheFirstKeepsTheFolder() throws IOException {
        DataFolder folder = DataFolder.at(parent.resolve("school"));
        try (FolderLock held = folder.lock()) {
            assertThat(held).isNotNull();
            assertRefused(folder);
            // A refused try must not loosen the lock.
            assertRefused(folder);
        }
        folder.lock().close();
    }

    @Test
    void aFolderUnderAnotherNameIsStillTheSameFolder() throws IOException {
        DataFolder folder = DataFolder.at(parent.resolve("school"));
        Path alias = Files.createSymbolicLink(parent.resolve("alias"), folder.root());
        try (FolderLock held = folder.lock()) {
            assertThat(held).isNotNull();
            assertRefused(DataFolder.at(alias));
        }
    }

    @Test
    void aFileInTheWayIsNamed() throws IOException {
        Path file = Files.createFile(parent.resolve("file"));
        assertThatThrownBy(() -> DataFolder.at(file.resolve("school")))
                .isInstanceOf(StartFailure.class)
                .hasMessageContaining(file.toString())
                .hasMessageContaining("riseandgel.data-dir");
    }

    private static void assertRefused(DataFolder folder) {
        assertThatThrownBy(folder::lock)
                .isInstanceOf(StartFailure.class)
                .hasMessageStartingWith("Rise and Gel is already running on this folder")
                .extracting(e -> ((StartFailure) e).exitCode())
                .isEqualTo(2);
    }
}
