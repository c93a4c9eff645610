package org.riseandgel.grading;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Media;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.assertj.core.api.SoftAssertions;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.riseandgel.MutableClock;
import org.riseandgel.account.DemoPeople;
import org.riseandgel.browser.NeedsBrowser;
import org.riseandgel.browser.PrintedPaths;
import org.riseandgel.browser.Visitor;
import org.riseandgel.core.quantity.Rational;
import org.riseandgel.course.CourseContent;
import org.riseandgel.exercise.DrawnNumbers;
import org.riseandgel.exercise.DrawnPart;
import org.riseandgel.exercise.ExerciseTemplate;
import org.riseandgel.exercise.NumericTemplate;
import org.riseandgel.platform.school.SchoolSettings;

/** A graded set in a real browser, from the draft to the downloaded results. */
@QuarkusTest
@NeedsBrowser
class GradedSetBrowserTest {
    @TestHTTPResource
    String base;

    @Inject
    WorkStore works;

    @Inject
    PartViews views;

    @Inject
    CourseContent content;

    @Inject
    SchoolSettings school;

    @Inject
    Clock clock;

    @AfterEach
    void reset() {
        MutableClock.reset();
    }

    @Test
    void anInstructorSetsTwoApprenticesHandInOneLateAndTheResultsLeave() throws IOException {
        String set;
        try (Visitor ines = Visitor.at(base).signInAs("ines")) {
            set = draftAndPublish(ines);
            UUID first = handIn("anouk", set, 0);
            try (Visitor bastian = Visitor.at(base).signInAs("bastian")) {
                begin(bastian, set);
            }
            UUID second =
                    works.of(UUID.fromString(set), DemoPeople.BASTIAN).get(0).id();
            assertThat(seeds(first)).isNotEqualTo(seeds(second));
            extend(ines, set);
            MutableClock.advance(Duration.ofHours(3));
            handIn("bastian", set, 1);
        }
        try (Visitor ines = Visitor.at(base).signInAs("ines")) {
            ines.open("/graded-sets/" + set);
            assertThat(row(ines, "Anouk Sorrel"))
                    .contains("2 of 2 points")
                    .contains("100.0 %")
                    .doesNotContain("with more time");
            assertThat(row(ines, "Bastian Quill"))
                    .contains("1 of 2 points")
                    .contains("50.0 %")
                    .contains("with more time");
            correct(ines);
            ines.open("/graded-sets/" + set);
            assertThat(row(ines, "Bastian Quill")).contains("1.5 of 2 points").contains("changed");
            compareCellByCell(ines);
            assertThat(ines.complaints()).isEmpty();
        }
        try (Visitor bastian = Visitor.at(base).signInAs("bastian")) {
            bastian.open("/set-work/" + set);
            assertThat(bastian.find("main").innerText()).contains("1.5 of 2 points");
        }
    }

    private String draftAndPublish(Visitor ines) {
        Page page = ines.page();
        ines.open("/graded-sets");
        page.click("text=Draft a new set");
        page.fill("#title", "Set in a browser");
        page.selectOption("#cohort", DemoPeople.FIRST_COHORT.toString());
        page.click("text=Make the draft");
        String set = page.url().split("/")[4];
        for (ExerciseTemplate one : twoOfOneNumber()) {
            page.selectOption("#exercise", one.id());
            page.click("text=Save the draft");
        }
        LocalDateTime now = LocalDateTime.ofInstant(clock.instant(), school.zone());
        fill(page, "opens", now.minusHours(1));
        fill(page, "closes", now.plusHours(2));
        page.click("text=Save the draft");
        page.click("text=See five draws");
        assertThat(ines.find("section[aria-labelledby^=draw-]").count()).isEqualTo(5);
        page.click("text=Publish for");
        assertThat(ines.find(".facts").first().innerText()).contains("Open");
        return set;
    }

    private List<ExerciseTemplate> twoOfOneNumber() {
        return content.exercises().ofSkill("stick-marks-straight").stream()
                .filter(one -> one instanceof NumericTemplate numeric
                        && numeric.parts().size() == 1)
                .limit(2)
                .toList();
    }

    private static void fill(Page page, String name, LocalDateTime at) {
        page.fill("#" + name + "-day", at.toLocalDate().toString());
        page.fill("#" + name + "-time", SchoolMoments.shown(at.toLocalTime()));
    }

