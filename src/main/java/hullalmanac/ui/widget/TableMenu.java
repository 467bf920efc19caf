package hullalmanac.ui.widget;

import hullalmanac.present.table.TableChoice;
import hullalmanac.present.table.TableState;
import java.util.List;
import java.util.Optional;
import javax.swing.JCheckBoxMenuItem;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;

/** What one can do with a table that is only read. */
final class TableMenu {
  private static final int MOST_AT_ONCE = 9;

  private final TidyTable table;
  private final JPopupMenu menu = new JPopupMenu();

  private TableMenu(TidyTable table) {
    this.table = table;
    menu.setName("menu of " + table.state().name());
  }

  /**
   * With its rows and columns.
   *
   * @param row the one to open; −1 for none
   * @param column the id of the one to sort by or to move
   */
  static JPopupMenu of(TidyTable table, int row, Optional<String> column) {
    TableMenu made = new TableMenu(table);
    made.rows(row);
    made.menu.addSeparator();
    column.ifPresent(made::column);
    made.columns();
    return made.menu;
  }

  /** With its columns alone. */
  static JPopupMenu ofColumn(TidyTable table, Optional<String> column) {
    TableMenu made = new TableMenu(table);
    column.ifPresent(made::column);
    made.columns();
    return made.menu;
  }

  private JMenuItem add(String words, String key, Runnable act) {
    return menu.add(ContextMenu.item(words, key, act));
  }

  private void rows(int row) {
    int chosen = table.getSelectedRowCount();
    if (table.opens()) {
      add("Open", "", () -> table.openRow(row)).setEnabled(row >= 0);
    }
    add(chosen > 1 ? "Copy " + chosen + " rows" : "Copy", "ctrl C", () -> table.selected().copy())
        .setEnabled(chosen > 0);
    add("Copy all", "ctrl shift C", () -> table.everything().copy());
  }

  private void column(String id) {
    TableChoice choice = table.choice();
    String label = label(id);
    add(sortWords(id, label), "", () -> table.change(choice.sortedBy(nextSort(id))));
    add("Move " + label + " left", "ctrl shift LEFT", () -> table.change(choice.move(id, false)))
        .setEnabled(choice.shown().indexOf(id) > 0);
    add("Move " + label + " right", "ctrl shift RIGHT", () -> table.change(choice.move(id, true)))
        .setEnabled(choice.shown().indexOf(id) < choice.shown().size() - 1);
    add("Hide " + label, "", () -> table.change(choice.show(id, false)))
        .setEnabled(choice.shown().size() > 1);
  }

  private String label(String id) {
    return table.state().columns().stream()
        .filter(c -> c.id().equals(id))
        .map(TableState.Column::label)
        .findFirst()
        .orElseThrow();
  }

  private Optional<TableChoice.Sort> sortBy(String id) {
    return table.choice().sort().filter(s -> s.column().equals(id));
  }

  private String sortWords(String id, String label) {
    return sortBy(id)
        .map(s -> s.down() ? "Sort by " + label + " no more" : "Sort by " + label + " downwards")
        .orElse("Sort by " + label);
  }

  private Optional<TableChoice.Sort> nextSort(String id) {
    Optional<TableChoice.Sort> now = sortBy(id);
    return now.isPresent() && now.get().down()
        ? Optional.empty()
        : Optional.of(new TableChoice.Sort(id, now.isPresent()));
  }

  private void columns() {
    TableChoice choice = table.choice();
    menu.add(toShow("Columns to show", choice.columns()));
    TableChoice usual = TableChoice.usual(table.state().ids());
    add("Show all columns again", "", () -> table.change(usual)).setEnabled(!choice.equals(usual));
  }

  /** So many at a time as fit on a small screen, the rest in a menu of their own. */
  private JMenu toShow(String words, List<TableChoice.Column> columns) {
    JMenu shown = new JMenu(words);
    shown.setName(words);
    columns.stream().limit(MOST_AT_ONCE).forEach(c -> shown.add(shown(c)));
    if (columns.size() > MOST_AT_ONCE) {
      shown.add(toShow("More columns", columns.subList(MOST_AT_ONCE, columns.size())));
    }
    return shown;
  }

  private JCheckBoxMenuItem shown(TableChoice.Column c) {
    TableChoice choice = table.choice();
    JCheckBoxMenuItem item = new JCheckBoxMenuItem(label(c.id()), c.shown());
    item.setName("show " + c.id());
    item.setEnabled(!choice.shown().equals(List.of(c.id())));
    item.addActionListener(e -> table.change(choice.show(c.id(), !c.shown())));
    return item;
  }
}
