package org.riseandgel.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.quarkus.test.junit.QuarkusTest;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.riseandgel.Browserless;
import org.riseandgel.Browserless.Answer;
import org.riseandgel.SignedIn;

@QuarkusTest
class BenchSheetsTest {
    static Stream<String> ids() {
        return Catalogue.standard().all().stream().map(Calculation::id);
    }

    @ParameterizedTest
    @ValueSource(strings = {"apprentice", "instructor", "safety-lead", "office"})
    void everyRoleMayUseTheBench(String role) {
        Answer bench = SignedIn.as(role).get("/bench");
        assertThat(bench.status()).isEqualTo(200);
        assertThat(bench.page().select("a.card").eachAttr("href"))
                .containsExactly(Catalogue.standard().all().stream()
                        .map(calculation -> "/bench/" + calculation.id())
                        .toArray(String[]::new));
    }

    @Test
    void theBenchIsInOrderOfTheWork() {
        Document bench = opened("/bench", 200);
        assertThat(bench.select("main h2").eachText())
                .containsExactly(
                        Arrays.stream(Task.values()).map(Task::getHeading).toArray(String[]::new));
        assertThat(bench.select("main h2 + ul.cards:not(:has(li))")).isEmpty();
    }

    @Test
    void whatComesOutInWordsIsNotSetAsAFigure() {
        Document clock = opened("/bench/gel-clock", 200);
        assertThat(clock.select(".results dd.words").eachText())
                .singleElement()
                .asString()
                .startsWith("GO");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/bench", "/bench/stick-marks", "/bench/stick-marks/stick"})
    void nobodyMayWhoIsNotSignedIn(String path) {
        Answer answer = Browserless.anonymous().get(path);
        assertThat(answer.status()).isEqualTo(303);
        assertThat(answer.location()).startsWith("/sign-in");
    }

    @ParameterizedTest
    @MethodSource("ids")
    void aSheetOpensWithItsDefaultsWorked(String id) {
        Document page = opened("/bench/" + id, 200);
        Calculation calculation = Catalogue.standard().find(id).orElseThrow();
        assertThat(page.select(".results dd").eachText())
                .hasSize(calculation.findings().size() + calculation.results().size())
                .allMatch(text -> !text.isBlank());
        assertThat(page.select("details .working li")).isNotEmpty();
        for (Input input : calculation.inputs()) {
            assertThat(page.select("label[for=" + input.name() + "]").text()).isEqualTo(input.label());
        }
        assertThat(page.select("[style], style, script:not([src])")).isEmpty();
        assertThat(page.select(".error-summary")).isEmpty();
    }

    @Test
    void theAddressCarriesWhatWasTyped() {
        // by hand: (50 − 12) g ÷ 200 mL = 0.19 g/mL and 1.02 ÷ 0.19 = 5.37, read to a tenth
        Document page = opened("/bench/foam-density?emptyCup=12&fullCup=50&cupVolume=" + typed("0.2 L"), 200);
        assertThat(page.select(".results dd").eachText()).containsExactly("0.190 g/mL", "5.4");
        assertThat(page.getElementById("cupVolume").attr("value")).isEqualTo("0.2 L");
    }

    @Test
    void resultsAreShownInUsUnitsAndTheLinksKeepThem() {
        String asked = "emptyCup=12&fullCup=50&cupVolume=" + typed("0.2 L");
        Document page = opened("/bench/foam-density?units=us&" + asked, 200);
        // by hand: 0.19 g/mL = 190 kg/m³ = 190 × 0.3048³ ÷ 0.45359237 lb/ft³ = 11.861 lb/ft³, to 0.05
        assertThat(page.select(".results dd").eachText()).containsExactly("11.85 lb/ft³", "5.4");
        assertThat(page.select("form input[name=units]").attr("value")).isEqualTo("us");
        assertThat(page.select("details .working").text()).contains("0.19 g/mL");
        Document back = opened(page.selectFirst("a[data-units]").attr("href"), 200);
        assertThat(back.select(".results dd").eachText()).containsExactly("0.190 g/mL", "5.4");
        assertThat(back.getElementById("cupVolume").attr("value")).isEqualTo("0.2 L");
        assertThat(back.selectFirst("a[data-units]").attr("href")).contains("units=us");
    }

    @Test
    void theStickKeepsTheUnitsForTheWayBack() {
        Document sheet = opened("/bench/stick-marks?units=us&depth=20", 200);
        assertThat(sheet.select(".results dd").first().text()).endsWith(" in");
        assertThat(sheet.select("figure desc").text()).contains(" in").doesNotContain(" cm");
        Document stick =
                opened(sheet.selectFirst("a[href^=/bench/stick-marks/stick]").attr("href"), 200);
        assertThat(stick.select(".crumbs a[href*=units=us]")).hasSize(1);
    }

    @Test
    void whereAPersonChoosesTheUnitNothingIsSwitched() {
        Document page = opened("/bench/unit-conversion?units=us", 200);
        assertThat(page.select("a[data-units], input[name=units]")).isEmpty();
        assertThat(page.select(".results dd").text())
                .isEqualTo(opened("/bench/unit-conversion", 200)
                        .select(".results dd")
                        .text());
    }

    @Test
    void theWorkingStartsWithWhatWasGivenInAnotherUnit() {
        Document page = opened("/bench/stick-marks?bottomDiameter=" + typed("4 3/4 in"), 200);
        assertThat(page.select("details .working li").first().text())
                .contains("in × cm per in")
                .contains("4.75 in × 2.54")
                .contains("12.065 cm");
    }

    @Test
    void badInputIsShownAgainWithEveryProblemAndNothingLost() {
        Document page = opened("/bench/foam-density?emptyCup=12..5&fullCup=42&cupVolume=30+g", 422);
        assertThat(page.title()).startsWith("Error: ");
        assertThat(page.select(".error-summary a").eachAttr("href")).containsExactly("#emptyCup", "#cupVolume");
        assertThat(page.getElementById("emptyCup").attr("value")).isEqualTo("12..5");
        assertThat(page.getElementById("emptyCup").attr("aria-invalid")).isEqualTo("true");
        assertThat(page.getElementById("emptyCup-error").text())
                .isEqualTo(page.select(".error-summary a").first().text());
        assertThat(page.select(".results")).isEmpty();
    }

    @Test
    void inputsThatMakeNoSenseTogetherAreRefusedAtTheirField() {
        Document page = opened("/bench/stick-marks?ratio=9", 422);
        assertThat(page.select(".error-summary a").attr("href")).isEqualTo("#ratio");
        assertThat(page.select(".error-summary a").text()).contains("the largest ratio that fits is 5.65.");
    }

    /** NIST StRD BoxBOD, divided by 100 and put on top of 1: 2.5 is reached after 2.2096 min. */
    @Test
    void aTableOfReadingsStandsInTheAddress() {
        String readings = "1 min; 2.09\r\n2 min; 2.49\r\n3; 2.49\r\n5; 2.91\r\n7; 3.13\r\n10; 3.24";
        Document page = opened("/bench/rise-forecast?wanted=2.5&readings=" + typed(readings), 200);
        assertThat(page.select(".results dd").first().text()).isEqualTo("2.2 min");
        assertThat(page.selectFirst("textarea#readings").wholeText().lines()).hasSize(6);
        assertThat(page.select("figure svg circle")).hasSize(6);
    }

    @Test
    void everyLineThatIsWrongIsToldWithItsNumber() {
        Document page = opened("/bench/rise-forecast?readings=" + typed("1 min; 2.1\n2 min\n3 min; x"), 422);
        assertThat(page.select(".error-summary a").eachAttr("href")).containsExactly("#readings", "#readings");
        assertThat(page.select(".error-summary a").eachText())
                .satisfiesExactly(
                        first -> assertThat(first).contains("line 2", "one value"),
                        second -> assertThat(second).contains("line 3"));
        assertThat(page.getElementById("readings").wholeText()).contains("3 min; x");
    }

    @Test
    void whatCannotBeToldYetIsANoteAndNoError() {
        Document page = opened("/bench/weigh-back?weighings=" + typed("0 h; 400 g\n1 h; 380 g"), 200);
        assertThat(page.select(".results")).isEmpty();
        assertThat(page.text()).contains("Cannot tell yet. Weigh the piece at three or more different times.");
    }

    @Test
    void theGelClockAdvisesInWords() {
        Document page = opened("/bench/gel-clock?closeTime=" + typed("9 min"), 200);
        assertThat(page.select(".results dd").first().text()).startsWith("DO NOT START");
        assertThat(page.selectFirst("figure svg desc").text()).contains("The mold is closed after 15.0");
    }

    @Test
    void aTypedTextStaysText() {
        Document page = opened("/bench/stick-marks?depth=" + typed("<script>alert(1)</script>\"'"), 422);
        assertThat(page.getElementById("depth").attr("value")).isEqualTo("<script>alert(1)</script>\"'");
        assertThat(page.select("script:not([src])")).isEmpty();
    }

    @Test
    void theVesselIsDrawnWithWordsForThoseWhoDoNotSeeIt() {
        Element drawing = opened("/bench/stick-marks?shape=tapered", 200).selectFirst("figure svg[role=img]");
        assertThat(drawing.attr("aria-labelledby")).isEqualTo("vessel-title vessel-desc");
        assertThat(drawing.selectFirst("desc").text())
                .contains("The liquid stands")
                .contains("the mark 1×");
    }

    @Test
    void theGellingAgentNeverStandsWithoutItsCaution() {
        assertThat(opened("/bench/scale-batch", 200).select(".caution").text())
                .contains("toxic")
                .contains("cleared");
    }

    @Test
    void anUnknownSheetIsNotFound() {
        assertThat(SignedIn.as("apprentice").get("/bench/no-such-sheet").status())
                .isEqualTo(404);
    }

    @Test
    void theStickHasItsMarksAtTheirHeights() {
        Document page = opened("/bench/stick-marks/stick?bottomDiameter=12&depth=20&charge=500&ratio=4", 200);
        Element strip = page.selectFirst(".strip svg");
        assertThat(strip.attr("viewBox")).isEqualTo("0 0 250 25");
        List<Element> ticks = strip.select("line.tick");
        assertThat(ticks).hasSize(4);
        for (int i = 0; i < 4; i++) {
            // by hand: i+1 times 500 mL on π·6² cm², in millimetres from the floor end
            double expected = (i + 1) * 500 / (Math.PI * 36) * 10;
            assertThat(Double.parseDouble(ticks.get(i).attr("x1"))).isCloseTo(expected, within(0.0005));
            assertThat(ticks.get(i).attr("x2")).isEqualTo(ticks.get(i).attr("x1"));
        }
        assertThat(ticks.get(3).className()).isEqualTo("tick wanted");
        assertThat(page.text()).contains("Set scale to 100 %. Measure the bar: 99.5–100.5 mm or do not use.");
    }

    @Test
    void aDeepVesselsStickComesInParts() {
        Document page = opened("/bench/stick-marks/stick?bottomDiameter=14&depth=60&charge=1000&ratio=5.5", 200);
        // 600 mm: 240 + 240 + 120 mm
        assertThat(page.select(".strip svg")).hasSize(3);
        assertThat(page.select(".strip").get(1).text()).contains("On to part 1").contains("Part 2/3");
        // by hand: 5.5 L on π·7² cm² is 357.287 mm, which is 117.287 mm into the second part
        Element wanted = page.select(".strip").get(1).selectFirst("line.wanted");
        assertThat(Double.parseDouble(wanted.attr("x1"))).isCloseTo(117.287, within(0.0005));
    }

    @Test
    void paperIsChosenByLink() {
        assertThat(opened("/bench/stick-marks/stick?depth=20", 200).select("link[href=/css/stick-a4.css]"))
                .hasSize(1);
        Document letter = opened("/bench/stick-marks/stick?depth=20&paper=letter", 200);
        assertThat(letter.select("link[href=/css/stick-letter.css]")).hasSize(1);
        assertThat(letter.select("a[href*=paper=a4]").attr("href")).contains("depth=20");
    }

    @Test
    void aStickThatCannotBeMarkedLeadsBackToTheSheet() {
        Answer answer = SignedIn.as("apprentice").get("/bench/stick-marks/stick?ratio=9");
        assertThat(answer.status()).isEqualTo(303);
        assertThat(answer.location()).isEqualTo("/bench/stick-marks?ratio=9");
    }

    private static Document opened(String path, int status) {
        Answer answer = SignedIn.as("apprentice").get(path);
        assertThat(answer.status()).as(path).isEqualTo(status);
        assertThat(answer.header("Content-Type")).startsWith("text/html");
        return answer.page();
    }

    private static String typed(String words) {
        return URLEncoder.encode(words, StandardCharsets.UTF_8);
    }
}
