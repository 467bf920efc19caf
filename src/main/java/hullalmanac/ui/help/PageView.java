package hullalmanac.ui.help;

import hullalmanac.core.record.Pixels;
import hullalmanac.present.help.HelpState;
import hullalmanac.ui.theme.Theme;
import hullalmanac.ui.widget.Act;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import javax.swing.JEditorPane;
import javax.swing.JScrollPane;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;
import javax.swing.event.HyperlinkEvent;
import javax.swing.text.AttributeSet;
import javax.swing.text.BadLocationException;
import javax.swing.text.DefaultCaret;
import javax.swing.text.DefaultHighlighter;
import javax.swing.text.Element;
import javax.swing.text.View;
import javax.swing.text.ViewFactory;
import javax.swing.text.html.HTML;
import javax.swing.text.html.HTMLDocument;
import javax.swing.text.html.HTMLEditorKit;
import javax.swing.text.html.StyleSheet;

/** A page of the guide. Tab goes from link to link, Enter follows, arrows move the page. */
final class PageView extends JEditorPane {
  private static final long serialVersionUID = 1L;
  private static final int LINE = 48;

  private final transient Consumer<String> follow;
  private transient List<Link> links = List.of();
  private transient HelpState.Shown shown;
  private int link = -1;

  /** Whether the page is still on its way to the place of it that is wanted. */
  private boolean going;

  /** A link, and where it stands. */
  private record Link(String target, int from, int to) {}

  /**
   * @param follow goes where a link leads
   */
  PageView(Consumer<String> follow) {
    this.follow = follow;
    setName("guide page");
    setEditable(false);
    setOpaque(false);
    setEditorKit(new Kit(Map.of()));
    getAccessibleContext().setAccessibleName("Guide");
    // Marking a link must not scroll by itself.
    ((DefaultCaret) getCaret()).setUpdatePolicy(DefaultCaret.NEVER_UPDATE);
    addHyperlinkListener(
        e -> {
          if (e.getEventType() == HyperlinkEvent.EventType.ACTIVATED) {
            follow.accept(e.getDescription());
          }
        });
    addComponentListener(
        new ComponentAdapter() {
          @Override
          public void componentResized(ComponentEvent e) {
            if (going) {
              goThere();
            }
          }
        });
    keys();
  }

  private void keys() {
    Act.on(this, "TAB", () -> nextLink(1));
    Act.on(this, "shift TAB", () -> nextLink(-1));
    Act.on(this, "ENTER", this::followLink);
    Act.on(this, "DOWN", () -> move(LINE));
    Act.on(this, "UP", () -> move(-LINE));
    Act.on(this, "PAGE_DOWN", () -> move(viewport().getExtentSize().height - LINE));
    Act.on(this, "PAGE_UP", () -> move(LINE - viewport().getExtentSize().height));
    Act.on(this, "HOME", () -> move(-getHeight()));
    Act.on(this, "END", () -> move(getHeight()));
    setFocusTraversalKeysEnabled(false);
  }

  /** A kit with a style of its own: the usual one shares its style with all of the program. */
  private static final class Kit extends HTMLEditorKit {
    private static final long serialVersionUID = 1L;
    private final transient Map<String, Pixels> pictures;
    private transient StyleSheet style;

    Kit(Map<String, Pixels> pictures) {
      this.pictures = pictures;
    }

    @Override
    public ViewFactory getViewFactory() {
      return new HTMLFactory() {
        @Override
        public View create(Element element) {
          Pixels picture =
              pictures.get(
                  String.valueOf(element.getAttributes().getAttribute(HTML.Attribute.SRC)));
          return picture == null ? super.create(element) : new PictureView(element, picture);
        }
      };
    }

    @Override
    public StyleSheet getStyleSheet() {
      if (style == null) {
        style = PageStyle.of(super.getStyleSheet());
      }
      return style;
    }
  }

  /** Takes the cursor in such a way that what had it knows it for away, not left. */
  void takeCursorForAMoment() {
    requestFocusInWindow(true);
  }

