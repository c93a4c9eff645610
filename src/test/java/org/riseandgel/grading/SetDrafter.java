package org.riseandgel.grading;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.riseandgel.Browserless;

/** An instructor at a browser who drafts and publishes sets through the pages. */
final class SetDrafter {
    final Browserless browser;
    private final ZoneId zone;

    SetDrafter(Browserless browser, ZoneId zone) {
        this.browser = browser;
        this.zone = zone;
    }

    /** Makes an empty draft. */
    UUID draft(String title, UUID cohort) {
        Browserless.Answer made = browser.post("/graded-sets", Map.of("title", title, "cohort", cohort.toString()));
        if (made.status() != 303) {
            throw new AssertionError("no draft: " + made);
        }
        return UUID.fromString(made.location().split("/")[2]);
    }

    /** What a browser would send of the draft's form as it stands. */
    Map<String, String> form(UUID set) {
        Document page = browser.get("/graded-sets/" + set + "/draft").page();
        Map<String, String> fields = new LinkedHashMap<>();
        Element form = page.selectFirst("form[action$=/draft]");
        form.select("input[name], textarea[name], select[name]").forEach(field -> {
            boolean ticked = !field.attr("type").equals("checkbox") || field.hasAttr("checked");
            if (ticked && !field.attr("name").equals("form-token")) {
                fields.put(field.attr("name"), value(field));
            }
        });
        return fields;
    }

    private static String value(Element field) {
        return field.tagName().equals("select")
                ? field.select("option[selected]").attr("value")
                : field.tagName().equals("textarea") ? field.wholeText() : field.attr("value");
    }

    Browserless.Answer save(UUID set, Map<String, String> fields) {
        return browser.post("/graded-sets/" + set + "/draft", fields);
    }

    /** Saves the draft as it stands with these fields changed. */
    Browserless.Answer change(UUID set, Map<String, String> changes) {
        Map<String, String> fields = form(set);
        fields.putAll(changes);
        return save(set, fields);
    }

    /** Gives it times from now, in whole minutes: opened an hour ago, closing in so many hours. */
    Browserless.Answer times(UUID set, Instant now, int hours) {
        LocalDateTime opens = LocalDateTime.ofInstant(now.minus(1, ChronoUnit.HOURS), zone);
        LocalDateTime closes = LocalDateTime.ofInstant(now.plus(hours, ChronoUnit.HOURS), zone);
        return change(
                set,
                Map.of(
                        "opens-day", opens.toLocalDate().toString(),
                        "opens-time", SchoolMoments.shown(opens.toLocalTime()),
                        "closes-day", closes.toLocalDate().toString(),
                        "closes-time", SchoolMoments.shown(closes.toLocalTime())));
    }

    /** Corrects a mark as somebody who has just looked at it. */
    static Browserless.Answer correct(Browserless browser, String mark, String credit, String reason) {
        String seen = browser.get(mark).page().select("input[name=seen]").attr("value");
        return browser.post(mark, Map.of("seen", seen, "credit", credit, "reason", reason));
    }

    Browserless.Answer publish(UUID set) {
        String revision = browser.get("/graded-sets/" + set + "/draft/preview")
                .page()
                .select("form[action$=/publish] input[name=revision]")
                .attr("value");
        return browser.post("/graded-sets/" + set + "/draft/publish", Map.of("revision", revision));
    }
}
