package hullalmanac.ui.boats;

import hullalmanac.present.boats.BoatPage;
import hullalmanac.present.boats.BoatsPresenter;
import hullalmanac.present.boats.BoatsState;
import hullalmanac.present.table.TableMemory;
import hullalmanac.ui.widget.FoundList;
import hullalmanac.ui.widget.ItemCell;
import hullalmanac.ui.widget.Labels;
import hullalmanac.ui.widget.ListBesidePage;
import hullalmanac.ui.widget.ScrollColumn;
import java.awt.BorderLayout;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;

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
  private transient Optional<String> none = Optional.empty();
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

  /** What stands in the place of a page while there is no boat. */
  private JComponent none(String words) {
    ScrollColumn column =
        new ScrollColumn(
            new MigLayout("insets 20 24 24 24, fillx, wrap 1, gap 0 8", "[grow, fill]", ""));
    column.add(Labels.title("No boat yet"));
    column.add(Labels.wrapped(words, true), "wmin 100, gapbottom 8");
    column.add(button("first boat", "New boat", presenter::newBoat), "hmin 32, growx 0");
    column.add(
        button("first list", "Bring a list in …", presenter::bringListIn), "hmin 32, growx 0");
    return column;
  }

  private static JButton button(String name, String words, Runnable act) {
    JButton button = new JButton(words);
    button.setName(name);
    button.addActionListener(e -> act.run());
    return button;
  }

  private void render(BoatsState state) {
    list.show(
        state.list(), state.found(), i -> state.chosen().filter(i.boat()::equals).isPresent());
    if (!state.page().equals(shown) || !state.none().equals(none) || washing != state.washing()) {
      boolean another = !state.page().map(BoatPage::name).equals(shown.map(BoatPage::name));
      java.awt.Point where = page.getViewport().getViewPosition();
      shown = state.page();
      none = state.none();
      washing = state.washing();
      page.setViewportView(
          state
              .page()
              .<JComponent>map(p -> new BoatPagePanel(presenter, p, washing, memory).column())
              .or(() -> state.none().map(this::none))
              .orElse(null));
      page.getViewport().setViewPosition(another ? new java.awt.Point(0, 0) : where);
    }
  }
}
