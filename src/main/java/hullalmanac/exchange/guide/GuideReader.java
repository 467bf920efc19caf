package hullalmanac.exchange.guide;

import hullalmanac.core.guide.GuidePage;
import java.util.ArrayList;
import java.util.List;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.Document;
import org.commonmark.node.Heading;
import org.commonmark.node.Node;
import org.commonmark.parser.Parser;

/** Reads Markdown (CommonMark, with the tables of GitHub) as pages of the guide. */
public final class GuideReader {
  private static final Parser PARSER =
      Parser.builder().extensions(List.of(TablesExtension.create())).build();

  private GuideReader() {}

  /**
   * A file as one page, whose id is the file and whose title is its first heading.
   *
   * @param file where it lies among the files of the guide, for the links on it
   */
  public static GuidePage page(String file, String markdown) {
    return new PageMaker(file).page(file, PARSER.parse(markdown));
  }

  /**
   * A file as a page for what stands before its first heading of the second level, and one for each
   * such heading with all that follows it. The id of such a page is the file with the heading.
   */
  public static List<GuidePage> pages(String file, String markdown) {
    PageMaker maker = new PageMaker(file);
    List<GuidePage> pages = new ArrayList<>();
    Node whole = PARSER.parse(markdown);
    Document part = new Document();
    Node next = whole.getFirstChild();
    while (next != null) {
      Node node = next;
      next = node.getNext();
      if (node instanceof Heading heading && heading.getLevel() == 2) {
        pages.add(maker.page(pages.isEmpty() ? file : id(file, part), part));
        part = new Document();
        // On a page of its own it is what the page is called.
        heading.setLevel(1);
      }
      part.appendChild(node);
    }
    pages.add(maker.page(pages.isEmpty() ? file : id(file, part), part));
    return pages;
  }

  private static String id(String file, Node part) {
    return file + "#" + Words.anchor(Words.of(part.getFirstChild()));
  }
}
