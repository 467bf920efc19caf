package hullalmanac.ui.sheet;

import hullalmanac.present.sheet.Sheet;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.present.table.TableMemory;
import hullalmanac.present.table.TableState;
import hullalmanac.ui.theme.Theme;
import hullalmanac.ui.widget.Act;
import hullalmanac.ui.widget.Labels;
import hullalmanac.ui.widget.ScrollColumn;
import hullalmanac.ui.widget.SideScroll;
import hullalmanac.ui.widget.TidyTable;
import java.awt.BorderLayout;
import java.awt.Component;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** Shows whichever sheet is open. */
public final class SheetPanel extends JPanel {
  private static final long serialVersionUID = 1L;

  private final JScrollPane scroll =
      new JScrollPane(
          JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
  private final transient TableMemory memory;
  private transient Optional<Sheet> sheet = Optional.empty();
  private transient List<Object> shape = List.of();
  private final transient Map<String, FieldView> fields = new LinkedHashMap<>();
  private final transient Map<String, GridView> grids = new LinkedHashMap<>();
  private final transient Map<String, PhotosView> photos = new LinkedHashMap<>();
  private final JLabel title = Labels.title("");
  private final JTextArea facts = Labels.wrapped("", true);
  private final JTextArea trouble = Labels.wrapped("", false);
  private transient Optional<String> main = Optional.empty();
  private transient Optional<Runnable> first = Optional.empty();

  /** Whether a sheet was opened and the cursor is still on its way into it. */
  private boolean starting;

  /** A panel that shows no sheet yet. */
  public SheetPanel(Runnable leave, TableMemory memory) {
    super(new BorderLayout());
    this.memory = memory;
    setName("sheet");
    scroll.setBorder(null);
    scroll.getVerticalScrollBar().setUnitIncrement(24);
    add(scroll);
    Act.within(this, "ESCAPE", leave);
    Act.within(this, "ctrl V", this::pastePhotos);
    Act.within(this, "control ENTER", () -> main.ifPresent(this::press));
  }

  /** Takes what is being written, then does what a button says. */
  private void press(String button) {
    takeAll();
    sheet.ifPresent(s -> s.press(button));
  }

  /** Takes photos from the clipboard where nothing else that has the cursor takes them. */
  private void pastePhotos() {
    photos.values().stream().filter(PhotosView::open).findFirst().ifPresent(PhotosView::paste);
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
      shape = List.of();
      opened.onChange(this::render);
      scroll.getViewport().setViewPosition(new java.awt.Point(0, 0));
      first.ifPresent(Runnable::run);
      starting = true;
    }
  }

  /** Shows no sheet any more. */
  public void close() {
    sheet.ifPresent(s -> s.onChange(state -> {}));
    sheet = Optional.empty();
  }

  private void render(SheetState state) {
    List<Object> now = shape(state);
    if (!now.equals(shape)) {
      shape = now;
      Standpoint before = Standpoint.of(scroll);
      build(state);
      starting = starting && before.focused().isEmpty();
      if (!before.restore(scroll) && (starting || before.focused().isPresent())) {
        first.ifPresent(Runnable::run);
      }
    }
    title.setText(state.title());
    facts.setText(state.facts());
    trouble.setText(state.trouble().orElse(""));
    trouble.setVisible(state.trouble().isPresent());
    for (SheetState.Block block : state.blocks()) {
      if (block instanceof SheetState.Form form) {
        form.fields().forEach(f -> fields.get(form.id() + "/" + f.id()).show(f));
      } else if (block instanceof SheetState.Grid grid) {
        grids.get(grid.id()).show(grid);
      } else if (block instanceof SheetState.Photos some) {
        photos.get(some.id()).show(some);
      }
    }
  }

  /** All of a state but the texts one writes. */
  private static List<Object> shape(SheetState state) {
    List<Object> shape = new ArrayList<>();
    for (SheetState.Block block : state.blocks()) {
      if (block instanceof SheetState.Form form) {
        shape.add(form.id() + form.heading());
        form.fields().forEach(f -> shape.add(List.of(f.id(), f.label(), f.input())));
      } else if (block instanceof SheetState.Grid grid) {
        shape.add(grid.id());
        shape.add(grid.columns());
        grid.rows().forEach(r -> shape.add(List.of(r.id(), r.label())));
      } else if (block instanceof SheetState.Photos some) {
        shape.add(some.id() + some.heading());
      } else {
        shape.add(block);
      }
    }
    return shape;
  }

  private void build(SheetState state) {
    fields.clear();
    grids.clear();
    photos.clear();
    first = Optional.empty();
    main = Optional.empty();
    ScrollColumn column =
        new ScrollColumn(
            new MigLayout("insets 20 24 24 24, fillx, wrap 1, hidemode 3", "[grow, fill]", ""));
    column.add(title);
    column.add(facts, "wmin 100, gapbottom 8");
    trouble.setFont(Theme.font(Theme.Size.BODY).deriveFont(java.awt.Font.BOLD));
    column.add(trouble, "wmin 100, gapbottom 8");
    for (SheetState.Block block : state.blocks()) {
      add(column, block);
    }
    scroll.setViewportView(column);
  }

  private void add(ScrollColumn column, SheetState.Block block) {
    if (block instanceof SheetState.Form form) {
      heading(column, form.heading());
      column.add(form(form), "wmin 0");
    } else if (block instanceof SheetState.Grid grid) {
      heading(column, grid.heading());
      column.add(grid(grid), "wmin 0");
    } else if (block instanceof SheetState.Buttons buttons) {
      column.add(buttons(buttons), "wmin 0, gaptop 4");
    } else if (block instanceof SheetState.Table table) {
      heading(column, table.heading());
      column.add(table(table), "wmin 0");
    } else if (block instanceof SheetState.Photos some) {
      heading(column, some.heading());
      PhotosView view = new PhotosView(some, sheet.orElseThrow());
      photos.put(some.id(), view);
      if (some.open()) {
        first = first.or(() -> Optional.of(view::requestFocusInWindow));
      }
      column.add(view, "wmin 0, gapbottom 8" + (some.open() ? ", hmin 120" : ""));
    } else if (block instanceof SheetState.Words words) {
      column.add(Labels.wrapped(words.text(), true), "wmin 100");
    }
  }

  private static void heading(ScrollColumn column, String text) {
    if (!text.isEmpty()) {
      column.add(Labels.heading(text), "gaptop 16");
    }
  }

  private JComponent form(SheetState.Form form) {
    FormGrid panel = new FormGrid();
    for (SheetState.Field field : form.fields()) {
      FieldView view = FieldView.labelled(form.id(), field, sheet.orElseThrow());
      fields.put(form.id() + "/" + field.id(), view);
      first = first.or(() -> Optional.of(view::start));
      panel.add(view, "wmin 0, growx");
    }
    return panel;
  }

  private Component grid(SheetState.Grid grid) {
    GridView view = new GridView(grid, sheet.orElseThrow());
    grids.put(grid.id(), view);
    return view;
  }

  private JComponent buttons(SheetState.Buttons buttons) {
    ButtonRow row = new ButtonRow();
    for (SheetState.Button b : buttons.buttons()) {
      JButton button = new JButton(b.words());
      button.setName(b.id());
      button.addActionListener(e -> press(b.id()));
      if (b.main()) {
        main = Optional.of(b.id());
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
    view.getAccessibleContext()
        .setAccessibleName(table.heading().isEmpty() ? title.getText() : table.heading());
    return new SideScroll(view);
  }
}
