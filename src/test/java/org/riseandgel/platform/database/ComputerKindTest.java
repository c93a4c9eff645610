package org.riseandgel.platform.database;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The names of systems and processors are those a JVM reports (from memory). */
class ComputerKindTest {
    @ParameterizedTest
    @CsvSource({
        "Linux,        amd64,   postgres-linux-x86_64.txz",
        "Linux,        aarch64, postgres-linux-arm_64.txz",
        "Mac OS X,     x86_64,  postgres-darwin-x86_64.txz",
        "Mac OS X,     aarch64, postgres-darwin-arm_64.txz",
        "Windows 11,   amd64,   postgres-windows-x86_64.txz",
        "Windows 11,   aarch64, postgres-windows-x86_64.txz"
    })
    void everyKindOfComputerHasItsArchiveInTheProgram(String system, String processor, String archive) {
        String name = ComputerKind.of(system, processor).archiveName();
        assertThat(name).isEqualTo(archive);
        assertThat(getClass().getClassLoader().getResource(name)).isNotNull();
    }

    @Test
    void anUnknownComputerIsToldTheWayOut() {
        assertThatThrownBy(() -> ComputerKind.of("SunOS", "sparc"))
                .isInstanceOf(DatabaseFailure.class)
                .hasMessageContaining("sunos")
                .hasMessageContaining("quarkus.datasource.jdbc.url");
        assertThatThrownBy(() -> ComputerKind.of("Linux", "riscv64"))
                .isInstanceOf(DatabaseFailure.class)
                .hasMessageContaining("riscv64");
    }
}