  /**
   * Shows a page.
   *
   * @param there whether to go to what of it one wants to read, and not to stay where one reads
   */
  void show(HelpState.Shown page, boolean there) {
    shown = page;
    setEditorKit(new Kit(page.pictures()));
    setText(page.html());
    links = links((HTMLDocument) getDocument());
    link = -1;
    mark(page.marked());
    if (there) {
      going = true;
      SwingUtilities.invokeLater(this::goThere);
    }
  }

  @Override
  public void updateUI() {
    super.updateUI();
    if (shown != null) {
      show(shown, false);
    }
  }

  private static List<Link> links(HTMLDocument document) {
    List<Link> links = new ArrayList<>();
    HTMLDocument.Iterator each = document.getIterator(HTML.Tag.A);
    for (; each.isValid(); each.next()) {
      AttributeSet attributes = each.getAttributes();
      Object target = attributes.getAttribute(HTML.Attribute.HREF);
      if (target != null) {
        links.add(new Link(target.toString(), each.getStartOffset(), each.getEndOffset()));
      }
    }
    return links;
  }

  private void mark(List<String> words) {
    getHighlighter().removeAllHighlights();
    String text = text().toLowerCase(Locale.ROOT);
    DefaultHighlighter.DefaultHighlightPainter painter =
        new DefaultHighlighter.DefaultHighlightPainter(Theme.colour("railChosen"));
    for (String word : words) {
      for (int at = text.indexOf(word); at >= 0; at = text.indexOf(word, at + word.length())) {
        try {
          getHighlighter().addHighlight(at, at + word.length(), painter);
        } catch (BadLocationException e) {
          throw new IllegalStateException(e);
        }
      }
    }
  }

  private String text() {
    try {
      return getDocument().getText(0, getDocument().getLength());
    } catch (BadLocationException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Goes to the place of the page that is wanted, or to the first word that was looked for. */
  private void goThere() {
    String anchor = shown.spot().anchor();
    int at = 0;
    if (!anchor.isEmpty()) {
      Element there = ((HTMLDocument) getDocument()).getElement(anchor);
      at = there == null ? 0 : there.getStartOffset();
    } else if (getHighlighter().getHighlights().length > 0) {
      at = getHighlighter().getHighlights()[0].getStartOffset();
    }
    int line = place(at).y;
    if (at == 0 || getParent() == null) {
      line = 0;
    } else if (anchor.isEmpty()) {
      line -= LINE;
    }
    moveTo(line);
    // A page opened for the first time has its height only after it was laid out.
    going = getHeight() < getPreferredSize().height;
  }

  private Rectangle place(int at) {
    try {
      Rectangle2D there = modelToView2D(at);
      return there == null ? new Rectangle() : there.getBounds();
    } catch (BadLocationException e) {
      throw new IllegalStateException(e);
    }
  }

  private void nextLink(int direction) {
    int next = link + direction;
    if (next < 0 || next >= links.size()) {
      link = direction > 0 ? -1 : links.size();
      select(0, 0);
      if (direction > 0) {
        transferFocus();
      } else {
        transferFocusBackward();
      }
      return;
    }
    link = next;
    Link there = links.get(link);
    select(there.from(), there.to());
    scrollRectToVisible(SwingUtilities.convertRectangle(this, place(there.from()), this));
  }

  private void followLink() {
    if (link >= 0 && link < links.size()) {
      follow.accept(links.get(link).target());
    }
  }

  private JViewport viewport() {
    return ((JScrollPane) SwingUtilities.getAncestorOfClass(JScrollPane.class, this)).getViewport();
  }

  private void move(int by) {
    moveTo(viewport().getViewPosition().y - inView() + by);
  }

  /** How far below the top of what scrolls this page begins. */
  private int inView() {
    return SwingUtilities.convertPoint(this, 0, 0, viewport().getView()).y;
  }

  private void moveTo(int line) {
    if (SwingUtilities.getAncestorOfClass(JScrollPane.class, this) == null) {
      return;
    }
    int most = viewport().getView().getHeight() - viewport().getExtentSize().height;
    int top = line == 0 ? 0 : line + inView();
    viewport().setViewPosition(new Point(0, Math.max(0, Math.min(most, top))));
  }
}
