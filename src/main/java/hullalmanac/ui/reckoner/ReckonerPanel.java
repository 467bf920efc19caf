package hullalmanac.ui.reckoner;

import hullalmanac.present.reckoner.ReckonerPresenter;
import hullalmanac.present.reckoner.ReckonerState;
import hullalmanac.present.table.TableMemory;
import hullalmanac.ui.sheet.SheetPanel;
import hullalmanac.ui.theme.Theme;
import hullalmanac.ui.widget.ItemCell;
import hullalmanac.ui.widget.ListBesidePage;
import java.awt.BorderLayout;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;

/**
 * The small sums at the left, the one chosen at the right. The cursor begins in the list, where
 * typing chooses; Tab goes to the sum, Escape back.
 */
public final class ReckonerPanel extends JPanel {
  private static final long serialVersionUID = 1L;

  private final DefaultListModel<ReckonerState.Item> items = new DefaultListModel<>();
  private final JList<ReckonerState.Item> list = new JList<>(items);
  private final SheetPanel sheet;
  private final ListBesidePage sides;
  private boolean updating;

  public ReckonerPanel(ReckonerPresenter presenter, TableMemory memory) {
    super(new BorderLayout());
    sheet = SheetPanel.inPlace(this::start, memory);
    list.setName("sums");
    list.getAccessibleContext().setAccessibleName("Sums");
    list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    list.setCellRenderer(
        new ItemCell<>(
            new ItemCell.Lines<>(ReckonerState.Item::name, item -> "", ReckonerState.Item::does)));
    JScrollPane scroll =
        new JScrollPane(
            list, JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
    scroll.setBorder(null);
    JPanel left =
        new JPanel(new MigLayout("insets 16 12 8 12, fill", "[grow, fill]", "[grow, fill]"));
    left.add(scroll, "wmin 0");
    left.setBorder(BorderFactory.createMatteBorder(0, 0, 0, 1, Theme.colour("cardLine")));
    sides = new ListBesidePage(left, sheet, "All sums");
    list.addListSelectionListener(
        e -> {
          if (!updating && !e.getValueIsAdjusting() && list.getSelectedIndex() >= 0) {
            sides.choosing(false);
            presenter.choose(list.getSelectedIndex());
          }
        });
    add(sides);
    presenter.onChange(this::render);
  }

  /** Puts the cursor where one chooses by typing; where the list is folded away, into the sum. */
  public void start() {
    if (list.isShowing()) {
      list.requestFocusInWindow();
    } else {
      sheet.start();
    }
  }

  private void render(ReckonerState state) {
    updating = true;
    if (!List.of(items.toArray()).equals(List.copyOf(state.list()))) {
      items.clear();
      state.list().forEach(items::addElement);
    }
    list.setSelectedIndex(state.chosen());
    list.ensureIndexIsVisible(state.chosen());
    updating = false;
    sheet.open(state.sheet());
  }
}
