package org.riseandgel.bench;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.riseandgel.Browserless;
import org.riseandgel.Browserless.Answer;
import org.riseandgel.SignedIn;
import org.riseandgel.core.mold.Meshes;

@QuarkusTest
class MeshSheetTest {
    private static final String SHEET = "/bench/cavity-from-mesh";

    @Test
    void theFormSendsAFile() {
        Document page = SignedIn.as("apprentice").get(SHEET).page();
        assertThat(page.select("form.form[method=post][enctype=multipart/form-data] input[type=file]"))
                .hasSize(1);
        assertThat(page.select("form.form input[name=form-token]")).hasSize(1);
    }

    /** 30,000 triangles are 1.5 MB, 60,000 are 3 MB: more than any other form may send. */
    @ParameterizedTest
    @CsvSource({"7500", "15000"})
    void aMeshIsMeasured(int sides) {
        byte[] stl = Meshes.binary(Meshes.frustum(sides, 8, 6, 14));
        Answer answer = SignedIn.as("apprentice").postMultipart(SHEET, Map.of("unit", "cm"), "mask.stl", stl);
        assertThat(answer.status()).isEqualTo(200);
        // textbook frustum (14, 8, 6): 2169.79333 mL; that many sides take off less than a part in a million
        assertThat(answer.page().select(".results dd").eachText()).containsExactly("2170 mL", "16.0 cm");
        assertThat(answer.page().select("option[selected]").eachAttr("value")).containsExactly("cm");
        assertThat(answer.page().select(".working li").text()).contains(4 * sides / 1000 + "\u202f000 triangles");
    }

    @Test
    void whatIsNoMeshIsRefusedWithItsReason() {
        Answer answer = SignedIn.as("apprentice")
                .postMultipart(SHEET, Map.of("unit", "mm"), "notes.stl", "solid x".getBytes(StandardCharsets.US_ASCII));
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.page().title()).startsWith("Error: ");
        assertThat(answer.page().select(".error-summary a").attr("href")).isEqualTo("#file");
        assertThat(answer.page().getElementById("file-error").text()).contains("cut short");
        assertThat(answer.page().select(".results")).isEmpty();
    }

    @Test
    void withoutAFileOneIsAskedFor() {
        Answer answer = SignedIn.as("apprentice").postMultipart(SHEET, Map.of("unit", "mm"));
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.page().getElementById("file-error").text()).contains("Choose an STL file");
    }

    @Test
    void nobodyMayWhoIsNotSignedIn() {
        Browserless nobody = Browserless.anonymous();
        byte[] stl = Meshes.binary(Meshes.box(1, 2, 3));
        assertThat(nobody.postMultipart(SHEET, Map.of("unit", "cm"), "a.stl", stl)
                        .status())
                .isEqualTo(401);
    }

    /** Only the sheet of the mesh takes more than 2 MB, and nothing takes more than 64 MB; a length must be told. */
    @ParameterizedTest
    @CsvSource({
        "/sign-in, Content-Length: 2097153, 413",
        "/bench/cavity-from-mesh/, Content-Length: 2097153, 413",
        "/bench//cavity-from-mesh, Content-Length: 2097153, 413",
        "/bench/cavity-from-mesh, Content-Length: 67108865, 413",
        "/sign-in, Transfer-Encoding: chunked, 411"
    })
    void aBodyThatIsTooLargeIsRefusedBeforeItComes(String path, String header, int status) throws IOException {
        assertThat(statusLine(path, header)).startsWith("HTTP/1.1 " + status + " ");
    }

    private static String statusLine(String path, String header) throws IOException {
        try (Socket socket = new Socket("127.0.0.1", RestAssured.port)) {
            socket.setSoTimeout(10_000);
            socket.getOutputStream()
                    .write(("POST " + path + " HTTP/1.1\r\nHost: 127.0.0.1:" + RestAssured.port + "\r\n" + header
                                    + "\r\n\r\n")
                            .getBytes(StandardCharsets.US_ASCII));
            return new BufferedReader(new InputStreamReader(socket.getInputStream(), StandardCharsets.US_ASCII))
                    .readLine();
        }
    }
}
