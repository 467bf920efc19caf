package hullalmanac.ui.start;

import hullalmanac.present.start.StartPresenter;
import hullalmanac.present.start.StartState;
import hullalmanac.ui.theme.Theme;
import hullalmanac.ui.widget.Labels;
import hullalmanac.ui.widget.ScrollColumn;
import java.awt.BorderLayout;
import java.awt.Font;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** The ways to begin, below each other. */
public final class StartPanel extends JPanel {
  private static final long serialVersionUID = 1L;

  private final transient StartPresenter presenter;
  private final transient Supplier<Optional<String>> folder;

  /**
   * @param folder asks the person for a folder
   */
  public StartPanel(StartPresenter presenter, Supplier<Optional<String>> folder) {
    super(new BorderLayout());
    this.presenter = presenter;
    this.folder = folder;
    presenter.onChange(this::render);
  }

  private void render(StartState state) {
    removeAll();
    ScrollColumn column =
        new ScrollColumn(
            new MigLayout("insets 40 48 32 48, fillx, wrap 1, gap 0 8", "[grow, fill]", ""));
    column.add(Labels.title(state.title()));
    column.add(Labels.wrapped(state.words(), true), "wmin 100, gapbottom 12");
    state
        .trouble()
        .ifPresent(
            why -> {
              JTextArea said = Labels.wrapped(why, false);
              said.setFont(Theme.font(Theme.Size.BODY).deriveFont(Font.BOLD));
              column.add(said, "wmin 100, gapbottom 12");
            });
    for (StartState.Way way : state.ways()) {
      column.add(button(way), "hmin 48, growx 0, gaptop 8");
      column.add(Labels.wrapped(way.about(), true), "wmin 100");
    }
    JScrollPane scroll =
        new JScrollPane(
            column,
            JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED,
            JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
    scroll.setBorder(null);
    add(scroll);
    revalidate();
  }

  private JButton button(StartState.Way way) {
    JButton button = new JButton(way.words());
    button.setName(way.id());
    button.getAccessibleContext().setAccessibleDescription(way.about());
    button.addActionListener(
        e -> presenter.go(way.id(), way.id().equals("other") ? folder.get() : Optional.empty()));
    return button;
  }
}
