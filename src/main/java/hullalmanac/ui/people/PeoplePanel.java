package hullalmanac.ui.people;

import hullalmanac.present.people.PeoplePresenter;
import hullalmanac.present.people.PeopleState;
import hullalmanac.present.table.TableMemory;
import hullalmanac.ui.sheet.SheetPanel;
import hullalmanac.ui.widget.FoundList;
import hullalmanac.ui.widget.ItemCell;
import hullalmanac.ui.widget.ListBesidePage;
import java.awt.BorderLayout;
import javax.swing.JPanel;

/** The people at the left, what is known of the one chosen at the right. */
public final class PeoplePanel extends JPanel {
  private static final long serialVersionUID = 1L;

  private final FoundList<PeopleState.Item> list;
  private final SheetPanel sheet;

  public PeoplePanel(PeoplePresenter presenter, TableMemory memory) {
    super(new BorderLayout());
    sheet = new SheetPanel(() -> {}, memory);
    list =
        new FoundList<>(
            new FoundList.Words("people", "Find a person or firm", "New person"),
            new ItemCell.Lines<>(
                PeopleState.Item::name, PeopleState.Item::boats, PeopleState.Item::reach),
            new FoundList.Acts<>(
                presenter::find, i -> presenter.choose(i.party()), presenter::add));
    ListBesidePage sides = new ListBesidePage(list, sheet, "All people");
    list.onChosen(() -> sides.choosing(false));
    add(sides);
    presenter.onChange(this::render);
  }

  private void render(PeopleState state) {
    list.show(
        state.list(), state.found(), i -> state.chosen().filter(i.party()::equals).isPresent());
    state.sheet().ifPresent(sheet::open);
  }
}
