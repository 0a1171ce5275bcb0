package cyclepacket.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.finding.Finding;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class TreeReaderTest {
    private final List<Finding> found = new ArrayList<>();

    @Test
    void knowsWhereEveryValueStands() {
        Optional<Tree> tree =
                read("# note\nplan: SM-1\npatient: {name: 'Zoë', zone: x}\ndoses:\n  pen:\n    - {from: S1}\n");
        assertEquals(new Spot(2, 7), Walk.from(tree, "/plan").spot());
        assertEquals(new Spot(3, 17), Walk.from(tree, "/patient/name").spot());
        assertEquals(new Spot(3, 24), Walk.from(tree, "/patient/zone").keySpot());
        assertEquals(new Spot(3, 30), Walk.from(tree, "/patient/zone").spot());
        assertEquals(new Spot(6, 14), Walk.from(tree, "/doses/pen/0/from").spot());
    }

    @Test
    void pointsAtTheKeyOfABlockAndOfAnEmptyValue() {
        Optional<Tree> tree = read("doses:\n  pen:\n    - {from: S1}\norder:\n  by:\n");
        assertEquals(new Spot(1, 1), Walk.from(tree, "/doses").spot());
        assertEquals(new Spot(2, 3), Walk.from(tree, "/doses/pen").spot());
        assertEquals(new Spot(5, 3), Walk.from(tree, "/order/by").spot());
        assertEquals(new Spot(3, 7), Walk.from(tree, "/doses/pen/0").spot());
    }

    @Test
    void endsAtTheNearestParentWhenTheWayGoesOn() {
        Optional<Tree> tree = read("order: {by: A}\nlist: [1, 2]\n");
        assertEquals(new Spot(1, 8), Walk.from(tree, "/order/date").spot());
        assertEquals(new Spot(1, 13), Walk.from(tree, "/order/by/first/name").spot());
        assertEquals(new Spot(2, 7), Walk.from(tree, "/list/2").spot());
        assertEquals(new Spot(2, 7), Walk.from(tree, "/list/-1").spot());
        assertEquals(new Spot(1, 1), Walk.from(tree, "/none").spot());
        assertEquals(Spot.START, Walk.from(Optional.empty(), "/order").spot());
    }

    @Test
    void readsEscapedPointers() {
        Optional<Tree> tree = read("a/b: {c~d: 1}\n");
        assertEquals(
                new Spot(1, 12),
                Walk.from(tree, Pointers.child(Pointers.child("", "a/b"), "c~d"))
                        .spot());
        assertEquals(List.of("a/b", "c~d"), Pointers.names("/a~1b/c~0d"));
    }

    @Test
    void countsColumnsInCharactersNotInBytesOrHalves() {
        Optional<Tree> tree = read("a: {😀é: 1, b: 2}\n");
        assertEquals(new Spot(1, 15), Walk.from(tree, "/a/b").spot());
    }

    @Test
    void countsEveryKindOfLineEnd() {
        assertEquals(
                new Spot(4, 4),
                Walk.from(read("a: 1\r\nb: 2\rc: 3\nd: 4"), "/d").spot());
        assertEquals(
                "d: 4",
                Source.of("x", bytes("a: 1\r\nb: 2\rc: 3\nd: 4")).lines().get(3));
    }

    @Test
    void keepsTheFirstOfTwoKeysAndReportsTheSecond() {
        Optional<Tree> tree = read("a: 1\nb: 2\n\"a\": 3\n");
        assertEquals("1", WrongType.written(Walk.from(tree, "/a").reached().orElseThrow()));
        assertEquals(
                List.of("YAML-DUPLICATE-KEY"), found.stream().map(Finding::code).toList());
        assertEquals(3, found.get(0).place().line());
    }

    @Test
    void takesElevenLevelsAndRefusesThirteen() {
        assertTrue(read("a: " + "[".repeat(TreeReader.DEEPEST - 1) + "]".repeat(TreeReader.DEEPEST - 1))
                .isPresent());
        assertTrue(read("a: " + "[".repeat(TreeReader.DEEPEST) + "]".repeat(TreeReader.DEEPEST))
                .isEmpty());
        assertEquals(List.of("YAML-TOO-DEEP"), found.stream().map(Finding::code).toList());
    }

    @Test
    void survivesAHundredThousandBrackets() {
        assertTrue(read("a: " + "[".repeat(100_000)).isEmpty());
        assertEquals(1, found.size());
    }

    private Optional<Tree> read(String text) {
        return TreeReader.read(Source.of("x.yaml", bytes(text)), found);
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    @Test
    void givesUpOnAFileInWhichAlmostEverythingIsWrong() {
        assertTrue(read("a: 1\n".repeat(TreeReader.MOST_FINDINGS + 1)).isPresent());
        assertEquals(TreeReader.MOST_FINDINGS, found.size());
        found.clear();
        assertTrue(read("a: 1\n".repeat(TreeReader.MOST_FINDINGS + 2)).isEmpty());
        Finding last = found.get(TreeReader.MOST_FINDINGS);
        assertEquals("YAML-TOO-MANY", last.code());
        assertEquals(TreeReader.MOST_FINDINGS + 2, last.place().line());
    }
}
