package org.riseandgel.browser;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.ReducedMotion;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.riseandgel.account.DemoPeople;

/** One person at one browser window, and what was wrong on the way. */
public final class Visitor implements AutoCloseable {
    private static final Pattern DRAW = Pattern.compile("/practice/draws/([0-9a-f-]{36})");

    private final String base;
    private final BrowserContext context;
    private final Page page;
    private final List<String> complaints = new ArrayList<>();

    private Visitor(String base, Browser.NewContextOptions options) {
        this.base = base.replaceFirst("/$", "");
        this.context = Chromium.browser().newContext(options.setBaseURL(this.base));
        this.page = context.newPage();
        page.onConsoleMessage(message -> {
            if (message.type().equals("error") && !message.text().contains("Failed to load resource")) {
                complaints.add(message.text());
            }
        });
        page.onPageError(complaints::add);
    }

    public static Visitor at(String base) {
        return new Visitor(base, new Browser.NewContextOptions().setViewportSize(1280, 900));
    }

    public static Visitor withoutScript(String base) {
        return new Visitor(
                base, new Browser.NewContextOptions().setViewportSize(1280, 900).setJavaScriptEnabled(false));
    }

    public static Visitor onPhone(String base, ColorScheme theme) {
        return new Visitor(
                base,
                new Browser.NewContextOptions()
                        .setViewportSize(360, 740)
                        .setColorScheme(theme)
                        .setReducedMotion(ReducedMotion.REDUCE));
    }

    public Page page() {
        return page;
    }

    public Locator find(String selector) {
        return page.locator(selector);
    }

    public void open(String path) {
        page.navigate(base + path);
    }

    /** Signs in through the page, as a person would. */
    public Visitor signIn(String name, String password) {
        open("/sign-in");
        page.fill("#name", name);
        page.fill("#password", password);
        find("form.form button[type=submit]").first().click();
        page.waitForURL(url -> !url.contains("/sign-in"));
        return this;
    }

    /** Signs in as the demo person with this sign-in name. */
    public Visitor signInAs(String name) {
        String password = DemoPeople.ALL.stream()
                .filter(person -> person.signInName().equals(name))
                .findFirst()
                .orElseThrow()
                .password();
        return signIn(name, password);
    }

    /** The draw whose page is open. */
    String draw() {
        Matcher matcher = DRAW.matcher(page.url());
        if (!matcher.find()) {
            throw new AssertionError("no draw at " + page.url());
        }
        return matcher.group(1);
    }

    /** What axe finds on the open page, as text; empty when it finds nothing. */
    public List<String> barriers() {
        return found(new AxeBuilder(page)
                .withTags(List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice")));
    }

    /** What axe finds about colours alone in the dark theme, for a page that was looked at whole in the light one. */
    List<String> barriersInTheDark() {
        page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.DARK));
        List<String> found = found(new AxeBuilder(page).withRules(List.of("color-contrast", "link-in-text-block")));
        page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.LIGHT));
        return found;
    }

    /** Legacy mode opens no second window for each look; the pages hold no frames, which alone would need it. */
    private static List<String> found(AxeBuilder axe) {
        return axe.setLegacyMode(true).analyze().getViolations().stream()
                .map(Visitor::words)
                .toList();
    }

    private static String words(Rule rule) {
        return rule.getId() + ": " + rule.getHelp() + " "
                + rule.getNodes().stream().map(node -> node.getHtml()).toList();
    }

    /** Errors that pages wrote to the console. */
    public List<String> complaints() {
        return complaints;
    }

    /** Whether the open page is wider than the window. */
    public boolean scrollsSideways() {
        return (Boolean)
                page.evaluate("() => document.documentElement.scrollWidth > document.documentElement.clientWidth");
    }

    @Override
    public void close() {
        context.close();
    }
}
