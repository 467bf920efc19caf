package hullalmanac.ui.widget;

import hullalmanac.core.record.Texts;
import java.awt.Point;
import java.awt.Rectangle;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import javax.swing.DefaultListModel;
import javax.swing.JList;
import javax.swing.JPopupMenu;
import javax.swing.ListSelectionModel;

/** A list at the left of a place: going to an item shows it; a menu opens and copies items. */
public final class ItemList<T> extends JList<T> {
  private static final long serialVersionUID = 1L;

  private static final int MANY = 200;

  private final DefaultListModel<T> items = new DefaultListModel<>();
  private final transient ItemCell.Lines<T> lines;
  private final transient Consumer<T> choose;
  private final transient ItemCell<T> cell;
  private boolean updating;

  /**
   * @param choose shows an item on the page beside the list
   */
  public ItemList(String name, ItemCell.Lines<T> lines, Consumer<T> choose) {
    this.lines = lines;
    this.choose = choose;
    setModel(items);
    setName(name);
    getAccessibleContext().setAccessibleName(Texts.capital(name));
    setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    cell = new ItemCell<>(lines);
    setCellRenderer(cell);
    addListSelectionListener(
        e -> {
          if (!updating && !e.getValueIsAdjusting() && getSelectedValue() != null) {
            choose.accept(getSelectedValue());
          }
        });
    Act.on(this, "ENTER", () -> at(Optional.empty()).ifPresent(this::open));
    Act.on(this, "ctrl C", () -> at(Optional.empty()).ifPresent(i -> copied(i).copy()));
    Act.named(this, "copy", () -> at(Optional.empty()).ifPresent(i -> copied(i).copy()));
    Act.on(this, "ctrl shift C", () -> everything().copy());
    ContextMenu.on(this, this::menu, this::cursor);
  }

  /** Shows items, one of them as chosen. */
  public void show(List<T> now, Predicate<T> isChosen) {
    updating = true;
    measure(now.size());
    items.clear();
    items.addAll(now);
    for (int i = 0; i < items.size(); i++) {
      if (isChosen.test(items.get(i))) {
        setSelectedIndex(i);
        ensureIndexIsVisible(i);
      }
    }
    updating = false;
  }

  /** A long list is not measured item by item. */
  private void measure(int count) {
    setFixedCellHeight(count > MANY ? cell.fullHeight() : -1);
  }

  @Override
  public void updateUI() {
    super.updateUI();
    if (cell != null) {
      cell.updateUI();
      measure(items.size());
    }
  }

  /** The item under the pointer, or the one chosen. */
  private Optional<Integer> at(Optional<Point> pointer) {
    int i =
        pointer
            .map(
                p -> {
                  int near = locationToIndex(p);
                  return near >= 0 && getCellBounds(near, near).contains(p) ? near : -1;
                })
            .orElseGet(this::getSelectedIndex);
    return i < 0 ? Optional.empty() : Optional.of(i);
  }

  /** Shows an item and lets the cursor go on to its page. */
  private void open(int i) {
    updating = true;
    setSelectedIndex(i);
    updating = false;
    choose.accept(items.get(i));
    if (isShowing()) {
      transferFocus();
    }
  }

  /** What one can do with the item under the pointer, or with the one chosen. */
  JPopupMenu menu(Optional<Point> pointer) {
    JPopupMenu menu = new JPopupMenu();
    menu.setName("menu of " + getName());
    at(pointer)
        .ifPresent(
            i -> {
              String name = lines.name().apply(items.get(i));
              menu.add(ContextMenu.item("Open " + name, "", () -> open(i)));
              menu.add(ContextMenu.item("Copy " + name, "ctrl C", () -> copied(i).copy()));
            });
    menu.add(ContextMenu.item("Copy all", "ctrl shift C", () -> everything().copy()))
        .setEnabled(!items.isEmpty());
    return menu;
  }

  private Point cursor() {
    int i = Math.max(0, getSelectedIndex());
    ensureIndexIsVisible(i);
    Rectangle cell = getCellBounds(i, i);
    return cell == null ? new Point() : new Point(cell.x, cell.y + cell.height);
  }

  private List<String> texts(int i) {
    T item = items.get(i);
    return List.of(
        lines.name().apply(item), lines.status().apply(item), lines.detail().apply(item));
  }

  CopiedRows copied(int i) {
    return new CopiedRows(List.of(), List.of(texts(i)));
  }

  CopiedRows everything() {
    return new CopiedRows(
        List.of(), IntStream.range(0, items.size()).mapToObj(this::texts).toList());
  }
}
