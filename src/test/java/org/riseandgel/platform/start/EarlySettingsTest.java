package org.riseandgel.platform.start;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Properties;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class EarlySettingsTest {
    @TempDir
    Path folder;

    private final Properties asTheyWere = new Properties();

    /** An app that other tests have started in this process has put its settings among the system properties. */
    @BeforeEach
    void takeTheSettingsOfOtherTestsAway() {
        asTheyWere.putAll(System.getProperties());
        System.getProperties()
                .keySet()
                .removeIf(name -> name.toString().startsWith("riseandgel.")
                        || name.toString().startsWith("quarkus.http."));
    }

    @AfterEach
    void putThemBack() {
        System.getProperties().putAll(asTheyWere);
    }

    @Test
    void theFileBesideTheProgramIsReadAndASystemPropertyWins() throws IOException {
        EarlySettings settings = settings("riseandgel.sample=from the file");
        assertThat(settings.text("riseandgel.sample")).contains("from the file");
        System.setProperty("riseandgel.sample", "from the command line");
        try {
            assertThat(settings("riseandgel.sample=from the file").text("riseandgel.sample"))
                    .contains("from the command line");
        } finally {
            System.clearProperty("riseandgel.sample");
        }
    }

    @Test
    void whatIsNotSetOrBlankIsEmpty() throws IOException {
        EarlySettings settings = settings("riseandgel.sample=");
        assertThat(settings.text("riseandgel.sample")).isEmpty();
        assertThat(settings.text("riseandgel.other")).isEmpty();
    }

    @Test
    void theProgramListensToThisComputerUnlessToldOtherwise() throws IOException {
        assertThat(settings("").text("quarkus.http.host")).contains("127.0.0.1");
        assertThat(ListenRule.check(settings(""))).isEmpty();
    }

    @Test
    void theDataFolderIsTheOneInTheSettings() throws IOException {
        Path school = folder.resolve("school");
        EarlySettings settings = settings("riseandgel.data-dir=" + school + "\nriseandgel.postgres-dir=" + folder);
        assertThat(settings.dataFolder().root()).isEqualTo(school.toRealPath());
        assertThat(settings.dataFolder().serverFolders().binaries()).isEqualTo(folder);
    }

    @ParameterizedTest
    @ValueSource(strings = {"0.0.0.0", "192.0.2.7", "::"})
    void listeningOnTheNetworkNeedsEncryption(String host) throws IOException {
        EarlySettings settings = settings("quarkus.http.host=" + host);
        assertThatThrownBy(() -> ListenRule.check(settings))
                .isInstanceOf(StartFailure.class)
                .hasMessageContaining(host)
                .hasMessageContaining("riseandgel.tls-at-proxy=true");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "quarkus.http.tls-configuration-name=school",
                "quarkus.http.ssl.certificate.key-store-file=keys.p12",
                "quarkus.tls.key-store.pem.0.cert=school.crt"
            })
    void aCertificateOpensTheNetworkAndClosesThePlainWay(String certificate) throws IOException {
        assertThat(ListenRule.check(settings("quarkus.http.host=0.0.0.0\n" + certificate)))
                .isEqualTo(Map.of("quarkus.http.insecure-requests", "redirect"));
        assertThat(ListenRule.check(
                        settings("quarkus.http.host=0.0.0.0\nquarkus.http.insecure-requests=disabled\n" + certificate)))
                .isEmpty();
        EarlySettings open =
                settings("quarkus.http.host=0.0.0.0\nquarkus.http.insecure-requests=enabled\n" + certificate);
        assertThatThrownBy(() -> ListenRule.check(open))
                .isInstanceOf(StartFailure.class)
                .hasMessageContaining("insecure-requests");
    }

    @Test
    void theWordThatAProxyEncryptsOpensTheNetworkButNotForTheDemo() throws IOException {
        String open = "quarkus.http.host=0.0.0.0\nriseandgel.tls-at-proxy=true\n";
        assertThat(ListenRule.check(settings(open))).isEmpty();
        EarlySettings demo = settings(open + "riseandgel.demo=true");
        assertThatThrownBy(() -> ListenRule.check(demo))
                .isInstanceOf(StartFailure.class)
                .hasMessageContaining("demo school");
    }

    @Test
    void aWordThatIsNeitherTrueNorFalseClosesInsteadOfOpening() throws IOException {
        EarlySettings settings = settings("quarkus.http.host=0.0.0.0\nriseandgel.tls-at-proxy=yes");
        assertThatThrownBy(() -> ListenRule.check(settings))
                .isInstanceOf(StartFailure.class)
                .hasMessageContaining("true or false");
    }

    private EarlySettings settings(String lines) throws IOException {
        Path file = folder.resolve("application.properties");
        Files.writeString(file, lines + "\n");
        return EarlySettings.read(file);
    }
}
