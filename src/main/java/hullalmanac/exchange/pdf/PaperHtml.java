package hullalmanac.exchange.pdf;

import hullalmanac.chart.PaperChart;
import hullalmanac.core.paper.Block;
import hullalmanac.core.paper.Paper;
import hullalmanac.core.record.Signature;
import hullalmanac.core.record.Texts;
import hullalmanac.core.report.BoatTimeline;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A paper as a page of XHTML for the maker of PDFs; every text is escaped and looked over. */
final class PaperHtml {
  /** The attribute that says which of the drawings an object is. */
  static final String DRAWN_AT = "data-drawn";

  /** Tables of so many rows stay on one page. */
  private static final int KEPT_WHOLE = 14;

  private static final double PHOTO_WIDTH = 82;
  private static final double PHOTO_HEIGHT = 62;
  private static final double MARK_WIDTH = 50;
  private static final double MARK_HEIGHT = 16;
  private static final double CHART_WIDTH = 170;
  private static final double SIGNED_WIDTH = 60;
  private static final double SIGNED_SHAPE = (double) Signature.WIDTH / Signature.HEIGHT;

  private final FontCover cover;
  private final PaperPhotos photos;
  private final List<Drawn> drawn = new ArrayList<>();
  private final StringBuilder out = new StringBuilder();

  PaperHtml(FontCover cover, PaperPhotos photos) {
    this.cover = cover;
    this.photos = photos;
  }

  /** The drawings of the page, in order. */
  List<Drawn> drawn() {
    return drawn;
  }

  /** Writes a paper. */
  String of(Paper paper) {
    String name = paper.name();
    out.append("<html lang=\"en\"><head><title>").append(text(name)).append("</title>");
    for (String meta : List.of("subject", "description")) {
      out.append("<meta name=\"").append(meta).append("\" content=\"").append(text(name));
      out.append("\"/>");
    }
    out.append("<meta name=\"author\" content=\"").append(text(paper.sender().name()));
    out.append("\"/><style>");
    out.append(escaped(PaperStyle.of(paper.size(), cover.text(name))));
    out.append("</style></head><body>");
    letterhead(paper.sender());
    List<Block> blocks = paper.blocks();
    int first = !blocks.isEmpty() && blocks.get(0) instanceof Block.Recipient ? 1 : 0;
    blocks.stream().limit(first).forEach(this::block);
    element("h1", paper.title());
    if (!paper.about().isBlank()) {
      styled("p", "about", paper.about());
    }
    blocks.stream().skip(first).forEach(this::block);
    cover.onPaper().forEach(sentence -> styled("p", "note", sentence));
    return out.append("</body></html>").toString();
  }

  private void letterhead(Paper.Sender sender) {
    photos.show(sender.mark()).ifPresent(m -> mark(m, "The mark of " + sender.name()));
    styled("p", "sender", sender.name());
    List<String> lines = new ArrayList<>(sender.address());
    if (!sender.taxNumber().isBlank()) {
      lines.add("Tax number " + sender.taxNumber());
    }
    if (!lines.isEmpty()) {
      styled("p", "address", String.join(" · ", lines));
    }
    out.append("<div class=\"rule\"></div>");
  }

  private void mark(PaperPhotos.Shown mark, String words) {
    double scale = Math.min(MARK_WIDTH / mark.width(), MARK_HEIGHT / mark.height());
    out.append("<div class=\"mark\"><img src=\"").append(text(mark.address()));
    out.append("\" alt=\"").append(text(words));
    out.append(size(mark.width() * scale, mark.height() * scale)).append("/></div>");
  }

