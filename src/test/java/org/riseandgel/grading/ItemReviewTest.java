package org.riseandgel.grading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.hipparchus.stat.correlation.PearsonsCorrelation;
import org.junit.jupiter.api.Test;
import org.riseandgel.grading.ItemReview.Figures;
import org.riseandgel.grading.ItemReview.Seen;

/**
 * Figures of items against a published teaching table of ten people and ten items (right 1, wrong 0; its facilities are
 * printed there, the corrected item-rest correlations were recomputed with an independent library), against Newcombe's
 * intervals (Statistics in Medicine 17, 1998), and against Hipparchus.
 */
class ItemReviewTest {
    private static final String[] TEACHING = {
        "1111110110", "1011011101", "1111011001", "0010001000", "0000010010",
        "1110111111", "1101110111", "1111111101", "0101111101", "1101101110"
    };

    private static List<Seen> seen(String... rows) {
        List<Seen> seen = new ArrayList<>();
        for (String row : rows) {
            long total = row.chars().filter(c -> c == '1').count();
            for (int item = 0; item < row.length(); item++) {
                int right = row.charAt(item) - '0';
                seen.add(new Seen(
                        "item-" + item,
                        right,
                        (double) (total - right) / (row.length() - 1),
                        Duration.ofSeconds(30 + item),
                        right == 1 ? List.of() : List.of("")));
            }
        }
        return seen;
    }

    @Test
    void thePublishedTable() {
        List<Figures> figures = ItemReview.of(seen(TEACHING));
        double[] facility = {.7, .7, .6, .7, .6, .8, .7, .7, .5, .6};
        double[] itemRest = {
            0.705889, 0.705889, 0, 0.473589, 0.583874, 0.286147, -0.027445, 0.705889, -0.123613, 0.475867
        };
        for (int item = 0; item < facility.length; item++) {
            Figures one = figures.get(item);
            assertThat(one.people()).isEqualTo(10);
            assertThat(one.facility()).as("item %d", item).isCloseTo(facility[item], within(1e-12));
            assertThat(one.discrimination().orElseThrow()).as("item %d", item).isCloseTo(itemRest[item], within(1e-6));
        }
        assertThat(figures.get(8).likely().low()).isCloseTo(0.236593, within(1e-6));
        assertThat(figures.get(8).likely().high()).isCloseTo(0.763407, within(1e-6));
    }

    @Test
    void anotherLibraryFindsTheSame() {
        Random chance = new Random(20_261_126);
        String[] rows = new String[60];
        for (int i = 0; i < rows.length; i++) {
            double ability = chance.nextDouble();
            StringBuilder row = new StringBuilder();
            for (int item = 0; item < 12; item++) {
                row.append(chance.nextDouble() < 0.2 + 0.7 * ability ? '1' : '0');
            }
            rows[i] = row.toString();
        }
        List<Figures> figures = ItemReview.of(seen(rows));
        for (int item = 0; item < 12; item++) {
            double[] right = new double[rows.length];
            double[] rest = new double[rows.length];
            for (int i = 0; i < rows.length; i++) {
                right[i] = rows[i].charAt(item) - '0';
                rest[i] = rows[i].chars().filter(c -> c == '1').count() - right[i];
            }
            assertThat(figures.get(item).discrimination().orElseThrow())
                    .isCloseTo(new PearsonsCorrelation().correlation(right, rest), within(1e-12));
        }
    }

    @Test
    void belowTenPeopleNothingIsTold() {
        Figures figures = ItemReview.of(seen("11", "10", "01", "11", "00", "11", "10", "01", "11"))
                .get(0);
        assertThat(figures.people()).isEqualTo(9);
        assertThat(figures.isTold()).isFalse();
        assertThat(figures.facility()).isNaN();
        assertThat(figures.likely()).isNull();
        assertThat(figures.discrimination()).isEmpty();
        assertThat(figures.slips()).isEmpty();
    }

    @Test
    void slipsAreCountedAndTheRestIsUnexplained() {
        List<Seen> seen = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            List<String> wrongs = i < 3 ? List.of("Ounces for grams") : i < 5 ? List.of("") : List.of();
            seen.add(new Seen("one", i < 5 ? 0 : 1, Double.NaN, Duration.ofSeconds(10L * (i + 1)), wrongs));
        }
        Figures figures = ItemReview.of(seen).get(0);
        assertThat(figures.slips()).containsExactly(Map.entry("Ounces for grams", 3L));
        assertThat(figures.wrongs()).isEqualTo(5);
        assertThat(figures.unexplained()).isCloseTo(0.4, within(1e-12));
        assertThat(figures.medianTime()).isEqualTo(Duration.ofSeconds(60));
        assertThat(figures.discrimination()).as("there is no rest").isEmpty();
    }

    @Test
    void whatEverybodyHadRightDiscriminatesNothing() {
        String[] rows = new String[10];
        for (int i = 0; i < rows.length; i++) {
            rows[i] = i % 2 == 0 ? "11" : "10";
        }
        List<Figures> figures = ItemReview.of(seen(rows));
        assertThat(figures.get(0).discrimination()).isEmpty();
        assertThat(figures.get(0).facility()).isEqualTo(1);
        assertThat(figures.get(0).unexplained()).isNaN();
    }
}
