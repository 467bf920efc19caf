package hullalmanac.exchange.guide;

import java.util.Locale;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Code;
import org.commonmark.node.CustomNode;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.Heading;
import org.commonmark.node.IndentedCodeBlock;
import org.commonmark.node.ListItem;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.Text;

/** What one reads in a part of a page, without marks. */
final class Words extends AbstractVisitor {
  private final StringBuilder all = new StringBuilder();

  private Words() {}

  static String of(Node part) {
    Words words = new Words();
    part.accept(words);
    return words.all.toString().strip();
  }

  /** How a link names a heading, as the usual readers of Markdown do. */
  static String anchor(String words) {
    StringBuilder id = new StringBuilder();
    words
        .toLowerCase(Locale.ROOT)
        .codePoints()
        .forEach(
            c -> {
              if (Character.isLetterOrDigit(c) || c == '-' || c == '_') {
                id.appendCodePoint(c);
              } else if (c == ' ') {
                id.append('-');
              }
            });
    return id.toString();
  }

  @Override
  public void visit(Text text) {
    all.append(text.getLiteral());
  }

  @Override
  public void visit(Code code) {
    all.append(code.getLiteral());
  }

  @Override
  public void visit(FencedCodeBlock block) {
    all.append(block.getLiteral()).append('\n');
  }

  @Override
  public void visit(IndentedCodeBlock block) {
    all.append(block.getLiteral()).append('\n');
  }

  @Override
  public void visit(SoftLineBreak line) {
    all.append(' ');
  }

  @Override
  public void visit(HardLineBreak line) {
    all.append(' ');
  }

  @Override
  public void visit(Paragraph paragraph) {
    visitChildren(paragraph);
    all.append('\n');
  }

  @Override
  public void visit(Heading heading) {
    visitChildren(heading);
    all.append('\n');
  }

  @Override
  public void visit(ListItem item) {
    visitChildren(item);
    all.append('\n');
  }

  /** A cell of a table. */
  @Override
  public void visit(CustomNode cell) {
    visitChildren(cell);
    all.append(' ');
  }
}