  private void block(Block block) {
    if (block instanceof Block.Heading h) {
      element("h" + h.level(), h.text());
    } else if (block instanceof Block.Words w) {
      styled("p", "words", w.text());
    } else if (block instanceof Block.Lead lead) {
      styled("p", "lead", lead.text());
    } else if (block instanceof Block.Note n) {
      styled("p", "note", n.text());
    } else if (block instanceof Block.Recipient r) {
      styled("p", "recipient", String.join("\n", r.lines()));
    } else if (block instanceof Block.Facts f) {
      facts(f);
    } else if (block instanceof Block.Points p) {
      list("points", "", p.points());
    } else if (block instanceof Block.Ticks t) {
      list("ticks", "<span class=\"box\"></span>", t.points());
    } else if (block instanceof Block.Cautions c) {
      cautions(c);
    } else if (block instanceof Block.Table t) {
      table(t);
    } else if (block instanceof Block.Photos p) {
      photos(p);
    } else if (block instanceof Block.Drawing d) {
      drawing(d);
    } else if (block instanceof Block.Signed s) {
      signed(s);
    } else if (block instanceof Block.Kept k) {
      out.append("<div class=\"kept\">");
      k.blocks().forEach(this::block);
      out.append("</div>");
    } else {
      blanks((Block.Blanks) block);
    }
  }

  private void facts(Block.Facts facts) {
    out.append("<table class=\"facts\"><tbody>");
    for (Block.Fact fact : facts.facts()) {
      out.append("<tr><th scope=\"row\">").append(text(fact.name())).append("</th><td>");
      out.append(lines(fact.value())).append("</td></tr>");
    }
    out.append("</tbody></table>");
  }

  private void list(String style, String before, List<String> points) {
    if (points.isEmpty()) {
      return;
    }
    out.append("<ul class=\"").append(style).append("\">");
    points.forEach(p -> out.append("<li>").append(before).append(lines(p)).append("</li>"));
    out.append("</ul>");
  }

  private void cautions(Block.Cautions cautions) {
    out.append("<div class=\"cautions\">");
    styled("p", "mind", "Mind");
    list("points", "", cautions.texts());
    out.append("</div>");
  }

  private void table(Block.Table table) {
    String style = table.rows().size() + table.sums().size() <= KEPT_WHOLE ? "rows whole" : "rows";
    out.append("<table class=\"")
        .append(style)
        .append("\" summary=\"")
        .append(text(table.caption()))
        .append("\">");
    out.append("<thead><tr>");
    for (Block.Column column : table.columns()) {
      out.append("<th scope=\"col\"").append(side(column));
      if (column.share() > 0) {
        out.append(" style=\"width:").append(column.share()).append("%\"");
      }
      out.append('>').append(text(column.name())).append("</th>");
    }
    out.append("</tr></thead><tbody>");
    table.rows().forEach(row -> row(table.columns(), row));
    for (int i = 0; i < table.sums().size(); i++) {
      sum(table.columns(), table.sums().get(i), i == 0 ? "first " : "");
    }
    out.append("</tbody></table>");
  }

  /** Its first cell reaches over the empty ones beside it. */
  private void sum(List<Block.Column> columns, Block.SumRow sum, String first) {
    List<String> cells = sum.cells();
    int wide = 1;
    while (wide < cells.size() && cells.get(wide).isEmpty()) {
      wide++;
    }
    out.append("<tr class=\"").append(first).append(sum.strong() ? "total" : "sum").append("\">");
    out.append("<td colspan=\"").append(wide).append("\">").append(lines(cells.get(0)));
    out.append("</td>");
    for (int i = wide; i < cells.size(); i++) {
      out.append("<td").append(side(columns.get(i))).append('>');
      out.append(lines(cells.get(i))).append("</td>");
    }
    out.append("</tr>");
  }

  private void row(List<Block.Column> columns, List<String> texts) {
    out.append("<tr>");
    for (int i = 0; i < columns.size(); i++) {
      out.append("<td").append(side(columns.get(i))).append('>');
      out.append(lines(texts.get(i))).append("</td>");
    }
    out.append("</tr>");
  }

  private static String side(Block.Column column) {
    return column.number() ? " class=\"number\"" : "";
  }

