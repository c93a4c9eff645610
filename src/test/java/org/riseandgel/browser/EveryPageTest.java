package org.riseandgel.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;

/**
 * Every page that a role can reach by links, and the ones behind forms: axe finds nothing, in light and dark, nothing
 * scrolls sideways on a phone, and every target is large enough for a gloved finger. Nothing is begun here that would
 * outlast the walk: the pages of an open check are looked at where one is sat, in {@link CheckBrowserTest}.
 */
@QuarkusTest
@NeedsBrowser
class EveryPageTest {
    /** Far more than there are: the walk ends by itself, and says so when it does not. */
    private static final int MOST_PAGES = 400;

    private static final String LOOKS_AT_EACH = "anouk";

    private static final String SMALL_TARGETS =
            """
            () => [...document.querySelectorAll('button, summary, .nav a, .who a, input:not([type=hidden]), select, a.button')]
              .filter(e => e.offsetParent !== null && !e.closest('.skip'))
              .map(e => [e, e.getBoundingClientRect()])
              .filter(([e, r]) => r.width > 0 && !['radio', 'checkbox'].includes(e.type))
              .filter(([e, r]) => r.height < 43.5 || r.width < 24)
              .map(([e, r]) => e.outerHTML.slice(0, 120) + ' ' + Math.round(r.width) + 'x' + Math.round(r.height))
            """;
    private static final Map<String, List<String>> EXTRA = extra();

    @TestHTTPResource
    String base;

    private static Map<String, List<String>> extra() {
        Map<String, List<String>> extra = new LinkedHashMap<>();
        extra.put("anouk", List.of("/account/password", "/bench/stick-marks?charge=abc", "/nowhere"));
        extra.put("ines", List.of("/course/problems"));
        extra.put("piet", List.of());
        extra.put("odile", List.of("/office/people/new", "/office/people/import", "/office/cohorts", "/office/demo"));
        return extra;
    }

    @Test
    void pagesBeforeSigningIn() {
        SoftAssertions problems = new SoftAssertions();
        try (Visitor visitor = Visitor.onPhone(base, ColorScheme.LIGHT)) {
            for (String path : List.of("/sign-in", "/welcome", "/set-up?key=wrong", "/nowhere")) {
                visitor.open(path);
                look(visitor, path, problems);
            }
        }
        problems.assertAll();
    }

    /** One looks at each lesson, sheet and skill, which takes as long as the three others together: so two walk at a time. */
    @Test
    void pagesOfEverybodyWhoIsSignedIn() {
        CompletableFuture<Void> others = CompletableFuture.runAsync(
                () -> List.of("ines", "piet", "odile").forEach(this::walk), walk -> new Thread(walk).start());
        try {
            walk(LOOKS_AT_EACH);
        } finally {
            others.join();
        }
    }

    private void walk(String name) {
        SoftAssertions problems = new SoftAssertions();
        try (Visitor visitor = Visitor.onPhone(base, ColorScheme.LIGHT).signInAs(name)) {
            Set<String> seen = new LinkedHashSet<>();
            List<String> waiting = new ArrayList<>(List.of("/"));
            waiting.addAll(EXTRA.get(name));
            while (!waiting.isEmpty() && seen.size() < MOST_PAGES) {
                String path = waiting.remove(0);
                if (seen.add(shape(path, name.equals(LOOKS_AT_EACH)))) {
                    visitor.open(path);
                    waiting.addAll(links(visitor.page()));
                    look(visitor, path, problems);
                }
            }
            assertThat(seen).hasSizeBetween(6, MOST_PAGES - 1);
            problems.assertThat(visitor.complaints()).isEmpty();
            problems.assertAll();
        }
    }

    /**
     * Pages of one shape are looked at once: one person's page stands for all. Lessons, sheets and
     * skills differ from one another but not from role to role, so one person looks at each and the others at one.
     */
    private static String shape(String path, boolean each) {
        String shape = path.replaceAll("[0-9a-f]{8}-[0-9a-f-]{27}", "*")
                .replaceAll("^/exercises/.+", "/exercises/*")
                .replaceAll("\\?.*", path.contains("=abc") ? "?bad" : "");
        return each
                ? shape
                : shape.replaceAll("^/course/\\d[^/]*/[^/]+$", "/course/*/*")
                        .replaceAll("^/(bench|checks|practice/skills|practice/examples)/[^/]+$", "/$1/*");
    }

    private static List<String> links(Page page) {
        @SuppressWarnings("unchecked")
        List<String> found = (List<String>)
                page.evaluate(
                        "() => [...document.querySelectorAll('main a[href^=\"/\"]:not([download], [href$=\"/file\"]), nav a, .who a')].map(a => a.getAttribute('href').split('#')[0])");
        return found;
    }

    /** A theme changes colours and nothing else: in the dark, colours are looked at alone. */
    private static void look(Visitor visitor, String path, SoftAssertions problems) {
        problems.assertThat(visitor.barriers()).as("axe on %s", path).isEmpty();
        problems.assertThat(visitor.barriersInTheDark())
                .as("axe on %s in the dark", path)
                .isEmpty();
        problems.assertThat(visitor.scrollsSideways())
                .as("%s scrolls sideways", path)
                .isFalse();
        problems.assertThat((List<?>) visitor.page().evaluate(SMALL_TARGETS))
                .as("small targets on %s", path)
                .isEmpty();
    }
}