    private static void begin(Visitor visitor, String set) {
        visitor.open("/set-work");
        visitor.find("a[href='/set-work/" + set + "']").first().click();
        visitor.find("form[action$='/begin'] button").click();
    }

    /** Works the set to its end; one item wrongly, where one is named. */
    private UUID handIn(String name, String set, int wrongItem) {
        try (Visitor visitor = Visitor.at(base).signInAs(name)) {
            visitor.open("/set-work/" + set);
            visitor.find("form[action$='/begin'] button, a.button:has-text('Go on')")
                    .first()
                    .click();
            UUID work = UUID.fromString(visitor.page().url().replaceAll(".*/tries/", ""));
            Work.Item[] items = works.find(work).orElseThrow().items().toArray(Work.Item[]::new);
            for (Work.Item item : items) {
                for (int part = 0; part < views.parts(item); part++) {
                    visitor.open("/set-work/tries/" + work + "/items/" + item.number());
                    visitor.page().fill("#answer", typed(item, part, item.number() == wrongItem));
                    visitor.find("#echo strong").waitFor();
                    visitor.find("form.form button.button").first().click();
                    visitor.find(".verdict").first().waitFor();
                }
            }
            visitor.open("/set-work/tries/" + work);
            visitor.page().click("text=Hand in this try");
            assertThat(visitor.find(".facts").first().innerText()).contains("Handed in");
            assertThat(visitor.complaints()).isEmpty();
            return work;
        }
    }

    private String typed(Work.Item item, int part, boolean wrong) {
        DrawnPart asked = ((DrawnNumbers) views.drawn(item)).part(part);
        Rational value = wrong ? asked.expected().times(Rational.of(37, 10)) : asked.expected();
        return value.toDecimal(5).toPlainString() + " " + asked.part().unit().symbol();
    }

    private List<Long> seeds(UUID work) {
        return works.find(work).orElseThrow().items().stream()
                .map(Work.Item::seed)
                .toList();
    }

    private void extend(Visitor ines, String set) {
        ines.open("/graded-sets/" + set);
        ines.page().click("summary:has-text('Give somebody more time')");
        ines.page().selectOption("#person", DemoPeople.BASTIAN.toString());
        fill(
                ines.page(),
                "until",
                LocalDateTime.ofInstant(clock.instant(), school.zone()).plusHours(20));
        ines.page().fill("#extension-reason", "A family matter");
        ines.page().click("button:has-text('Give more time')");
        assertThat(ines.find("main").innerText())
                .contains("The extension is given")
                .contains("A family matter");
    }

    private static String row(Visitor ines, String name) {
        return ines.find("table.board tbody tr:has-text('" + name + "')")
                .first()
                .innerText();
    }

    private static void correct(Visitor ines) {
        ines.find("tr:has-text('Bastian Quill') a").first().click();
        ines.find("#item-1 a").first().click();
        assertThat(ines.find("main").innerText()).contains("Right answer").contains("Time");
        printsItsWorking(ines.page());
        ines.page().fill("#credit", "50");
        ines.page().fill("#reason", "The reading was right");
        ines.page().click("button:has-text('Correct the mark')");
        assertThat(ines.find("main").innerText()).contains("The mark is corrected");
    }

