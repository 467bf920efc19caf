package hullalmanac.ui.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Said;
import hullalmanac.present.sheet.Sheet;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.present.table.TableChoice;
import hullalmanac.present.table.TableMemory;
import hullalmanac.service.Fleet;
import hullalmanac.ui.theme.Theme;
import hullalmanac.ui.widget.TidyTable;
import java.awt.Component;
import java.awt.Container;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;

/** A table that is only read, on a sheet. */
class SheetTableTest {
  private static final List<String> COLUMNS = List.of("Boat", "Before", "Now");

  /** A sheet with one table. */
  private record OneTable(String heading) implements Sheet {
    @Override
    public void onChange(Consumer<SheetState> view) {
      view.accept(
          new SheetState(
              "Effect",
              "",
              List.of(
                  new SheetState.Table(
                      heading, COLUMNS, List.of(List.of("Siskin", "1 May", "3 May")), "")),
              Optional.empty()));
    }

    @Override
    public void show(Fleet fleet) {
      throw new UnsupportedOperationException();
    }

    @Override
    public Said say(At at, String text) {
      return Said.NOTHING;
    }

    @Override
    public void enter(At at, String text) {
      throw new UnsupportedOperationException();
    }
  }

  private static TidyTable table(Container in) {
    for (Component c : in.getComponents()) {
      TidyTable found =
          c instanceof TidyTable t ? t : c instanceof Container deeper ? table(deeper) : null;
      if (found != null) {
        return found;
      }
    }
    return null;
  }

  /** A heading such as "3 of 40 boats fall due on another day" must not begin a choice anew. */
  @Test
  void keepsItsColumnsWhenItsHeadingSaysAnotherNumber() throws Exception {
    TableMemory memory = new TableMemory();
    memory.keep("Boat, Before, Now", TableChoice.usual(COLUMNS).show("Before", false), COLUMNS);
    SwingUtilities.invokeAndWait(
        () -> {
          Theme.start(false, 1f);
          for (String heading : List.of("3 of 40 boats", "4 of 40 boats", "")) {
            SheetPanel panel = new SheetPanel(() -> {}, memory);
            panel.open(new OneTable(heading));
            TidyTable table = table(panel);
            assertThat(table.getColumnCount()).as(heading).isEqualTo(2);
            assertThat(table.getAccessibleContext().getAccessibleName())
                .isEqualTo(heading.isEmpty() ? "Boat, Before, Now" : heading);
          }
        });
    assertThat(memory.choices().byTable()).hasSize(1);
  }
}
