package org.riseandgel.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.options.ColorScheme;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.util.List;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import org.riseandgel.account.DemoPeople;
import org.riseandgel.clearance.Place;
import org.riseandgel.clearance.rule.Form;
import org.riseandgel.clearance.rule.Substance;

/** Register and door on a phone and from two metres. */
@QuarkusTest
@NeedsBrowser
class RegisterBrowserTest {
    private static final String PLACE = new Place(
                    new Substance("Sodium hexafluorosilicate", "16893-85-9", "Supplier A"),
                    Form.DISPERSION,
                    "Foaming room")
            .id()
            .toString();
    private static final String SCOPE = "00000000-0000-4000-8000-0000000000c9";

    @TestHTTPResource
    String base;

    @Test
    void everyPageOfTheRegisterFitsAPhone() {
        SoftAssertions problems = new SoftAssertions();
        for (ColorScheme theme : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
            try (Visitor visitor = Visitor.onPhone(base, theme).signInAs("piet")) {
                for (String path : List.of(
                        "/register",
                        "/register/mine",
                        "/register/people/" + DemoPeople.CELESTE,
                        "/register/people/" + DemoPeople.BASTIAN + "/" + SCOPE,
                        "/door",
                        "/door/" + PLACE + "/list",
                        "/door/" + PLACE + "?person=" + DemoPeople.CELESTE + "&task=clean",
                        "/door/" + PLACE + "?person=" + DemoPeople.DARIUS + "&task=dose")) {
                    visitor.open(path);
                    String where = theme + " " + path;
                    problems.assertThat(visitor.barriers())
                            .as("axe on %s", where)
                            .isEmpty();
                    problems.assertThat(visitor.scrollsSideways())
                            .as("%s scrolls sideways", where)
                            .isFalse();
                }
                problems.assertThat(visitor.complaints()).isEmpty();
            }
        }
        problems.assertAll();
    }

    /** Letters of 1/200 of the distance can be read; two metres ask for 10 mm, which is 38 px of a CSS inch of 96. */
    @Test
    void theAnswerAtTheDoorIsLargeEnoughForTwoMetres() {
        try (Visitor visitor = Visitor.at(base).signInAs("ines")) {
            visitor.open("/door/" + PLACE + "?person=" + DemoPeople.CELESTE + "&task=clean");
            assertThat(visitor.find(".told h2").innerText().strip()).isEqualTo("No");
            for (String what : List.of(".told h2", ".told .who-told")) {
                Object size = visitor.page()
                        .evaluate("s => parseFloat(getComputedStyle(document.querySelector(s)).fontSize)", what);
                assertThat(((Number) size).doubleValue()).as(what).isGreaterThan(38 / 0.7);
            }
        }
    }
}
