package dev.ledgerwing.web.outputs;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Board;
import dev.ledgerwing.core.build.FittedBoard;
import dev.ledgerwing.web.support.Browser.Page;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Which flight controller is aboard, and which line of the ledger it is. */
class FittedFormTest extends OutputsFormWalk {

    private static Board board(String code, String name) {
        return new Board(code, name, List.of(), null, null, null, null, null, null, null, null);
    }

    @Test
    void theBoardAboardAndItsPartAreChosenAndTakenBack() {
        assertThat(browser.open(outputs + "/fitted").text())
                .contains("There is no flight controller to choose from yet.");
        others(build -> build.withBoards(List.of(board("moor", "Moor board"), board("fen", "Fen board"))));
        Page after = send("/fitted", Map.of("board", "fen", "part", "L1"));
        assertThat(after.path()).isEqualTo(outputs);
        assertThat(build().outputs().fitted()).isEqualTo(new FittedBoard("fen", "L1"));
        assertThat(title()).isEqualTo("Flight controller aboard: Fen board");
        send("/fitted", Map.of("board", "", "part", ""));
        assertThat(build().outputs().fitted()).isEqualTo(FittedBoard.NONE);
    }

    @Test
    void aBoardOrPartThatIsNotThereIsRefusedAtItsField() {
        refusedEverywhere("/fitted", Map.of("board", "bog", "part", "L99"));
    }
}
