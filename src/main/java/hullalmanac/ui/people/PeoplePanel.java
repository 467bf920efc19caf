package hullalmanac.ui.people;

import hullalmanac.present.Invitation;
import hullalmanac.present.people.PeoplePresenter;
import hullalmanac.present.people.PeopleState;
import hullalmanac.present.table.TableMemory;
import hullalmanac.ui.sheet.SheetPanel;
import hullalmanac.ui.widget.EmptyPage;
import hullalmanac.ui.widget.FoundList;
import hullalmanac.ui.widget.ItemCell;
import hullalmanac.ui.widget.ListBesidePage;
import java.awt.BorderLayout;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** The people at the left, what is known of the one chosen at the right. */
public final class PeoplePanel extends JPanel {
  private static final long serialVersionUID = 1L;

  private final FoundList<PeopleState.Item> list;
  private final transient PeoplePresenter presenter;
  private final SheetPanel sheet;
  private final JPanel page = new JPanel(new BorderLayout());
  private transient Optional<Invitation> invitation = Optional.empty();

  public PeoplePanel(PeoplePresenter presenter, TableMemory memory) {
    super(new BorderLayout());
    this.presenter = presenter;
    sheet = new SheetPanel(() -> {}, memory);
    page.add(sheet);
    list =
        new FoundList<>(
            new FoundList.Words("people", "Find a person or firm", "New person"),
            new ItemCell.Lines<>(
                PeopleState.Item::name, PeopleState.Item::boats, PeopleState.Item::reach),
            new FoundList.Acts<>(
                presenter::find, i -> presenter.choose(i.party()), presenter::add));
    list.also("Contact cards …", presenter::openCards);
    list.also("Who may be the same …", presenter::openAlike);
    ListBesidePage sides = new ListBesidePage(list, page, "All people");
    list.onChosen(() -> sides.choosing(false));
    add(sides);
    presenter.onChange(this::render);
  }

  private void render(PeopleState state) {
    list.show(
        state.list(), state.found(), i -> state.chosen().filter(i.party()::equals).isPresent());
    state.sheet().ifPresent(sheet::open);
    if (!state.invitation().equals(invitation)) {
      invitation = state.invitation();
      page.removeAll();
      page.add(
          invitation
              .<JComponent>map(i -> EmptyPage.of(i, presenter::add, EmptyPage.PAGE))
              .orElse(sheet));
      page.revalidate();
      page.repaint();
    }
  }
}
