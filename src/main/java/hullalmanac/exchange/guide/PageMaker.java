package hullalmanac.exchange.guide;

import hullalmanac.core.guide.Anchor;
import hullalmanac.core.guide.GuidePage;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Heading;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.ListItem;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;
import org.commonmark.node.StrongEmphasis;
import org.commonmark.renderer.html.HtmlRenderer;

/** Makes pages of what one file says. */
final class PageMaker {
  private static final Pattern OUTSIDE = Pattern.compile("[a-zA-Z][a-zA-Z0-9+.-]*:.*");

  private final String file;
  private final Path folder;

  PageMaker(String file) {
    this.file = file;
    Path parent = Path.of(file).getParent();
    folder = parent == null ? Path.of("") : parent;
  }

  /** A page. Links and pictures are named by their files from here on. */
  GuidePage page(String id, Node body) {
    Seen seen = new Seen();
    body.accept(seen);
    String title =
        seen.anchors.stream().filter(Anchor::heading).findFirst().map(Anchor::words).orElse(file);
    HtmlRenderer renderer =
        HtmlRenderer.builder()
            .extensions(List.of(TablesExtension.create()))
            .escapeHtml(true)
            .attributeProviderFactory(
                context ->
                    (node, tag, attributes) -> {
                      String anchor = anchor(node);
                      if (!anchor.isEmpty() && (tag.equals("p") || tag.startsWith("h"))) {
                        attributes.put("id", Words.anchor(anchor));
                      }
                    })
            .build();
    return new GuidePage(
        id,
        file,
        title,
        renderer.render(body),
        seen.anchors,
        seen.links,
        seen.pictures,
        Words.of(body));
  }

  /**
   * The words by which one can go there: a heading's, or the bold ones that a paragraph begins
   * with.
   */
  private static String anchor(Node node) {
    if (node instanceof Heading) {
      return Words.of(node);
    }
    return node instanceof Paragraph
            && !(node.getParent() instanceof ListItem)
            && node.getFirstChild() instanceof StrongEmphasis lead
        ? leadWords(lead)
        : "";
  }

  private static String leadWords(Node lead) {
    String words = Words.of(lead);
    return words.endsWith(".") ? words.substring(0, words.length() - 1) : words;
  }

  private String resolved(String target) {
    if (OUTSIDE.matcher(target).matches()) {
      return target;
    }
    if (target.startsWith("#")) {
      return file + target;
    }
    int hash = target.indexOf('#');
    String path = hash < 0 ? target : target.substring(0, hash);
    return folder.resolve(path).normalize().toString().replace('\\', '/')
        + (hash < 0 ? "" : target.substring(hash));
  }

  /** What is on a page besides its words. */
  private final class Seen extends AbstractVisitor {
    private final List<Anchor> anchors = new ArrayList<>();
    private final List<String> links = new ArrayList<>();
    private final List<String> pictures = new ArrayList<>();

    @Override
    public void visit(Heading heading) {
      note(heading, true);
      visitChildren(heading);
    }

    @Override
    public void visit(Paragraph paragraph) {
      note(paragraph, false);
      visitChildren(paragraph);
    }

    private void note(Node node, boolean heading) {
      String words = anchor(node);
      if (!words.isEmpty()) {
        anchors.add(new Anchor(Words.anchor(words), words, heading));
      }
    }

    @Override
    public void visit(Link link) {
      link.setDestination(resolved(link.getDestination()));
      links.add(link.getDestination());
      visitChildren(link);
    }

    @Override
    public void visit(Image picture) {
      picture.setDestination(resolved(picture.getDestination()));
      pictures.add(picture.getDestination());
    }
  }
}
