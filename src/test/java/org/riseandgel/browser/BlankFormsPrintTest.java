package org.riseandgel.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Media;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import org.riseandgel.clearance.Place;
import org.riseandgel.clearance.rule.Form;
import org.riseandgel.clearance.rule.Substance;

/** CR-26: every blank form and the list for the door on one sheet, A4 and Letter, in black and white, large enough to read. */
@QuarkusTest
@NeedsBrowser
class BlankFormsPrintTest {
    /** 8.5 pt in pixels of a browser; the smallest print that a form has, in its head and foot. */
    private static final double SMALLEST = 8.49 * 96 / 72;

    private static final String FAINT_OR_SMALL =
            """
            smallest => {
              const grey = colour => { const [r, g, b, a = 1] = colour.match(/[0-9.]+/g).map(Number);
                return {flat: r === g && g === b, dark: r < 90, clear: a === 0, light: r > 240}; };
              return [...document.querySelectorAll('main *')]
                .filter(e => e.checkVisibility() && [...e.childNodes].some(n => n.nodeType === 3 && n.textContent.trim()))
                .filter(e => { const s = getComputedStyle(e); const ink = grey(s.color); const ground = grey(s.backgroundColor);
                  return !ink.flat || !ink.dark || !(ground.clear || ground.light) || parseFloat(s.fontSize) < smallest; })
                .map(e => e.outerHTML.slice(0, 120));
            }""";

    private static final Place DOOR = new Place(
            new Substance("Sodium hexafluorosilicate", "16893-85-9", "Supplier A"), Form.DISPERSION, "Foaming room");

    @TestHTTPResource
    String base;

    @Test
    void eachFitsOneSheetInBlackAndWhite() throws Exception {
        SoftAssertions problems = new SoftAssertions();
        try (Visitor ines = Visitor.onPhone(base, ColorScheme.DARK).signInAs("ines")) {
            ines.open("/register/paper");
            assertThat(ines.barriers()).isEmpty();
            assertThat(ines.scrollsSideways()).isFalse();
            List<String> forms = new ArrayList<>();
            ines.find("main ul.lessons a").all().forEach(link -> forms.add(link.getAttribute("href")));
            assertThat(forms).hasSizeGreaterThanOrEqualTo(11);
            forms.add("/door/" + DOOR.id() + "/list");
            for (String form : forms) {
                ines.open(form);
                problems.assertThat(ines.barriers()).as("axe on %s", form).isEmpty();
                problems.assertThat(ines.scrollsSideways())
                        .as("%s scrolls", form)
                        .isFalse();
                ines.page().emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
                problems.assertThat((List<?>) ines.page().evaluate(FAINT_OR_SMALL, SMALLEST))
                        .as("faint, coloured or small on %s", form)
                        .isEmpty();
                for (String paper : List.of("A4", "Letter")) {
                    byte[] pdf = ines.page()
                            .pdf(new Page.PdfOptions().setFormat(paper).setPreferCSSPageSize(true));
                    problems.assertThat(PrintedPaths.of(pdf).pages())
                            .as("sheets of %s on %s", form, paper)
                            .isEqualTo(1);
                    keep(form, paper, pdf);
                }
                ines.page().emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.SCREEN));
            }
            assertThat(ines.complaints()).isEmpty();
        }
        problems.assertAll();
    }

    private static void keep(String form, String paper, byte[] pdf) throws java.io.IOException {
        String folder = System.getProperty("pictures");
        if (folder != null) {
            Files.write(Path.of(folder, paper + form.replace('/', '-') + ".pdf"), pdf);
        }
    }
}