    /** Paper cannot be opened: what is folded on the page is printed whole. */
    private static void printsItsWorking(Page page) {
        String seen = "working => working.checkVisibility({contentVisibilityAuto: true})";
        Locator working = page.locator("details.printed > :not(summary)").first();
        assertThat(working.evaluate(seen)).isEqualTo(false);
        page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
        assertThat(working.evaluate(seen)).isEqualTo(true);
        page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.SCREEN));
    }

    /** The table on the page, the CSV and the sheet say the same in every cell that all three have. */
    private static void compareCellByCell(Visitor ines) throws IOException {
        Download csv = ines.page()
                .waitForDownload(() -> ines.find("a[href$='/results.csv']").click());
        Download xlsx = ines.page()
                .waitForDownload(() -> ines.find("a[href$='/results.xlsx']").click());
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .build();
        try (CSVParser parser = CSVParser.parse(csv.path(), StandardCharsets.UTF_8, format);
                InputStream in = Files.newInputStream(xlsx.path());
                ReadableWorkbook book = new ReadableWorkbook(in)) {
            List<String> header = parser.getHeaderNames();
            List<CSVRecord> rows = parser.getRecords();
            List<Row> sheet = book.getFirstSheet().read();
            assertThat(sheet).hasSize(rows.size() + 1);
            for (int i = 0; i < rows.size(); i++) {
                for (int column = 0; column < header.size(); column++) {
                    String cell = sheet.get(i + 1)
                            .getOptionalCell(column)
                            .map(Cell::getText)
                            .orElse("");
                    assertThat(same(cell, rows.get(i).get(column)))
                            .as("%s of row %d: %s", header.get(column), i, rows.get(i))
                            .isTrue();
                }
            }
            Map<String, CSVRecord> byName = new LinkedHashMap<>();
            rows.forEach(row -> byName.put(row.get("Name"), row));
            assertThat(byName.get("Anouk Sorrel").get("Points")).isEqualTo("2");
            assertThat(byName.get("Bastian Quill").get("Points")).isEqualTo("1.5");
            assertThat(byName.get("Bastian Quill").get("Item 1")).isEqualTo("0.5");
            assertThat(byName.get("Celeste Marrow").get("Points")).isEmpty();
            List<String> items =
                    IntStream.rangeClosed(1, 2).mapToObj(n -> "Item " + n).toList();
            assertThat(header).containsAll(items);
        }
    }

    private static boolean same(String one, String other) {
        if (one.equals(other)) {
            return true;
        }
        return !one.isEmpty() && !other.isEmpty() && new BigDecimal(one).compareTo(new BigDecimal(other)) == 0;
    }

    /** The pages of sets on a phone, in both themes: axe finds nothing and nothing scrolls sideways. */
    @Test
    void thePagesAreCleanOnAPhone() {
        SoftAssertions problems = new SoftAssertions();
        for (ColorScheme theme : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
            try (Visitor ines = Visitor.onPhone(base, theme).signInAs("ines")) {
                look(problems, ines, "/graded-sets");
                look(problems, ines, "/graded-sets/new");
                look(problems, ines, href(ines, "/graded-sets", "First look at foam"));
                String at = ines.page().url().replaceFirst("^https?://[^/]+", "");
                problems.assertThat(PrintedPaths.of(ines.page()
                                        .pdf(new Page.PdfOptions()
                                                .setFormat("A4")
                                                .setPreferCSSPageSize(true)))
                                .pages())
                        .as("sheets of the results of a small cohort")
                        .isEqualTo(1);
                look(problems, ines, "/cohorts/" + DemoPeople.FIRST_COHORT + "/results");
                look(problems, ines, at + "/draft/preview");
                look(problems, ines, at + "/judge-again");
                look(problems, ines, ref(ines, at, "a[href*='/works/']"));
                look(problems, ines, ref(ines, ines.page().url().replaceFirst("^https?://[^/]+", ""), "#item-1 a"));
                look(problems, ines, href(ines, "/graded-sets", "Before the first pour") + "/draft");
                look(problems, ines, href(ines, "/graded-sets", "Before the first pour") + "/draft/preview");
            }
            try (Visitor celeste = Visitor.onPhone(base, theme).signInAs("celeste")) {
                look(problems, celeste, "/set-work");
                look(problems, celeste, href(celeste, "/set-work", "First look at foam"));
                look(
                        problems,
                        celeste,
                        ref(celeste, celeste.page().url().replaceFirst("^https?://[^/]+", ""), "a[href*='/tries/']"));
                look(problems, celeste, celeste.page().url().replaceFirst("^https?://[^/]+", "") + "/items/1");
            }
            try (Visitor anouk = Visitor.onPhone(base, theme).signInAs("anouk")) {
                String open = href(anouk, "/set-work", "Volume and batch, week two");
                look(problems, anouk, ref(anouk, open, "a[href*='/tries/']"));
                look(problems, anouk, anouk.page().url().replaceFirst("^https?://[^/]+", "") + "/items/2");
            }
        }
        problems.assertAll();
    }

    private static String href(Visitor visitor, String page, String text) {
        return ref(visitor, page, "main a:has-text('" + text + "')");
    }

    private static String ref(Visitor visitor, String page, String selector) {
        visitor.open(page);
        return visitor.find(selector).first().getAttribute("href");
    }

    private static void look(SoftAssertions problems, Visitor visitor, String path) {
        visitor.open(path);
        problems.assertThat(visitor.barriers()).as("axe on %s", path).isEmpty();
        problems.assertThat(visitor.scrollsSideways())
                .as("%s scrolls sideways", path)
                .isFalse();
    }
}
