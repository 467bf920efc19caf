package hullalmanac.ui.shelf;

import hullalmanac.present.Invitation;
import hullalmanac.present.shelf.ShelfPresenter;
import hullalmanac.present.shelf.ShelfState;
import hullalmanac.present.table.TableMemory;
import hullalmanac.ui.theme.Theme;
import hullalmanac.ui.widget.EmptyPage;
import hullalmanac.ui.widget.ItemCell;
import hullalmanac.ui.widget.ItemList;
import hullalmanac.ui.widget.Labels;
import hullalmanac.ui.widget.ListBesidePage;
import java.awt.BorderLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;

/** The products at the left, the page of the one chosen at the right, another beside it. */
public final class ShelfPanel extends JPanel {
  private static final long serialVersionUID = 1L;

  private final transient ShelfPresenter presenter;
  private final transient TableMemory memory;
  private final ItemList<ShelfState.Item> list;
  private final JComboBox<ShelfState.Item> beside = new JComboBox<>();
  private final JScrollPane page =
      new JScrollPane(
          JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
  private final ListBesidePage sides;
  private transient List<ShelfState.Page> shown = List.of();
  private transient Optional<Invitation> invitation = Optional.empty();
  private final transient List<JComponent> onProduct = new ArrayList<>();
  private boolean updating;

  public ShelfPanel(ShelfPresenter presenter, TableMemory memory) {
    super(new BorderLayout());
    this.memory = memory;
    this.presenter = presenter;
    page.setBorder(null);
    beside.setName("beside");
    beside.getAccessibleContext().setAccessibleName("Product to lay beside it");
    beside.addActionListener(
        e -> {
          if (!updating && beside.getSelectedItem() instanceof ShelfState.Item item) {
            presenter.layBeside(item.product());
          }
        });
    list =
        new ItemList<>(
            "products",
            new ItemCell.Lines<>(
                ShelfState.Item::name, ShelfState.Item::status, ShelfState.Item::detail),
            this::choose);
    sides = new ListBesidePage(left(), right(), "All products");
    add(sides);
    presenter.onChange(this::render);
  }

  private void choose(ShelfState.Item item) {
    sides.choosing(false);
    item.product().ifPresent(presenter::choose);
  }

  private JPanel left() {
    JScrollPane scroll =
        new JScrollPane(
            list, JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
    scroll.setBorder(null);
    JPanel left =
        new JPanel(new MigLayout("insets 16 12 8 12, fill", "[grow, fill]", "[grow, fill][][]"));
    left.add(scroll, "wmin 0, wrap");
    left.add(on(button("Supplies", presenter::supplies)), "hmin 32, wmin 0, wrap");
    left.add(on(button("On paper", presenter::onPaper)), "hmin 32, wmin 0");
    left.setBorder(BorderFactory.createMatteBorder(0, 0, 0, 1, Theme.colour("cardLine")));
    return left;
  }

  private JPanel right() {
    JPanel right = new JPanel(new BorderLayout());
    JPanel head =
        new JPanel(
            new MigLayout(
                "insets 16 24 2 24, fillx, hidemode 3, novisualpadding", "[grow][]8[]", ""));
    head.add(on(button("Change", presenter::change)), "split 3, hmin 32");
    head.add(on(button("New product", presenter::add)), "hmin 32");
    head.add(on(button("Said and seen", presenter::audit)), "hmin 32");
    head.add(on(Labels.quiet("Beside it")));
    head.add(on(beside), "hmin 32, wmax 240");
    right.add(head, BorderLayout.NORTH);
    right.add(page);
    return right;
  }

  /** A control that does something with a product, and is not there while there is none. */
  private <T extends JComponent> T on(T control) {
    onProduct.add(control);
    return control;
  }

  private static JButton button(String words, Runnable act) {
    JButton button = new JButton(words);
    button.setName(words);
    button.addActionListener(e -> act.run());
    return button;
  }

  private void render(ShelfState state) {
    updating = true;
    list.show(state.list(), item -> item.product().equals(state.chosen()));
    beside.setModel(new DefaultComboBoxModel<>(state.choices().toArray(ShelfState.Item[]::new)));
    state.choices().stream()
        .filter(c -> c.product().equals(state.beside()))
        .findFirst()
        .ifPresent(beside::setSelectedItem);
    updating = false;
    if (!state.pages().equals(shown)) {
      shown = state.pages();
      page.setViewportView(ProductPages.of(shown, memory));
    }
    if (!state.invitation().equals(invitation)) {
      invitation = state.invitation();
      page.setViewportView(
          invitation
              .<JComponent>map(i -> EmptyPage.of(i, presenter::add, EmptyPage.PAGE))
              .orElseGet(() -> ProductPages.of(shown, memory)));
    }
    onProduct.forEach(c -> c.setVisible(invitation.isEmpty()));
  }
}
