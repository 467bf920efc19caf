package hullalmanac.ui.takings;

import hullalmanac.present.table.TableMemory;
import hullalmanac.present.takings.TakingsPresenter;
import hullalmanac.present.takings.TakingsState;
import hullalmanac.ui.sheet.SheetPanel;
import hullalmanac.ui.widget.FoundList;
import hullalmanac.ui.widget.ItemCell;
import hullalmanac.ui.widget.ListBesidePage;
import java.awt.BorderLayout;
import javax.swing.JPanel;

/** What needs doing about money at the left, what is chosen at the right. */
public final class TakingsPanel extends JPanel {
  private static final long serialVersionUID = 1L;

  private final FoundList<TakingsState.Item> list;
  private final SheetPanel sheet;

  public TakingsPanel(TakingsPresenter presenter, TableMemory memory) {
    super(new BorderLayout());
    sheet = SheetPanel.inPlace(() -> {}, memory);
    list =
        new FoundList<>(
            new FoundList.Words("takings", "Find a number, name or boat", "Record a payment"),
            new ItemCell.Lines<>(
                TakingsState.Item::name, TakingsState.Item::status, TakingsState.Item::detail),
            new FoundList.Acts<>(
                presenter::find, i -> presenter.choose(i.subject()), presenter::receive));
    ListBesidePage sides = new ListBesidePage(list, sheet, "All takings");
    list.onChosen(() -> sides.choosing(false));
    add(sides);
    presenter.onChange(this::render);
  }

  private void render(TakingsState state) {
    list.show(state.list(), state.found(), i -> i.subject().equals(state.chosen()));
    state.sheet().ifPresent(sheet::open);
  }
}
