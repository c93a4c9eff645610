package org.riseandgel.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Response;
import com.microsoft.playwright.options.ColorScheme;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import org.junit.jupiter.api.Test;

/** Reading a lesson in a real browser: how far one has read is kept as one scrolls. */
@QuarkusTest
@NeedsBrowser
class ReadingBrowserTest {
    private static final String LESSON = "/course/04-whipping/02-expansion-and-density";

    @TestHTTPResource
    String base;

    @Test
    void scrollingKeepsThePlaceAndTheCourseOffersIt() {
        try (Visitor visitor = Visitor.onPhone(base, ColorScheme.LIGHT).signInAs("esme")) {
            visitor.open(LESSON);
            assertThat(visitor.find("[data-keep-place]").isVisible()).isFalse();
            String anchor = visitor.find(".lesson-body h2").nth(2).getAttribute("id");
            Response kept = visitor.page()
                    .waitForResponse(response -> response.url().endsWith(LESSON + "/place"), () -> visitor.page()
                            .evaluate(
                                    "id => document.getElementById(id).scrollIntoView({behavior: 'instant'})", anchor));
            assertThat(kept.status()).isEqualTo(204);
            visitor.open("/course");
            visitor.find("a[href='" + LESSON + "#" + anchor + "']").click();
            visitor.page().waitForURL("**" + LESSON + "#" + anchor);
            assertThat(visitor.complaints()).isEmpty();
        }
    }

    @Test
    void withoutAScriptAFormKeepsThePlace() {
        try (Visitor visitor = Visitor.withoutScript(base).signInAs("darius")) {
            visitor.open(LESSON);
            String anchor = visitor.find("#place option").nth(1).getAttribute("value");
            visitor.find("#place").selectOption(anchor);
            visitor.find("[data-keep-place] button").click();
            assertThat(visitor.page().url()).endsWith(LESSON + "#" + anchor);
            assertThat(visitor.find("a:has-text('Go on where you stopped')").getAttribute("href"))
                    .isEqualTo(LESSON + "#" + anchor);
        }
    }

    @Test
    void aWordOfTheTradeLeadsToItsMeaning() {
        try (Visitor visitor = Visitor.at(base).signInAs("esme")) {
            visitor.open(LESSON);
            String href = visitor.find("a.term").first().getAttribute("href");
            visitor.find("a.term").first().click();
            visitor.page().waitForURL("**" + href);
            assertThat(visitor.find(href.substring(href.indexOf('#')) + " dd").innerText())
                    .isNotBlank();
        }
    }
}
