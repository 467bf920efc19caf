package hullalmanac.ui.sheet;

import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Sheet;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.present.table.TableMemory;
import hullalmanac.present.table.TableState;
import hullalmanac.ui.theme.Theme;
import hullalmanac.ui.widget.Act;
import hullalmanac.ui.widget.ButtonRow;
import hullalmanac.ui.widget.Labels;
import hullalmanac.ui.widget.PathBox;
import hullalmanac.ui.widget.ScrollColumn;
import hullalmanac.ui.widget.SideScroll;
import hullalmanac.ui.widget.TidyTable;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.beans.PropertyChangeEvent;
import java.beans.PropertyChangeListener;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** Shows whichever sheet is open. */
public final class SheetPanel extends JPanel {
  private static final long serialVersionUID = 1L;

  private final JScrollPane scroll =
      new JScrollPane(
          JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
  private final transient TableMemory memory;
  private transient Optional<Sheet> sheet = Optional.empty();

  /** Of no sheet at all; one without blocks is another. */
  private static final List<List<Object>> NOTHING = List.of(List.of("no sheet"));

  private transient List<List<Object>> shape = NOTHING;
  private final transient List<Section> sections = new ArrayList<>();
  private final transient Map<String, FieldView> fields = new LinkedHashMap<>();
  private final transient Map<String, GridView> grids = new LinkedHashMap<>();
  private final transient Map<String, PhotosView> photos = new LinkedHashMap<>();
  private final transient Map<String, FilesView> files = new LinkedHashMap<>();
  private final transient Map<At, SignView> signs = new LinkedHashMap<>();
  private final transient Map<String, AnswerView> answers = new LinkedHashMap<>();
  private final transient Map<String, PathBox> ways = new LinkedHashMap<>();
  private final JLabel title = Labels.title("");
  private final JTextArea facts = Labels.wrapped("", true);
  private final JTextArea trouble = Labels.wrapped("", false);

  /** Whether a sheet was opened and the cursor is still on its way into it. */
  private boolean starting;

  private final transient PropertyChangeListener cursor = this::cursorCame;

  /** Whether the cursor goes into a sheet that is opened. */
  private final boolean takesCursor;

  /** A panel that shows no sheet yet; the cursor goes into one that is opened. */
  public SheetPanel(Runnable leave, TableMemory memory) {
    this(leave, memory, true);
  }

  /** A panel beside a list, in which the cursor stays when another sheet is opened. */
  public static SheetPanel inPlace(Runnable leave, TableMemory memory) {
    return new SheetPanel(leave, memory, false);
  }

  private SheetPanel(Runnable leave, TableMemory memory, boolean takesCursor) {
    super(new BorderLayout());
    this.memory = memory;
    this.takesCursor = takesCursor;
    setName("sheet");
    scroll.setBorder(null);
    scroll.getVerticalScrollBar().setUnitIncrement(24);
    add(scroll);
    Act.within(this, "ESCAPE", leave);
    Act.within(this, "ctrl V", this::paste);
    Act.within(this, "ctrl C", this::copyAnswers);
    Act.within(this, "control ENTER", () -> main().ifPresentOrElse(this::press, this::copyAnswers));
  }

  @Override
  public void addNotify() {
    super.addNotify();
    KeyboardFocusManager.getCurrentKeyboardFocusManager()
        .addPropertyChangeListener("permanentFocusOwner", cursor);
  }

  @Override
  public void removeNotify() {
    KeyboardFocusManager.getCurrentKeyboardFocusManager()
        .removePropertyChangeListener("permanentFocusOwner", cursor);
    super.removeNotify();
  }

  /** Once the cursor came into the sheet it is never sent to its beginning again. */
  private void cursorCame(PropertyChangeEvent e) {
    if (e.getNewValue() instanceof Component c && SwingUtilities.isDescendingFrom(c, scroll)) {
      starting = false;
    }
  }

  /** Puts the cursor into the first field; where there is none, on the first button. */
  public void start() {
    first().or(this::firstButton).ifPresent(Runnable::run);
  }

  private Optional<Runnable> firstButton() {
    return sections.stream()
        .flatMap(s -> Arrays.stream(s.panel().getComponents()))
        .filter(ButtonRow.class::isInstance)
        .flatMap(row -> Arrays.stream(((ButtonRow) row).getComponents()))
        .findFirst()
        .map(button -> button::requestFocusInWindow);
  }

  /** Copies all that came out, a line each. */
  private void copyAnswers() {
    takeAll();
    List<String> texts = answers.values().stream().flatMap(a -> a.copied().stream()).toList();
    if (!texts.isEmpty()) {
      AnswerView.copy(String.join("\n", texts));
    }
  }

  /** Takes what is being written, then does what a button says. */
  private void press(String button) {
    takeAll();
    Map<String, List<String>> before = new LinkedHashMap<>();
    grids.forEach((id, grid) -> before.put(id, grid.rows()));
    sheet.ifPresent(s -> s.press(button));
    grids.forEach((id, grid) -> goOnInNewRow(grid, before.getOrDefault(id, List.of())));
  }

  /** A row that was asked for is written in next. */
  private static void goOnInNewRow(GridView grid, List<String> before) {
    List<String> added = grid.rows().stream().filter(r -> !before.contains(r)).toList();
    if (added.size() == 1 && grid.rows().size() == before.size() + 1) {
      grid.goTo(added.get(0));
    }
  }

  /** Takes what is on the clipboard where nothing else that has the cursor takes it. */
  private void paste() {
    Stream.<DropFrame>concat(photos.values().stream(), files.values().stream())
        .filter(DropFrame::open)
        .findFirst()
        .ifPresent(DropFrame::paste);
  }

  /** Takes every text that was written and not yet taken. */
  public void takeAll() {
    fields.values().forEach(FieldView::take);
    grids.values().forEach(GridView::take);
    photos.values().forEach(PhotosView::take);
  }

  /** Shows a sheet; the cursor goes into its first field. */
  public void open(Sheet opened) {
    if (!sheet.equals(Optional.of(opened))) {
      sheet.ifPresent(s -> s.onChange(state -> {}));
      sheet = Optional.of(opened);
      shape = NOTHING;
      grids.clear();
      opened.onChange(this::render);
      scroll.getViewport().setViewPosition(new java.awt.Point(0, 0));
      starting = takesCursor;
      if (starting) {
        start();
      }
    }
  }

  /** Shows no sheet any more. */
  public void close() {
    sheet.ifPresent(s -> s.onChange(state -> {}));
    sheet = Optional.empty();
  }

  private void render(SheetState state) {
    List<List<Object>> now = state.blocks().stream().map(SheetPanel::shape).toList();
    if (!now.equals(shape)) {
      Standpoint before = Standpoint.of(scroll);
      boolean same = names(now).equals(names(shape));
      List<List<Object>> was = shape;
      shape = now;
      if (same) {
        for (int i = 0; i < now.size(); i++) {
          if (!now.get(i).equals(was.get(i))) {
            sections.set(i, refill(sections.get(i), state.blocks().get(i)));
          }
        }
      } else {
        build(state);
      }
      starting = starting && !before.inside();
      if (!before.restore(scroll) && (starting || before.inside())) {
        start();
      }
    }
    title.setText(state.title());
    facts.setText(state.facts());
    trouble.setText(state.trouble().orElse(""));
    trouble.setVisible(state.trouble().isPresent());
    for (int i = 0; i < state.blocks().size(); i++) {
      show(state.blocks().get(i), sections.get(i));
    }
  }

  private void show(SheetState.Block block, Section section) {
    if (block instanceof SheetState.Form form) {
      form.fields().forEach(f -> fields.get(form.id() + "/" + f.id()).show(f));
    } else if (block instanceof SheetState.Grid grid) {
      grids.get(grid.id()).show(grid);
      section.panel().setVisible(!grid.rows().isEmpty() || !grid.empty().isEmpty());
    } else if (block instanceof SheetState.Photos some) {
      photos.get(some.id()).show(some);
    } else if (block instanceof SheetState.Files some) {
      files.get(some.id()).show(some);
    } else if (block instanceof SheetState.Sign sign) {
      signs.get(sign.at()).show(sign);
    } else if (block instanceof SheetState.Answer answer) {
      answers.get(answer.id()).show(answer);
    } else if (block instanceof SheetState.Way way) {
      ways.get(way.id()).show(way.path(), way.description());
      section.panel().setVisible(way.path().isPresent());
    } else if (block instanceof SheetState.Words words) {
      section.words().ifPresent(area -> area.setText(words.text()));
      section.panel().setVisible(!words.text().isEmpty());
    }
  }

  /** What comes first in the shape of each block tells it from the others. */
  private static List<Object> names(List<List<Object>> shapes) {
    return shapes.stream().map(s -> s.get(0)).toList();
  }

  /** All of a block but the texts one writes, and those that are only read. */
  private static List<Object> shape(SheetState.Block block) {
    List<Object> shape = new ArrayList<>();
    if (block instanceof SheetState.Form form) {
      shape.add("form " + form.id());
      shape.add(form.heading());
      form.fields().forEach(f -> shape.add(List.of(f.id(), f.label(), f.input())));
    } else if (block instanceof SheetState.Grid grid) {
      shape.add("grid " + grid.id());
      shape.add(grid.columns());
      // Rows come and go within a grid, in which one may be writing; labels stand beside it.
      shape.add(grid.rows().isEmpty());
      if (!grid.labels().isEmpty()) {
        grid.rows().forEach(r -> shape.add(r.label()));
      }
    } else if (block instanceof SheetState.Photos some) {
      shape.add("photos " + some.id());
      shape.add(some.heading());
    } else if (block instanceof SheetState.Files some) {
      shape.add("files " + some.id());
      shape.add(List.of(some.heading(), some.choose()));
    } else if (block instanceof SheetState.Sign sign) {
      shape.add("sign " + sign.at());
      shape.add(List.of(sign.heading(), sign.words(), sign.open()));
    } else if (block instanceof SheetState.Answer answer) {
      shape.add("answer " + answer.id());
    } else if (block instanceof SheetState.Way way) {
      shape.add("way " + way.id());
      shape.add(way.heading());
    } else if (block instanceof SheetState.Words words) {
      shape.add("words " + words.strong());
    } else {
      shape.add(block.getClass().getSimpleName());
      shape.add(block);
    }
    return shape;
  }

  /**
   * A block on the page.
   *
   * @param first puts the cursor into it
   * @param main its main button
   * @param words what it says, where it only says something
   */
  private record Section(
      JPanel panel, Optional<Runnable> first, Optional<String> main, Optional<JTextArea> words) {}

  private Optional<Runnable> first() {
    return sections.stream().flatMap(s -> s.first().stream()).findFirst();
  }

  private Optional<String> main() {
    return sections.stream().flatMap(s -> s.main().stream()).findFirst();
  }

  private void build(SheetState state) {
    sections.clear();
    fields.clear();
    photos.clear();
    files.clear();
    signs.clear();
    answers.clear();
    ways.clear();
    ScrollColumn column =
        new ScrollColumn(
            new MigLayout("insets 20 24 24 24, fillx, wrap 1, hidemode 3", "[grow, fill]", ""));
    column.add(title);
    column.add(facts, "wmin 100, gapbottom 8");
    trouble.setFont(Theme.font(Theme.Size.BODY).deriveFont(java.awt.Font.BOLD));
    column.add(trouble, "wmin 100, gapbottom 8");
    for (SheetState.Block block : state.blocks()) {
      JPanel panel =
          new JPanel(new MigLayout("insets 0, fillx, wrap 1, hidemode 3", "[grow, fill]", ""));
      panel.setOpaque(false);
      sections.add(fill(panel, block));
      column.add(panel, "wmin 0" + gaps(block));
    }
    grids
        .keySet()
        .retainAll(
            state.blocks().stream()
                .filter(SheetState.Grid.class::isInstance)
                .map(b -> ((SheetState.Grid) b).id())
                .toList());
    scroll.setViewportView(column);
  }

  private static String gaps(SheetState.Block block) {
    boolean headed = !block.heading().isEmpty();
    return (headed
            ? ", gaptop 16"
            : block instanceof SheetState.Buttons || block instanceof SheetState.Answer
                ? ", gaptop 4"
                : "")
        + (block instanceof SheetState.Photos
                || block instanceof SheetState.Files
                || block instanceof SheetState.Sign
            ? ", gapbottom 8"
            : "");
  }

  /** Builds a block anew in the place where it is. */
  private Section refill(Section old, SheetState.Block block) {
    if (block instanceof SheetState.Form form) {
      Map<String, FieldView> before = new LinkedHashMap<>(fields);
      fields.keySet().removeIf(name -> name.startsWith(form.id() + "/"));
      Component[] parts = old.panel().getComponents();
      boolean headed = parts[0] instanceof JLabel;
      String heading = headed ? ((JLabel) parts[0]).getText() : "";
      if (heading.equals(form.heading())
          && parts[headed ? 1 : 0] instanceof FormGrid grid
          && !form.fields().isEmpty()) {
        refill(grid, form, before);
        FieldView first = fields.get(form.id() + "/" + form.fields().get(0).id());
        return new Section(old.panel(), Optional.of(first::start), old.main(), old.words());
      }
    }
    old.panel().removeAll();
    Section section = fill(old.panel(), block);
    revalidate();
    repaint();
    return section;
  }

  /** Fields that are the same stay where they are: one may be on the way into one of them. */
  private void refill(FormGrid grid, SheetState.Form form, Map<String, FieldView> before) {
    for (SheetState.Field field : form.fields()) {
      String name = form.id() + "/" + field.id();
      FieldView same = before.get(name);
      fields.put(
          name,
          same != null && same.isFor(field)
              ? same
              : FieldView.labelled(form.id(), field, sheet.orElseThrow()));
    }
    for (Component c : grid.getComponents()) {
      if (!fields.containsValue(c)) {
        grid.remove(c);
      }
    }
    int at = 0;
    for (SheetState.Field field : form.fields()) {
      FieldView view = fields.get(form.id() + "/" + field.id());
      if (view.getParent() != grid) {
        grid.add(view, "wmin 0, growx", at);
      }
      at++;
    }
    grid.revalidate();
    grid.repaint();
  }

  private Section fill(JPanel panel, SheetState.Block block) {
    if (!block.heading().isEmpty()) {
      panel.add(Labels.heading(block.heading()));
    }
    Optional<Runnable> cursor = Optional.empty();
    Optional<String> main = Optional.empty();
    Optional<JTextArea> said = Optional.empty();
    if (block instanceof SheetState.Form form) {
      panel.add(form(form), "wmin 0");
      cursor =
          form.fields().stream()
              .findFirst()
              .map(f -> fields.get(form.id() + "/" + f.id()))
              .map(view -> view::start);
    } else if (block instanceof SheetState.Grid grid) {
      panel.add(grid(grid), "wmin 0");
    } else if (block instanceof SheetState.Buttons buttons) {
      panel.add(buttons(buttons), "wmin 0");
      main =
          buttons.buttons().stream()
              .filter(SheetState.Button::main)
              .map(SheetState.Button::id)
              .findFirst();
    } else if (block instanceof SheetState.Table table) {
      panel.add(table(table), "wmin 0");
    } else if (block instanceof SheetState.Photos some) {
      PhotosView view = new PhotosView(some, sheet.orElseThrow());
      photos.put(some.id(), view);
      cursor = some.open() ? Optional.of(view::requestFocusInWindow) : cursor;
      panel.add(view, "wmin 0" + (some.open() ? ", hmin 120" : ""));
    } else if (block instanceof SheetState.Files some) {
      FilesView view = new FilesView(some, sheet.orElseThrow());
      files.put(some.id(), view);
      cursor = Optional.of(view::requestFocusInWindow);
      panel.add(view, "wmin 0");
    } else if (block instanceof SheetState.Sign sign) {
      SignView view = new SignView(sign, sheet.orElseThrow());
      signs.put(sign.at(), view);
      panel.add(view, "wmin 0");
    } else if (block instanceof SheetState.Answer answer) {
      AnswerView view = new AnswerView(answer.id());
      answers.put(answer.id(), view);
      panel.add(view, "wmin 0");
    } else if (block instanceof SheetState.Way way) {
      PathBox view = new PathBox(way.heading());
      ways.put(way.id(), view);
      panel.add(view, "wmin 0");
    } else if (block instanceof SheetState.Pages pages) {
      panel.add(new PagesView(pages, sheet.orElseThrow()), "wmin 0");
    } else if (block instanceof SheetState.Words words) {
      JTextArea area =
          words.strong() ? Labels.wrappedStrong(words.text()) : Labels.wrapped(words.text(), true);
      said = Optional.of(area);
      panel.add(area, "wmin 100");
    }
    return new Section(panel, cursor, main, said);
  }

  private JComponent form(SheetState.Form form) {
    FormGrid panel = new FormGrid();
    for (SheetState.Field field : form.fields()) {
      FieldView view = FieldView.labelled(form.id(), field, sheet.orElseThrow());
      fields.put(form.id() + "/" + field.id(), view);
      panel.add(view, "wmin 0, growx");
    }
    return panel;
  }

  private Component grid(SheetState.Grid grid) {
    GridView view = new GridView(grid, sheet.orElseThrow());
    Optional.ofNullable(grids.put(grid.id(), view)).ifPresent(view::goOnFrom);
    return view;
  }

  private JComponent buttons(SheetState.Buttons buttons) {
    ButtonRow row = new ButtonRow();
    for (SheetState.Button b : buttons.buttons()) {
      JButton button = new JButton(b.words());
      button.setName(b.id());
      button.addActionListener(e -> press(b.id()));
      if (b.main()) {
        button.setToolTipText("Ctrl+Enter");
        button.putClientProperty(
            "FlatLaf.style",
            "background: $Almanac.accent; foreground: $Almanac.onAccent; borderColor: $Almanac.accent;"
                + " hoverBackground: $Almanac.accent; pressedBackground: $Almanac.accent;"
                + " focusedBackground: $Almanac.accent");
      }
      row.add(button, "hmin 32");
    }
    return row;
  }

  private JComponent table(SheetState.Table table) {
    if (table.rows().isEmpty()) {
      return Labels.quiet(table.empty());
    }
    // A heading may say how many rows there are; what is remembered goes by the columns.
    TidyTable view =
        new TidyTable(
            TableState.of(String.join(", ", table.columns()), table.columns(), table.rows()),
            memory);
    if (!table.heading().isEmpty()) {
      view.getAccessibleContext().setAccessibleName(table.heading());
    }
    return new SideScroll(view);
  }
}
