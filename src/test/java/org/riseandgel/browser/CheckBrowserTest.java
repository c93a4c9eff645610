package org.riseandgel.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.options.ColorScheme;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.riseandgel.account.DemoPeople;

/** The check on handling the salt, sat with thumb and phone from the rules to the result; and what an instructor sees. */
@QuarkusTest
@NeedsBrowser
class CheckBrowserTest {
    private static final int ITEMS = 12;

    @TestHTTPResource
    String base;

    @Test
    void satOnAPhoneByDay() {
        sit(ColorScheme.LIGHT, "celeste");
    }

    @Test
    void satOnAPhoneByNight() {
        sit(ColorScheme.DARK, "fintan");
    }

    private void sit(ColorScheme theme, String name) {
        try (Visitor visitor = Visitor.onPhone(base, theme).signInAs(name)) {
            visitor.open("/checks/safe-handling-check");
            look(visitor);
            visitor.find("button:has-text('Begin the check')").click();
            String sitting = visitor.page().url().replaceAll("/items/.*", "");
            Set<String> kinds = new HashSet<>();
            for (int item = 1; item <= ITEMS; item++) {
                visitor.page().navigate(sitting + "/items/" + item);
                assertThat(visitor.find("h1").innerText()).isEqualTo("Item " + item + " of " + ITEMS);
                if (kinds.add(choose(visitor))) {
                    look(visitor);
                }
                visitor.find("form.form button[type=submit]").click();
            }
            assertThat(kinds).hasSizeGreaterThan(2);
            visitor.page().navigate(sitting);
            look(visitor);
            visitor.find("a.button:has-text('Hand in')").click();
            look(visitor);
            visitor.find("button:has-text('Hand in and see the result')").click();
            assertThat(visitor.find(".verdict-word").innerText()).contains("Not passed");
            assertThat(visitor.find("section.panel").count()).isEqualTo(ITEMS);
            look(visitor);
            assertThat(visitor.complaints()).isEmpty();
        }
    }

    /** Chooses something, with no knowledge of the salt; tells what kind of item it is. */
    private static String choose(Visitor visitor) {
        for (String kind : List.of("radio", "checkbox")) {
            Locator choices = visitor.find("main input[type=" + kind + "][name=answer]");
            if (choices.count() > 0) {
                choices.last().check();
                return kind;
            }
        }
        List<Locator> rows = visitor.find("main select[name=answer]").all();
        for (int row = 0; row < rows.size(); row++) {
            int entries = rows.get(row).locator("option").count() - 1;
            rows.get(row).selectOption(new com.microsoft.playwright.options.SelectOption().setIndex(row % entries + 1));
        }
        return rows.isEmpty() ? "number" : "select";
    }

    @Test
    void anInstructorReadsSittingsAndNotesATalk() {
        try (Visitor visitor = Visitor.onPhone(base, ColorScheme.LIGHT).signInAs("ines")) {
            visitor.open("/people/" + DemoPeople.DARIUS + "/sittings");
            look(visitor);
            visitor.find("main tbody a").first().click();
            look(visitor);
        }
    }

    private static void look(Visitor visitor) {
        String where = visitor.page().url();
        assertThat(visitor.barriers()).as("axe on %s", where).isEmpty();
        assertThat(visitor.scrollsSideways()).as("%s scrolls sideways", where).isFalse();
    }
}
