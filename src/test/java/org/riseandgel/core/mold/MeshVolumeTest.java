package org.riseandgel.core.mold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.threed.mesh.SimpleTriangleMesh;
import org.apache.commons.numbers.core.Precision;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Unit;

class MeshVolumeTest {
    /** Corners are single precision: 6 parts in 10⁸ each, some ten of them in a volume. */
    private static final double SINGLE_PRECISION = 1e-5;

    // A frustum of 14, 8, 6 cm holds 2169.79333 mL (textbook, with the real π); with n sides it holds less by the
    // factor
    // sin(2π/n)·n/(2π).
    @ParameterizedTest
    @ValueSource(ints = {64, 1024})
    void frustumWithManySides(int n) {
        double expected = 2169.79333 * Math.sin(2 * Math.PI / n) * n / (2 * Math.PI);
        MeshVolume volume = read(Meshes.binary(Meshes.frustum(n, 8, 6, 14)), Unit.CENTIMETRE);
        assertThat(volume.volume().inMillilitres()).isCloseTo(expected, withinPercentage(SINGLE_PRECISION));
        assertThat(volume.volume().inMillilitres()).isLessThan(2169.79333);
        assertThat(volume.insideOut()).isFalse();
        assertThat(volume.triangles()).isEqualTo(4 * n);
        assertThat(volume.longest().inCentimetres()).isCloseTo(16, within(1e-5));
    }

    // 64 sides: 2166.30949080, computed with an independent library.
    @Test
    void frustumOfSixtyFour() {
        assertThat(read(Meshes.text(Meshes.frustum(64, 8, 6, 14)), Unit.CENTIMETRE)
                        .volume()
                        .inMillilitres())
                .isCloseTo(2166.30949080, withinPercentage(SINGLE_PRECISION));
    }

    @Test
    void asAnotherLibraryHasIt() {
        List<double[]> triangles = Meshes.moved(Meshes.frustum(24, 5, 3, 9), 2, -7, 4);
        SimpleTriangleMesh.Builder mesh = SimpleTriangleMesh.builder(Precision.doubleEquivalenceOfEpsilon(1e-7));
        for (double[] t : triangles) {
            mesh.addFaceUsingVertices(
                    Vector3D.of(t[0], t[1], t[2]), Vector3D.of(t[3], t[4], t[5]), Vector3D.of(t[6], t[7], t[8]));
        }
        assertThat(read(Meshes.binary(triangles), Unit.CENTIMETRE).volume().inMillilitres())
                .isCloseTo(mesh.build().toTree().getSize(), withinPercentage(SINGLE_PRECISION));
    }

    @Test
    void bothFormsSayTheSame() {
        List<double[]> triangles = Meshes.frustum(100, 70, 50, 30);
        assertThat(read(Meshes.text(triangles), Unit.MILLIMETRE))
                .isEqualTo(read(Meshes.binary(triangles), Unit.MILLIMETRE));
    }

    // An inch is 25.4 mm by definition.
    @ParameterizedTest
    @CsvSource({"MILLIMETRE, 0.024", "CENTIMETRE, 24", "INCH, 393.289536"})
    void theUnitIsAnArgument(Unit unit, double millilitres) {
        assertThat(read(Meshes.binary(Meshes.box(2, 3, 4)), unit).volume().inMillilitres())
                .isCloseTo(millilitres, withinPercentage(1e-9));
    }

    @Property(tries = 50)
    void whereItLiesIsOfNoAccount(
            @ForAll @IntRange(min = -2000, max = 2000) int x, @ForAll @IntRange(min = -2000, max = 2000) int y) {
        // Whole numbers stay exact in single precision.
        MeshVolume volume = read(Meshes.binary(Meshes.moved(Meshes.box(20, 30, 40), x, y, -x)), Unit.MILLIMETRE);
        assertThat(volume.volume().inMillilitres()).isCloseTo(24, withinPercentage(1e-12));
    }

    @Property(tries = 30)
    void theVolumeGoesWithTheCube(@ForAll @DoubleRange(min = 0.1, max = 50) double times) {
        double whole = read(Meshes.binary(Meshes.frustum(32, 4, 3, 5)), Unit.CENTIMETRE)
                .volume()
                .inMillilitres();
        assertThat(read(Meshes.binary(Meshes.frustum(32, 4 * times, 3 * times, 5 * times)), Unit.CENTIMETRE)
                        .volume()
                        .inMillilitres())
                .isCloseTo(whole * times * times * times, withinPercentage(1e-4));
    }

