package org.riseandgel.browser;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.Cookie;
import io.quarkus.test.junit.QuarkusTest;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.riseandgel.Browserless;
import org.riseandgel.SignedIn;
import org.riseandgel.bench.Calculation;
import org.riseandgel.bench.Catalogue;

/** The volume stick as it leaves the printer: paper, scale and marks are read back from the PDF. */
@QuarkusTest
@NeedsBrowser
class StickPrintTest {
    private static final double POINTS_PER_MILLIMETRE = 72 / 25.4;
    /** 0.1 pt is a thirtieth of a millimetre, a tenth of a line's width. */
    private static final double TOLERANCE = 0.1;

    @Test
    void onA4TheBarIsAHundredMillimetresAndTheMarksAreInPlace() {
        PrintedPaths paths = printed("?bottomDiameter=12&depth=20&charge=500&ratio=4");
        isPaper(paths, 297 * POINTS_PER_MILLIMETRE, 210 * POINTS_PER_MILLIMETRE);
        assertThat(paths.pages()).isEqualTo(1);
        holdsCheckBars(paths);
        double floor = paths.leftmost(25 * POINTS_PER_MILLIMETRE);
        for (int ratio = 1; ratio <= 4; ratio++) {
            // 500 mL times the ratio on a floor of π·6² cm²
            double millimetres = ratio * 500 / (Math.PI * 36) * 10;
            double nearest = paths.standingLines().stream()
                    .mapToDouble(line -> Math.abs(line.x() - floor - millimetres * POINTS_PER_MILLIMETRE))
                    .min()
                    .orElseThrow();
            assertThat(nearest).as("mark %d", ratio).isLessThanOrEqualTo(TOLERANCE);
        }
    }

    @Test
    void onLetterTheScaleIsTheSame() {
        PrintedPaths paths = printed("?bottomDiameter=12&depth=20&paper=letter");
        isPaper(paths, 11 * 72, 8.5 * 72);
        assertThat(paths.pages()).isEqualTo(1);
        holdsCheckBars(paths);
    }

    /** Browsers round the paper to their own pixels, which shifts nothing on it. */
    private static void isPaper(PrintedPaths paths, double width, double height) {
        assertThat(paths.paper()[0]).isCloseTo(width, within(0.75));
        assertThat(paths.paper()[1]).isCloseTo(height, within(0.75));
    }

    private static void holdsCheckBars(PrintedPaths paths) {
        double hundred = 100 * POINTS_PER_MILLIMETRE;
        double fourInches = 4 * 72;
        for (double length : List.of(hundred, fourInches)) {
            assertThat(paths.lyingLengths())
                    .anySatisfy(found -> assertThat(found).isCloseTo(length, within(TOLERANCE)));
            assertThat(paths.standingLengths())
                    .anySatisfy(found -> assertThat(found).isCloseTo(length, within(TOLERANCE)));
        }
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void aSheetPrintsOnOnePage(String sheet) {
        assertThat(printedPage("/bench/" + sheet).pages()).isEqualTo(1);
    }

    static Stream<String> sheets() {
        return Catalogue.standard().all().stream().map(Calculation::id);
    }

    private static PrintedPaths printed(String query) {
        return printedPage("/bench/stick-marks/stick" + query);
    }

    private static PrintedPaths printedPage(String path) {
        Browserless person = SignedIn.as("apprentice");
        try (BrowserContext context = Chromium.browser().newContext()) {
            Cookie cookie = new Cookie("rg-sign-in", person.cookie("rg-sign-in").orElseThrow());
            context.addCookies(List.of(cookie.setUrl(Browserless.origin())));
            Page page = context.newPage();
            page.navigate(Browserless.origin() + path);
            byte[] pdf = page.pdf(new Page.PdfOptions().setFormat("A4").setPreferCSSPageSize(true));
            return PrintedPaths.of(pdf);
        }
    }
}