  private void photos(Block.Photos all) {
    out.append("<div class=\"photos\">");
    for (Block.Photo photo : all.photos()) {
      out.append("<div class=\"photo\">");
      Optional<PaperPhotos.Shown> shown = photos.show(photo.file());
      if (shown.isPresent()) {
        double w = shown.get().width();
        double h = shown.get().height();
        double scale = Math.min(PHOTO_WIDTH / w, PHOTO_HEIGHT / h);
        out.append("<img src=\"").append(text(shown.get().address())).append("\" alt=\"");
        out.append(text(photo.words())).append(size(w * scale, h * scale)).append("/>");
        styled("p", "caption", photo.words());
      } else {
        styled("p", "gone", photo.words() + ": this photo cannot be shown here.");
      }
      out.append("</div>");
    }
    if (!all.words().isBlank()) {
      styled("p", "caption", all.words());
    }
    out.append("</div>");
  }

  /** The end of the attribute before, and a size in millimetres. */
  private static String size(double width, double height) {
    return String.format(Locale.ROOT, "\" style=\"width:%.1fmm;height:%.1fmm\"", width, height);
  }

  private void drawing(Block.Drawing drawing) {
    double height;
    if (drawing.chart() instanceof Block.OverTime over) {
      height = 10;
      for (BoatTimeline.Lane lane : over.timeline().lanes()) {
        height += lane.gloss().isEmpty() ? 17 : 34;
      }
      drawn.add(PaperChart.of(printable(over.timeline()), PaperFont.ofCharts())::draw);
    } else {
      Block.Surviving lives = (Block.Surviving) drawing.chart();
      height = 48;
      drawn.add(PaperChart.of(lives.survival(), lives.label(), PaperFont.ofCharts())::draw);
    }
    out.append("<div class=\"drawing\">");
    object(drawing.alternative(), CHART_WIDTH, height);
    out.append("</div>");
  }

  /** The drawing that was added last. */
  private void object(String words, double width, double height) {
    out.append("<object ").append(DRAWN_AT).append("=\"").append(drawn.size() - 1);
    out.append("\" alt=\"").append(text(words)).append(size(width, height));
    out.append("></object>");
  }

  private void signed(Block.Signed signed) {
    drawn.add(new DrawnSignature(signed.signature()));
    out.append("<div class=\"signed\">");
    object("Signature. " + signed.words(), SIGNED_WIDTH, SIGNED_WIDTH / SIGNED_SHAPE);
    styled("p", "caption", signed.words());
    out.append("</div>");
  }

  /** With names that the font has letters for. */
  private BoatTimeline printable(BoatTimeline timeline) {
    return new BoatTimeline(
        timeline.from(),
        timeline.until(),
        timeline.today(),
        timeline.layUps(),
        timeline.lanes().stream().map(this::printable).toList());
  }

  private BoatTimeline.Lane printable(BoatTimeline.Lane lane) {
    return new BoatTimeline.Lane(
        cover.text(lane.name()),
        lane.coats().stream()
            .map(c -> new BoatTimeline.CoatMark(c.day(), cover.text(c.product()), c.topper()))
            .toList(),
        lane.gloss(),
        lane.model(),
        lane.water(),
        lane.renewBy(),
        lane.likely());
  }

  private void blanks(Block.Blanks blanks) {
    out.append("<div class=\"blanks\">");
    blanks.names().forEach(name -> styled("p", "blank", name));
    out.append("</div>");
  }

  private void element(String name, String text) {
    out.append('<').append(name).append('>').append(lines(text));
    out.append("</").append(name).append('>');
  }

  private void styled(String name, String style, String text) {
    out.append('<').append(name).append(" class=\"").append(style).append("\">");
    out.append(lines(text)).append("</").append(name).append('>');
  }

  private String text(String given) {
    return escaped(cover.text(given));
  }

  private String lines(String given) {
    return text(Texts.lines(given)).replace("\n", "<br/>");
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}
