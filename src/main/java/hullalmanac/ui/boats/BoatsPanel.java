package hullalmanac.ui.boats;

import hullalmanac.present.Invitation;
import hullalmanac.present.boats.BoatPage;
import hullalmanac.present.boats.BoatsPresenter;
import hullalmanac.present.boats.BoatsState;
import hullalmanac.present.table.TableMemory;
import hullalmanac.ui.widget.EmptyPage;
import hullalmanac.ui.widget.FoundList;
import hullalmanac.ui.widget.ItemCell;
import hullalmanac.ui.widget.ListBesidePage;
import java.awt.BorderLayout;
import java.util.Optional;
import javax.swing.JPanel;
import javax.swing.JScrollPane;

/** The boats at the left, the page of the one chosen at the right. */
public final class BoatsPanel extends JPanel {
  private static final long serialVersionUID = 1L;

  private final transient BoatsPresenter presenter;
  private final transient TableMemory memory;
  private final FoundList<BoatsState.Item> list;
  private final JScrollPane page =
      new JScrollPane(
          JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
  private transient Optional<BoatPage> shown = Optional.empty();
  private transient Optional<Invitation> invitation = Optional.empty();
  private final ListBesidePage sides;
  private boolean washing;

  public BoatsPanel(BoatsPresenter presenter, TableMemory memory) {
    super(new BorderLayout());
    this.memory = memory;
    this.presenter = presenter;
    page.setBorder(null);
    list =
        new FoundList<>(
            new FoundList.Words("boats", "Find a boat or owner", "New boat"),
            new ItemCell.Lines<>(
                BoatsState.Item::name, BoatsState.Item::status, BoatsState.Item::detail),
            new FoundList.Acts<>(
                presenter::find, i -> presenter.choose(i.boat()), presenter::newBoat));
    list.also("Bring a list in …", presenter::bringListIn);
    sides = new ListBesidePage(list, page, "All boats");
    list.onChosen(() -> sides.choosing(false));
    add(sides);
    presenter.onChange(this::render);
  }

  /** Puts the cursor where one types what to find. */
  public void startFinding() {
    sides.choosing(true);
    list.startFinding();
  }

  private void render(BoatsState state) {
    list.show(
        state.list(), state.found(), i -> state.chosen().filter(i.boat()::equals).isPresent());
    if (!state.invitation().equals(invitation)) {
      invitation = state.invitation();
      shown = Optional.empty();
      page.setViewportView(
          invitation
              .map(i -> EmptyPage.of(i, presenter::newBoat, presenter::bringListIn, EmptyPage.PAGE))
              .orElse(null));
    }
    if (!state.page().equals(shown) || washing != state.washing()) {
      boolean another = !state.page().map(BoatPage::name).equals(shown.map(BoatPage::name));
      java.awt.Point where = page.getViewport().getViewPosition();
      shown = state.page();
      washing = state.washing();
      page.setViewportView(
          state
              .page()
              .map(p -> new BoatPagePanel(presenter, p, washing, memory).column())
              .orElse(null));

      page.getViewport().setViewPosition(another ? new java.awt.Point(0, 0) : where);
    }
  }
}