    @Test
    void orderOfTrianglesIsOfNoAccount() {
        List<double[]> mixed = new ArrayList<>(Meshes.frustum(64, 8, 6, 14));
        Collections.shuffle(mixed, new Random(4));
        assertThat(read(Meshes.binary(mixed), Unit.CENTIMETRE).volume().inMillilitres())
                .isCloseTo(2166.30949080, withinPercentage(SINGLE_PRECISION));
    }

    @Test
    void insideOutIsSaidAndStillRight() {
        MeshVolume volume = read(Meshes.binary(Meshes.insideOut(Meshes.box(20, 30, 40))), Unit.MILLIMETRE);
        assertThat(volume.insideOut()).isTrue();
        assertThat(volume.volume().inMillilitres()).isCloseTo(24, withinPercentage(1e-9));
    }

    @Test
    void aHollowInsideIsTakenAway() {
        List<double[]> hollow = new ArrayList<>(Meshes.box(40, 40, 40));
        hollow.addAll(Meshes.moved(Meshes.insideOut(Meshes.box(20, 20, 20)), 10, 10, 10));
        assertThat(read(Meshes.binary(hollow), Unit.MILLIMETRE).volume().inMillilitres())
                .isCloseTo(64 - 8, withinPercentage(1e-9));
    }

    @Test
    void anOpenMeshIsRefusedNamingAnEdge() {
        List<double[]> open = Meshes.box(20, 30, 40).subList(0, 11);
        assertRefused(
                Meshes.binary(open),
                MeshRefusedException.Reason.OPEN,
                "the mesh is open at the edge from (0, 30, 0) to (0, 0, 40): it has 1 triangle, must have 2");
    }

    @Test
    void aTurnedTriangleIsRefused() {
        List<double[]> turned = new ArrayList<>(Meshes.box(20, 30, 40));
        turned.set(0, Meshes.insideOut(turned.subList(0, 1)).get(0));
        assertRefused(Meshes.binary(turned), MeshRefusedException.Reason.OPEN, "face opposite ways");
    }

    @Test
    void anEdgeWithFourTrianglesIsRefused() {
        List<double[]> two = new ArrayList<>(Meshes.box(10, 10, 10));
        two.addAll(Meshes.moved(Meshes.box(10, 10, 10), 10, 10, 0));
        assertRefused(
                Meshes.binary(two),
                MeshRefusedException.Reason.BRANCHING,
                "the edge from (10, 10, 0) to (10, 10, 10) has 4 triangles, must have 2");
    }

    @Test
    void noughtAndItsNegativeAreOnePlace() {
        List<double[]> box = Meshes.box(20, 30, 40);
        for (int i = 0; i < 9; i++) {
            if (box.get(3)[i] == 0) {
                box.get(3)[i] = -0.0;
            }
        }
        assertThat(read(Meshes.binary(box), Unit.MILLIMETRE).volume().inMillilitres())
                .isCloseTo(24, withinPercentage(1e-9));
    }

    @Test
    void aTriangleWithoutAreaDoesNoHarm() {
        List<double[]> box = new ArrayList<>(Meshes.box(20, 30, 40));
        box.add(new double[] {0, 0, 0, 0, 0, 0, 20, 0, 0});
        assertThat(read(Meshes.binary(box), Unit.MILLIMETRE).volume().inMillilitres())
                .isCloseTo(24, withinPercentage(1e-9));
    }

    @Test
    void whatIsNoMeshIsRefusedWithTheReason() {
        byte[] box = Meshes.binary(Meshes.box(20, 30, 40));
        byte[] text = Meshes.text(Meshes.box(20, 30, 40));
        assertRefused(new byte[0], MeshRefusedException.Reason.EMPTY, "empty");
        assertRefused(Meshes.binary(List.of()), MeshRefusedException.Reason.EMPTY, "no triangles");
        assertRefused(Meshes.text(List.of()), MeshRefusedException.Reason.EMPTY, "no triangles");
        assertRefused(Meshes.binary(Meshes.box(20, 30, 0)), MeshRefusedException.Reason.BRANCHING, "must have 2");
        assertRefused(
                Meshes.binary(
                        List.of(new double[] {0, 0, 0, 9, 0, 0, 0, 9, 0}, new double[] {9, 0, 0, 0, 0, 0, 0, 9, 0})),
                MeshRefusedException.Reason.EMPTY,
                "flat");
        assertRefused(Arrays.copyOf(box, 50), MeshRefusedException.Reason.TRUNCATED, "50 bytes of 84");
        assertRefused(Arrays.copyOf(box, box.length - 1), MeshRefusedException.Reason.TRUNCATED, "triangle 12 of 12");
        assertRefused(Arrays.copyOf(text, text.length - 40), MeshRefusedException.Reason.TRUNCATED, "ends in line");
        assertRefused(Arrays.copyOf(box, box.length + 1), MeshRefusedException.Reason.MALFORMED, "goes on after");
        assertRefused(
                "solid a\n facet normal 0 0 0x1p3 ".getBytes(StandardCharsets.US_ASCII),
                MeshRefusedException.Reason.MALFORMED,
                "line 2 of the file has “0x1p3”, must have a number");
        assertRefused(
                "solid a\nface ".getBytes(StandardCharsets.US_ASCII),
                MeshRefusedException.Reason.MALFORMED,
                "must have facet");
    }

