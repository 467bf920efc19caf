package hullalmanac.ui.sheet;

import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Sheet;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.ui.widget.Card;
import hullalmanac.ui.widget.Labels;
import java.awt.Insets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.swing.JButton;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** A photo: its picture, what is known of it, what is written of it. */
final class PhotoCell extends Card {
  private static final long serialVersionUID = 1L;

  private final transient SheetState.PhotoCard card;
  private final JTextArea facts = Labels.wrapped("", true);
  private final PictureBox picture;
  private final transient Map<String, FieldView> fields = new LinkedHashMap<>();

  PhotoCell(String block, SheetState.PhotoCard card, Sheet sheet) {
    super(new MigLayout("insets 10, fillx, wrap 2, gap 8 6", "[grow, fill][]", ""));
    this.card = card;
    picture = new PictureBox(card.file(), card.name(), sheet);
    add(picture, "span 2, wmin 0");
    add(facts, "span 2, wmin 0");
    for (int i = 0; i < card.fields().size(); i++) {
      SheetState.Field field = card.fields().get(i);
      FieldView view = FieldView.bare(new At(block, card.id(), field.id()), field, sheet);
      fields.put(field.id(), view);
      boolean last = i == card.fields().size() - 1;
      add(view, last ? "wmin 0" : "span 2, wmin 0");
    }
    JButton remove = new JButton(card.remove());
    remove.setName("remove " + card.id());
    remove.putClientProperty("JButton.buttonType", "borderless");
    remove.setMargin(new Insets(2, 6, 2, 6));
    remove.getAccessibleContext().setAccessibleName(card.remove() + " " + card.facts());
    remove.addActionListener(e -> sheet.remove(block, card.id()));
    add(remove, "hmin 32, aligny top");
  }

  /** Whether a card has the same fields, so that this cell can show it. */
  boolean fits(SheetState.PhotoCard other) {
    return other.file().equals(card.file())
        && other.remove().equals(card.remove())
        && shape(other).equals(shape(card));
  }

  private static List<List<Object>> shape(SheetState.PhotoCard card) {
    return card.fields().stream().map(f -> List.<Object>of(f.id(), f.label(), f.input())).toList();
  }

  void show(SheetState.PhotoCard now) {
    facts.setText(now.facts());
    picture.called(now.facts());
    now.fields().forEach(f -> fields.get(f.id()).show(f));
  }

  void take() {
    fields.values().forEach(FieldView::take);
  }
}
