package org.riseandgel.platform.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.StringReader;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.junit.jupiter.api.Test;

/** Tables that leave the program: what a reader of other hands gets is what went in, and no text becomes a formula. */
class TableFilesTest {
    private static final List<String> FORMULAS =
            List.of("=1+1", "+cmd", "-2+3", "@SUM(A1)", "\tx", "\rx", "\n=1", "＝1+1", "＠x", "=HYPERLINK(\"x\")");
    private static final List<String> TEXTS =
            List.of("plain", "a,b", "say \"hi\"", "two\nlines", "ü€𝄞", "3-1", "", " lead", "'quoted");

    @Test
    void textsAndNumbersComeBackFromCsvAsTheyWent() throws Exception {
        List<CSVRecord> rows = csv(table(TEXTS));
        assertThat(rows.get(0).toList()).containsExactly("Name", "Points");
        for (int i = 0; i < TEXTS.size(); i++) {
            assertThat(rows.get(i + 1).get(0)).isEqualTo(TEXTS.get(i));
            assertThat(rows.get(i + 1).get(1)).isEqualTo(i == 0 ? "0" : "-" + i);
        }
    }

    /** OWASP, "CSV Injection": a cell that begins with = + - @, their wide forms, tab or an end of a line may be worked out. */
    @Test
    void noTextOfACsvIsAFormula() throws Exception {
        List<CSVRecord> rows = csv(table(FORMULAS));
        for (int i = 0; i < FORMULAS.size(); i++) {
            assertThat(rows.get(i + 1).get(0)).isEqualTo("'" + FORMULAS.get(i));
        }
    }

    @Test
    void numbersAreWrittenPlainly() throws Exception {
        Table table = new Table(
                "Numbers",
                List.of(Column.number("n")),
                Stream.of(-3, 0.1, 1e21, new BigDecimal("12.50"), 0.0).map(number -> List.<Object>of(number)));
        assertThat(csv(table).stream().skip(1).map(row -> row.get(0)))
                .containsExactly("-3", "0.1", "1000000000000000000000", "12.50", "0");
    }

    @Test
    void aCellOfTheWrongKindIsRefused() {
        Table table = new Table("Wrong", List.of(Column.number("n")), Stream.of(List.of("=1")));
        assertThatThrownBy(() -> CsvFile.write(table, new StringWriter()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("column n does not take String");
    }

    @Test
    void aSheetHoldsTextsAsTextsAndNumbersAsNumbers() throws Exception {
        List<String> texts = Stream.concat(TEXTS.stream().filter(text -> !text.isEmpty()), FORMULAS.stream())
                .filter(text -> !text.contains("\r"))
                .toList();
        List<Row> rows = xlsx(table(texts));
        for (int i = 0; i < texts.size(); i++) {
            Row row = rows.get(i + 1);
            assertThat(row.getCell(0).getType()).as(texts.get(i)).isEqualTo(CellType.STRING);
            assertThat(row.getCell(0).getText()).isEqualTo(texts.get(i));
            assertThat(row.getCell(1).asNumber()).isEqualByComparingTo(BigDecimal.valueOf(-i));
        }
    }

    @Test
    void aSheetOfTenThousandRowsIsWhole() throws Exception {
        Table table = new Table(
                "Long",
                List.of(Column.text("t"), Column.number("n")),
                IntStream.range(0, 10_000).mapToObj(i -> Arrays.<Object>asList(i % 7 == 0 ? null : "row " + i, i)));
        List<Row> rows = xlsx(table);
        assertThat(rows).hasSize(10_001);
        assertThat(rows.get(10_000).getCell(1).asNumber()).isEqualByComparingTo("9999");
    }

    @Test
    void aTableIsNotLeftBehindWhenOnlyItsHeadersAreAskedFor() throws Exception {
        TableFile file = TableFile.write(table(TEXTS), TableFile.Format.CSV);
        UnsentTables.remove("GET", file.entity());
        assertThat(file.path()).exists();
        UnsentTables.remove("HEAD", file.entity());
        assertThat(file.path()).doesNotExist();
    }

    private static Table table(List<String> texts) {
        return new Table(
                "Sheet",
                List.of(Column.text("Name"), Column.number("Points")),
                IntStream.range(0, texts.size()).mapToObj(i -> List.<Object>of(texts.get(i), -i)));
    }

    private static List<CSVRecord> csv(Table table) throws Exception {
        StringWriter out = new StringWriter();
        CsvFile.write(table, out);
        return CSVFormat.RFC4180.parse(new StringReader(out.toString())).getRecords();
    }

    private static List<Row> xlsx(Table table) throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        XlsxFile.write(table, out);
        try (ReadableWorkbook book = new ReadableWorkbook(new ByteArrayInputStream(out.toByteArray()))) {
            return book.getFirstSheet().read();
        }
    }
}
