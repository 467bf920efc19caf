package hullalmanac.ui.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Input;
import hullalmanac.present.sheet.Said;
import hullalmanac.present.sheet.Sheet;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.present.table.TableChoice;
import hullalmanac.present.table.TableMemory;
import hullalmanac.present.table.TableState;
import hullalmanac.service.Fleet;
import hullalmanac.ui.theme.Theme;
import hullalmanac.ui.widget.TidyTable;
import java.awt.Component;
import java.awt.Container;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.SwingConstants;
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

  private static int side(JTable table, int column) {
    Component cell = table.prepareRenderer(table.getCellRenderer(0, column), 0, column);
    Component head =
        table
            .getColumnModel()
            .getColumn(column)
            .getHeaderRenderer()
            .getTableCellRendererComponent(
                table, table.getColumnName(column), false, false, -1, column);
    assertThat(((JLabel) head).getHorizontalAlignment())
        .as("what stands over it")
        .isEqualTo(((JLabel) cell).getHorizontalAlignment());
    return ((JLabel) cell).getHorizontalAlignment();
  }

  private static void atTheRightAreTheSecondAndThird(JTable table) {
    assertThat(IntStream.range(0, 5).mapToObj(c -> side(table, c)))
        .containsExactly(
            SwingConstants.LEADING,
            SwingConstants.TRAILING,
            SwingConstants.TRAILING,
            SwingConstants.LEADING,
            SwingConstants.LEADING);
  }

  @Test
  void onlyNumbersAndMoneyStandAtTheRightAndTheirHeadingsWithThem() throws Exception {
    List<String> labels = List.of("Boat", "Hours", "Open", "When", "Note");
    List<List<String>> rows =
        List.of(
            List.of("Siskin", "7", "1,250.00 USD", "1 May", ""),
            List.of("Wren", "12.5", "", "2026-05-01", ""));
    SwingUtilities.invokeAndWait(
        () -> {
          Theme.start(false, 1f);
          TidyTable table = new TidyTable(TableState.of("money", labels, rows), new TableMemory());
          atTheRightAreTheSecondAndThird(table);
          table.moveColumn(1, 3);
          assertThat(side(table, 3))
              .as("it takes its side along")
              .isEqualTo(SwingConstants.TRAILING);
          assertThat(side(table, 2)).isEqualTo(SwingConstants.LEADING);
          EditGrid grid =
              new EditGrid(grid(labels, rows), new OneTable(""), (row, field, text) -> {});
          atTheRightAreTheSecondAndThird(grid);
          grid.show(grid(labels, List.of(rows.get(0), List.of("", "some", "", "", ""))));
          assertThat(side(grid, 1)).as("no more only numbers").isEqualTo(SwingConstants.LEADING);
        });
  }

  private static SheetState.Grid grid(List<String> labels, List<List<String>> rows) {
    return new SheetState.Grid(
        "money",
        "Money",
        "",
        labels.stream().map(l -> new SheetState.Column(l, l, new Input.Line(""))).toList(),
        rows.stream().map(r -> new SheetState.GridRow(r.get(0), "", r)).toList(),
        "");
  }
}
