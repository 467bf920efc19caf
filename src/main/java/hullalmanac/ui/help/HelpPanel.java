package hullalmanac.ui.help;

import com.formdev.flatlaf.util.UIScale;
import hullalmanac.present.help.HelpPresenter;
import hullalmanac.present.help.HelpState;
import hullalmanac.ui.theme.Theme;
import hullalmanac.ui.widget.Act;
import hullalmanac.ui.widget.FoundList;
import hullalmanac.ui.widget.Interrupted;
import hullalmanac.ui.widget.ItemCell;
import hullalmanac.ui.widget.Labels;
import hullalmanac.ui.widget.ListBesidePage;
import hullalmanac.ui.widget.ScrollColumn;
import java.awt.BorderLayout;
import java.awt.Toolkit;
import java.awt.datatransfer.StringSelection;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/**
 * The guide over whatever one was doing: its pages at the left, the one chosen at the right. It
 * takes the cursor in such a way that a text that was begun is gone on with afterwards.
 */
public final class HelpPanel extends JPanel {
  private static final long serialVersionUID = 1L;

  /** As wide as one reads with ease. */
  private static final int MEASURE = 680;

  private static final int MARGIN = 24;

  /** The frame of a picture, and the end of the line in which it stands. */
  private static final int FRAME = 24;

  private final transient HelpPresenter presenter;
  private final JComponent covered;
  private final FoundList<HelpState.Item> list;
  private final PageView page;
  private final JScrollPane scroll =
      new JScrollPane(
          JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
  private final JButton back = new JButton("Back");
  private final JButton forward = new JButton("Forward");
  private final JTextArea said = Labels.wrapped("", false);
  private final JPanel buttons =
      new JPanel(new MigLayout("insets 0 0 12 0, gap 8, novisualpadding"));
  private transient List<HelpState.Button> offered = List.of();
  private transient Optional<HelpState.Shown> shown = Optional.empty();
  private transient Optional<Interrupted> before = Optional.empty();
  private boolean open;

  /**
   * @param covered what lies below it: hidden while the guide is open, and the cursor returns there
   */
  public HelpPanel(HelpPresenter presenter, JComponent covered) {
    super(new BorderLayout());
    this.presenter = presenter;
    this.covered = covered;
    setName("help");
    setVisible(false);
    setFocusCycleRoot(true);
    page = new PageView(presenter::follow);
    list =
        new FoundList<>(
            new FoundList.Words("guide", "Find in the guide", ""),
            new ItemCell.Lines<>(HelpState.Item::title, i -> "", HelpState.Item::about),
            new FoundList.Acts<>(presenter::find, presenter::choose, () -> {}));
    ListBesidePage sides = new ListBesidePage(list, right(), "All pages");
    list.onChosen(() -> sides.choosing(false));
    list.onEscape(presenter::leave);
    add(sides);
    Act.within(this, "ESCAPE", presenter::leave);
    Act.within(this, "alt LEFT", presenter::back);
    Act.within(this, "alt RIGHT", presenter::forward);
    Act.within(
        this,
        "menu F",
        () -> {
          sides.choosing(true);
          list.startFinding();
        });
    page.addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusGained(FocusEvent e) {
            // Not before: what is hidden while it has the cursor takes its leave of it for good.
            covered.setVisible(!open);
          }
        });
    presenter.onChange(this::render);
  }

  /** Something with help over it, which comes when it is wanted. */
  public static JComponent over(JComponent covered, HelpPresenter presenter) {
    return new Covered(covered, new HelpPanel(presenter, covered));
  }

  private JPanel right() {
    JPanel right = new JPanel(new BorderLayout());
    JPanel head =
        new JPanel(new MigLayout("insets 16 24 4 24, fillx, novisualpadding", "[][][grow]", ""));
    head.add(button(back, "help back", "Alt+Left", presenter::back), "hmin 32");
    head.add(button(forward, "help forward", "Alt+Right", presenter::forward), "hmin 32");
    JButton leave = new JButton("Back to what you did");
    head.add(button(leave, "help leave", "Esc", presenter::leave), "hmin 32, align right");
    right.add(head, BorderLayout.NORTH);
    ScrollColumn column =
        new ScrollColumn(
            new MigLayout(
                "insets 12 24 24 24, fillx, wrap 1, hidemode 3, novisualpadding",
                "[0:" + MEASURE + ":" + MEASURE + ", fill]push",
                ""));
    said.setName("help says");
    column.add(said, "wmin 60, gapbottom 8");
    buttons.setOpaque(false);
    column.add(page, "wmin 0");
    column.add(buttons, "wmin 0");
    scroll.setViewportView(column);
    scroll.setBorder(null);
    right.add(scroll);
    return right;
  }

  private static JButton button(JButton button, String name, String key, Runnable act) {
    button.setName(name);
    button.setToolTipText(key);
    button.addActionListener(e -> act.run());
    return button;
  }

  private void render(HelpState state) {
    list.show(state.list(), state.found(), i -> chosen(state, i));
    back.setEnabled(state.back());
    forward.setEnabled(state.forward());
    said.setText(state.said());
    said.setVisible(!state.said().isEmpty());
    state.shown().ifPresent(this::show);
    if (state.open() != open) {
      open = state.open();
      appear();
    }
    revalidate();
    repaint();
  }

  private static boolean chosen(HelpState state, HelpState.Item item) {
    return state.shown().filter(s -> s.spot().page().equals(item.page())).isPresent();
  }

  private void show(HelpState.Shown now) {
    if (shown.equals(Optional.of(now))) {
      return;
    }
    boolean there = shown.filter(s -> s.visit() == now.visit()).isPresent();
    shown = Optional.of(now);
    page.show(now, !there);
    if (!now.buttons().equals(offered)) {
      offered = now.buttons();
      buttons.removeAll();
      for (HelpState.Button offer : offered) {
        JButton button = new JButton(offer.words());
        buttons.add(
            button(button, offer.id(), null, () -> presenter.press(offer.id(), HelpPanel::copy)),
            "hmin 32");
      }
    }
    buttons.setVisible(!offered.isEmpty());
  }

  private static void copy(String text) {
    Toolkit.getDefaultToolkit().getSystemClipboard().setContents(new StringSelection(text), null);
  }

  private void appear() {
    if (open) {
      fit();
      before = Optional.of(Interrupted.in(this));
      setVisible(true);
      page.takeCursorForAMoment();
      return;
    }
    Optional<Interrupted> place = before;
    before = Optional.empty();
    covered.setVisible(true);
    if (place.filter(Interrupted::goOn).isEmpty()) {
      covered.requestFocusInWindow();
    }
    // Not before the cursor has gone: what is hidden with it hands it to whatever comes next, and a
    // cell that is being written in takes that for its end.
    SwingUtilities.invokeLater(() -> setVisible(open));
  }

  /** Says how wide pictures may be; they are drawn anew when the theme or the size changes. */
  private void fit() {
    int room = scroll.getViewport().getExtentSize().width - 2 * UIScale.scale(MARGIN);
    int measure = UIScale.scale(MEASURE);
    int widest = room <= 0 ? measure : Math.min(measure, room);
    presenter.fits(widest - UIScale.scale(FRAME), Theme.isDark());
  }

  @Override
  public void doLayout() {
    super.doLayout();
    if (open) {
      fit();
    }
  }

  @Override
  public void updateUI() {
    super.updateUI();
    if (open) {
      fit();
    }
  }
}