    @ParameterizedTest
    @ValueSource(strings = {"nan", "-inf", "1e7", "1e39", "1.#IND"})
    void noCornerOutOfThisWorld(String number) {
        String text = new String(Meshes.text(Meshes.box(20, 30, 40)), StandardCharsets.US_ASCII);
        byte[] spoilt = text.replaceFirst("30\\.0", number).getBytes(StandardCharsets.US_ASCII);
        assertRefused(spoilt, MeshRefusedException.Reason.NOT_A_NUMBER, "a corner of triangle 1 lies at");
    }

    @Test
    void tooManyAreRefusedBeforeTheyAreRead() {
        byte[] claims = new byte[84];
        claims[80] = (byte) 0x81;
        claims[81] = (byte) 0x84;
        claims[82] = 0x1E;
        assertRefused(claims, MeshRefusedException.Reason.TOO_MANY, "2000001 triangles");
        claims[80] = (byte) 0x80;
        assertRefused(claims, MeshRefusedException.Reason.TRUNCATED, "triangle 1 of 2000000");
    }

    @ParameterizedTest
    @EnumSource(names = {"METRE", "FOOT"})
    void anUnlikelyUnitIsRefused(Unit unit) {
        assertThatThrownBy(() -> read(Meshes.binary(Meshes.box(20, 30, 40)), unit))
                .isInstanceOfSatisfying(MeshRefusedException.class, refused -> assertThat(refused.reason())
                        .isEqualTo(MeshRefusedException.Reason.UNLIKELY_UNIT))
                .hasMessageContaining("choose the unit in which it was drawn");
        assertThatThrownBy(() -> read(Meshes.binary(Meshes.box(0.2, 0.3, 0.4)), Unit.MILLIMETRE))
                .isInstanceOf(MeshRefusedException.class);
        assertThatThrownBy(() -> read(Meshes.binary(Meshes.box(2, 3, 4)), Unit.GRAM))
                .isInstanceOf(OutOfRangeException.class);
    }

    @Property(tries = 500)
    void noBytesGiveAnythingButARefusal(@ForAll @Size(max = 400) byte[] bytes) {
        onlyRefused(bytes);
    }

    @Property(tries = 500)
    void noSpoiltMeshGivesAnythingButARefusal(
            @ForAll @IntRange(max = 683) int at, @ForAll byte value, @ForAll boolean text) {
        List<double[]> box = Meshes.box(20, 30, 40);
        byte[] bytes = text ? Meshes.text(box) : Meshes.binary(box);
        bytes[at] = value;
        onlyRefused(bytes);
    }

    @Test
    void twoMillionTrianglesAreRead() throws IOException {
        // 500,000 sides make 2,000,000 triangles; on a large circle neighbours stay apart in single precision.
        int n = 499_999;
        MeshVolume volume = MeshVolume.read(
                new ByteArrayInputStream(Meshes.binary(Meshes.frustum(n, 2400, 2000, 1000))), Unit.MILLIMETRE);
        assertThat(volume.triangles()).isEqualTo(4 * n);
        double round = Math.PI * 1000 * (2400.0 * 2400 + 2400 * 2000 + 2000.0 * 2000) / 3 / 1000;
        assertThat(volume.volume().inMillilitres()).isCloseTo(round, withinPercentage(1e-4));
    }

    private static void onlyRefused(byte[] bytes) {
        try {
            assertThat(read(bytes, Unit.MILLIMETRE).volume().inMillilitres()).isPositive();
        } catch (MeshRefusedException refused) {
            assertThat(refused).hasMessageMatching("[\\x20-\\x7E“”]+");
        }
    }

    private static void assertRefused(byte[] bytes, MeshRefusedException.Reason reason, String words) {
        assertThatThrownBy(() -> read(bytes, Unit.MILLIMETRE))
                .isInstanceOfSatisfying(MeshRefusedException.class, refused -> assertThat(refused.reason())
                        .isEqualTo(reason))
                .hasMessageContaining(words);
    }

    private static MeshVolume read(byte[] bytes, Unit unit) {
        try (InputStream in = new ByteArrayInputStream(bytes)) {
            return MeshVolume.read(in, unit);
        } catch (IOException impossible) {
            throw new AssertionError(impossible);
        }
    }
}
