package hullalmanac.ui.settings;

import hullalmanac.present.settings.SettingsPresenter;
import hullalmanac.present.settings.SettingsState;
import hullalmanac.present.table.TableMemory;
import hullalmanac.ui.sheet.SheetPanel;
import hullalmanac.ui.widget.FoundList;
import hullalmanac.ui.widget.ItemCell;
import hullalmanac.ui.widget.ListBesidePage;
import java.awt.BorderLayout;
import javax.swing.JPanel;

/** The pages of settings at the left, the one chosen at the right. */
public final class SettingsPanel extends JPanel {
  private static final long serialVersionUID = 1L;

  private final FoundList<SettingsState.Page> list;
  private final SheetPanel sheet;

  public SettingsPanel(SettingsPresenter presenter, TableMemory memory) {
    super(new BorderLayout());
    sheet = new SheetPanel(() -> {}, memory);
    list =
        new FoundList<>(
            new FoundList.Words("settings", "Find a setting", ""),
            new ItemCell.Lines<>(SettingsState.Page::name, SettingsState.Page::about, p -> ""),
            new FoundList.Acts<>(presenter::find, presenter::choose, () -> {}));
    ListBesidePage sides = new ListBesidePage(list, sheet, "All settings");
    list.onChosen(() -> sides.choosing(false));
    add(sides);
    presenter.onChange(this::render);
  }

  private void render(SettingsState state) {
    list.show(state.list(), state.found(), p -> state.chosen().filter(p::equals).isPresent());
    state.sheet().ifPresent(sheet::open);
  }
}
