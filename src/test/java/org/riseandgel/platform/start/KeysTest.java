package org.riseandgel.platform.start;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class KeysTest {
    private static final Set<Key> ALL = EnumSet.allOf(Key.class);

    @TempDir
    Path parent;

    private DataFolder data;

    @BeforeEach
    void openFolder() {
        data = DataFolder.at(parent.resolve("school"));
    }

    @Test
    void aKeyIsLongRandomAndStaysTheSame() {
        Keys first = Keys.in(data, ALL);
        Keys second = Keys.in(data, ALL);
        for (Key key : Key.values()) {
            assertThat(first.text(key)).matches("[A-Za-z0-9_-]{64}").isEqualTo(second.text(key));
        }
        assertThat(ALL.stream().map(first::text).distinct()).hasSize(ALL.size());
    }

    @Test
    void twoFoldersHaveDifferentKeys() {
        Keys other = Keys.in(DataFolder.at(parent.resolve("other")), ALL);
        assertThat(Keys.in(data, ALL).text(Key.CSRF)).isNotEqualTo(other.text(Key.CSRF));
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void onlyTheOwnerCanReadThem() throws IOException {
        Keys.in(data, ALL);
        assertThat(modeOf(data.root())).isEqualTo("rwx------");
        assertThat(modeOf(data.keys())).isEqualTo("rwx------");
        for (Key key : Key.values()) {
            assertThat(modeOf(data.keys().resolve(key.fileName()))).isEqualTo("rw-------");
        }
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void rightsThatABackupToolWidenedAreTakenAwayAgain() throws IOException {
        Keys.in(data, ALL);
        Path file = data.keys().resolve(Key.CSRF.fileName());
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-rw-rw-"));
        Keys.in(data, ALL);
        assertThat(modeOf(file)).isEqualTo("rw-------");
    }

    @ParameterizedTest
    @EnumSource(Key.class)
    void aKeyThatIsGoneStopsTheStart(Key gone) throws IOException {
        Keys.in(data, ALL);
        Path file = data.keys().resolve(gone.fileName());
        Files.delete(file);
        assertThatThrownBy(() -> Keys.in(data, ALL))
                .isInstanceOf(StartFailure.class)
                .hasMessageContaining(gone.fileName())
                .hasMessageContaining("missing")
                .extracting(e -> ((StartFailure) e).exitCode())
                .isEqualTo(1);
        assertThat(file).doesNotExist();
    }

    @Test
    void anEmptyKeyStopsTheStart() throws IOException {
        Keys.in(data, ALL);
        Files.writeString(data.keys().resolve(Key.CSRF.fileName()), "\n");
        assertThatThrownBy(() -> Keys.in(data, ALL))
                .isInstanceOf(StartFailure.class)
                .hasMessageContaining("is empty");
    }

    @Test
    void aDatabaseProvesThatThereWereKeysEvenWhenTheNoteIsGone() throws IOException {
        Files.createDirectories(data.serverFolders().cluster());
        Files.writeString(data.serverFolders().cluster().resolve("PG_VERSION"), "17\n");
        assertThatThrownBy(() -> Keys.in(data, ALL))
                .isInstanceOf(StartFailure.class)
                .hasMessageContaining("missing");
    }

    @Test
    void aKeyWantedForTheFirstTimeIsMadeBesideTheOthers() throws IOException {
        String csrf = Keys.in(data, EnumSet.of(Key.CSRF)).text(Key.CSRF);
        assertThat(data.keys().resolve(Key.DATABASE_APP.fileName())).doesNotExist();
        Keys later = Keys.in(data, ALL);
        assertThat(later.text(Key.CSRF)).isEqualTo(csrf);
        assertThat(later.text(Key.DATABASE_APP)).hasSize(64);
    }

    private static String modeOf(Path path) throws IOException {
        return PosixFilePermissions.toString(Files.getPosixFilePermissions(path));
    }
}
