package dev.ledgerwing.core.radio.plan;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.RadioFunction.DecodedBy;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Published examples of merging and of colouring, each as demands: as many channels, or positions, as published. */
class PublishedCoversTest {

    /** Compatible pairs; the published cover without the closure that state tables ask for besides. */
    static Stream<Arguments> merges() {
        return Stream.of(
                // University problem set “Flow Table Reduction”: {1,2}{3,5}{4,7}{6,8,9,10}
                Arguments.of("1 2 3 4 5 6 7 8 9 10", "1-2 2-4 2-7 3-5 4-7 6-8 6-9 6-10 8-9 8-10 9-10", 4),
                // Ndjountche, Digital Electronics 3 (Wiley): (ABC)(DE)
                Arguments.of("A B C D E", "A-B A-C A-D A-E B-C C-D D-E", 2),
                // Ndjountche, Digital Electronics 3 (Wiley), second example: (ABCD)(EF)
                Arguments.of("A B C D E F", "A-B A-C A-D B-C B-D B-E C-D C-F E-F", 2),
                // Myers, Asynchronous Circuit Design, lecture 5: abde, cfg, deh
                Arguments.of("a b c d e f g h", "a-b a-d a-e b-d b-e d-e b-c c-d c-f c-g f-g d-h e-h a-g", 3),
                // Mano, Digital Design, gated latch (from memory): (a,c,d)(b,e,f)
                Arguments.of("a b c d e f", "a-b a-c a-d b-e b-f c-d e-f", 2));
    }

    @ParameterizedTest
    @MethodSource("merges")
    void mergesAsFewAsPublished(String vertices, String compatible, int published) {
        ChannelProblem problem =
                Graph.ofStrangers(List.of(vertices.split(" ")), compatible).asFunctions();
        assertThat(ChannelPlanner.channelsNeeded(problem)).hasValue(published);
    }

    @ParameterizedTest
    @MethodSource("merges")
    void mergesThePhasesToAsFewPositions(String vertices, String compatible, int published) {
        ChannelProblem problem =
                Graph.ofStrangers(List.of(vertices.split(" ")), compatible).asPhases();
        assertThat(GroupNeed.leastPositions(problem, problem.switched())).hasValue(published);
    }

    /** DIMACS colouring graphs; chromatic numbers as in the npbench table. */
    static Stream<Arguments> colourings() {
        return Stream.of(
                Arguments.of("myciel3", Graph.mycielski(2), 11, 20, 4),
                Arguments.of("myciel4", Graph.mycielski(3), 23, 71, 5),
                Arguments.of("queen5_5", Graph.queens(5), 25, 160, 5),
                Arguments.of("queen6_6", Graph.queens(6), 36, 290, 7));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("colourings")
    void needsAsManyChannelsAsTheGraphNeedsColours(String name, Graph graph, int vertices, int edges, int colours) {
        assertThat(graph.vertices()).isEqualTo(vertices);
        assertThat(graph.edges()).hasSize(edges);
        assertThat(ChannelPlanner.channelsNeeded(graph.asFunctions())).hasValue(colours);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("colourings")
    void needsAsManyPositionsAsTheGraphNeedsColours(String name, Graph graph, int vertices, int edges, int colours) {
        ChannelProblem problem = graph.asPhases();
        assertThat(problem.phases()).hasSize(vertices);
        assertThat(problem.switched()).hasSize(edges);
        assertThat(GroupNeed.leastPositions(problem, problem.switched())).hasValue(colours);
    }

    /** Mano, Digital Design, gated latch (from memory): next state and output by column, one row of the table a phase. */
    @Test
    void mergesTheRowsOfTheGatedLatchToTwo() {
        ChannelProblem latch =
                Radios.vectors(DecodedBy.TABLE, "cab--0--", "-abe--1-", "ca-d0---", "c-bd---0", "f-be---1", "fa-e1---");
        assertThat(GroupNeed.leastPositions(latch, latch.switched())).hasValue(2);
    }

    /**
     * Bushnell and Agrawal, test-cube compaction (from memory): the first two can be one, but who takes that pair first needs
     * three.
     */
    @Test
    void isNotCaughtWhereThePairAtHandMakesItWorse() {
        ChannelProblem cubes = Radios.vectors(DecodedBy.TABLE, "01-", "0-1", "0-0", "-01");
        assertThat(GroupNeed.leastPositions(cubes, cubes.switched())).hasValue(2);
        ChannelProblem greedy = Radios.vectors(DecodedBy.TABLE, "011", "0-0", "-01");
        assertThat(GroupNeed.leastPositions(greedy, greedy.switched())).hasValue(3);
    }
}
